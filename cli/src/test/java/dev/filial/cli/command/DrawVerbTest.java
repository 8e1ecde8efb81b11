package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class DrawVerbTest {

  @TempDir Path folder;

  private BenchStory bench;

  /** 26-003 is 26-001 × 26-002, 26-004 is 26-003 selfed. */
  @BeforeEach
  void aSelfedHybrid() {
    bench = new BenchStory(folder);
    bench.done("plant", "Echeveria laui", "--name", "Rosa", "--date", "2026-01-01");
    bench.done("plant", "Echeveria agavoides", "--date", "2026-01-01");
    bench.done("cross", "26-001", "26-002", "--bagged", "--date", "2026-02-01");
    bench.done("number", "26-003", "1", "--date", "2026-03-01");
    bench.done("cross", "26-003-1", "--selfed", "--bagged", "--date", "2026-04-01");
  }

  private String complaint(int status, String... words) {
    Outcome outcome = bench.type(words);
    assertThat(outcome.status()).isEqualTo(status);
    assertThat(outcome.out()).isEmpty();
    return outcome.err().replace("\n", " ");
  }

  @Test
  void theDrawingGetsTheNameOfItsPlant() throws IOException {
    String said = bench.done("draw", "26-004").replace("\n", " ");

    assertThat(said).contains("Drew the pedigree of 26-004").contains("4 plants").contains(".svg");
    try (var files = Files.list(folder)) {
      Path svg = files.filter(file -> file.toString().endsWith(".svg")).findFirst().orElseThrow();
      assertThat(Files.readString(svg)).contains("Rosa").contains("Echeveria agavoides");
    }
  }

  @Test
  void itGoesWhereItIsSentAndAsFarBackAsAsked() throws IOException {
    JsonNode json = bench.json("draw", "26-004", "--depth", "1", "--to", "near.svg");

    assertThat(json.get("plants").asInt()).isEqualTo(2);
    assertThat(json.get("parents").asInt()).isEqualTo(1);
    assertThat(Files.readString(folder.resolve("near.svg"))).contains("whose parents are left out");
  }

  @Test
  void aFileThatIsThereIsLeftAlone() throws IOException {
    Files.writeString(folder.resolve("mine.svg"), "mine");

    assertThat(complaint(3, "draw", "26-004", "--to", "mine.svg"))
        .contains("mine.svg is there already, and nothing was written");
    assertThat(Files.readString(folder.resolve("mine.svg"))).isEqualTo("mine");
  }

  @Test
  void aFolderThatIsNotThereIsNamed() {
    assertThat(complaint(3, "draw", "26-004", "--to", "nowhere/a.svg"))
        .contains("there is no file or folder")
        .contains("nowhere");
  }

  @Test
  void whatIsNotThereOrCannotBeIsRefused() {
    assertThat(complaint(1, "draw", "26-099")).contains("26-099").contains("not in this register");
    assertThat(complaint(1, "draw", "26-004", "--depth", "0")).contains("1 generation or more");
    assertThat(Files.exists(folder.resolve("26-099.svg"))).isFalse();
  }

  @Test
  void thePageOfAPlantTellsWhatCameOfIt() throws IOException {
    String said = bench.done("page", "rosa", "--to", "rosa.html").replace("\n", " ");

    assertThat(said).contains("Wrote the page of 26-001").contains("rosa.html");
    assertThat(Files.readString(folder.resolve("rosa.html")))
        .startsWith("<!DOCTYPE html>")
        .contains("<bdi>Rosa</bdi>")
        .contains("26-003")
        .contains("From the register of Klara Beispiel");
    assertThat(complaint(3, "page", "rosa", "--to", "rosa.html")).contains("is there already");
    assertThat(bench.json("page", "26-002", "--to", "b.html").get("plants").asInt()).isEqualTo(1);
  }

  @Test
  void theIndexListsWhatThereIsAndIsNotWrittenOverEither() throws IOException {
    assertThat(bench.done("index"))
        .startsWith("Wrote a list of 5 plants, crosses, lots and pots into register.html.\n");
    assertThat(Files.readString(folder.resolve("register.html"))).contains("26-003", "Rosa");
    assertThat(complaint(3, "index")).contains("register.html is there already");
  }
}

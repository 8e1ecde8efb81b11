package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun;
import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A grower's table goes into the register: guessed, looked over, tried, applied. */
class SpreadsheetVerbTest {

  @TempDir Path folder;

  private BenchStory bench;

  @BeforeEach
  void aTable() throws IOException {
    bench = new BenchStory(folder);
    table("Nr;Art;Seit", "E-17;Echeveria laui;4.3.2024", "E-18;laui;");
  }

  private void table(String... lines) throws IOException {
    Files.writeString(folder.resolve("plants.csv"), String.join("\r\n", lines) + "\r\n");
  }

  private Outcome sheet(String... words) {
    String[] all = new String[words.length + 1];
    all[0] = "table";
    System.arraycopy(words, 0, all, 1, words.length);
    return new CommandLineRun().in(folder).run(all);
  }

  private static String plain(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private String list() {
    return bench.done("list");
  }

  @Test
  void aFolderIsNoTableAndWhatIsMissingIsNamed() throws IOException {
    Files.createDirectory(folder.resolve("old"));
    Outcome named = sheet("old", "--guess", "plants.columns");
    assertThat(named.status()).isEqualTo(3);
    assertThat(named.err()).contains("old is a folder");
    assertThat(plain(sheet(".", "--guess", "plants.columns").err()))
        .contains(folder.getFileName() + " is a folder");
    sheet("plants.csv", "--guess", "plants.columns");
    Outcome nowhere =
        sheet("plants.csv", "--columns", "plants.columns", "--apply", "--good-rows", "no/rest.csv");
    assertThat(nowhere.status()).isEqualTo(3);
    assertThat(plain(nowhere.err())).contains("/no").doesNotContain(".filial-");
    assertThat(list()).doesNotContain("E-17");
  }

  @Test
  void fromTheGuessToTheLastRow() throws IOException {
    Outcome guessed = sheet("plants.csv", "--guess", "plants.columns");
    assertThat(guessed.status()).as(guessed.err()).isZero();
    assertThat(plain(guessed.out())).contains("old code = Nr", "taxon = Art", "date = Seit");

    Outcome tried = sheet("plants.csv", "--columns", "plants.columns");
    assertThat(tried.status()).isEqualTo(1);
    assertThat(plain(tried.out()))
        .contains("2 rows: 1 good, 1 refused. Nothing was written.")
        .contains("a name begins with its genus");

    Outcome refused = sheet("plants.csv", "--columns", "plants.columns", "--apply");
    assertThat(refused.status()).isEqualTo(1);
    assertThat(plain(refused.out())).contains("Nothing was written.");
    assertThat(list()).doesNotContain("E-17");

    Outcome good =
        sheet("plants.csv", "--columns", "plants.columns", "--apply", "--good-rows", "rest.csv");
    assertThat(good.status()).as(good.err()).isZero();
    assertThat(plain(good.out())).contains("2 rows: 1 taken in, as entry 2.", "rest.csv");
    assertThat(list()).contains("E-17");

    Path rest = folder.resolve("rest.csv");
    Files.writeString(rest, Files.readString(rest).replace(";laui;", ";Echeveria laui;"));
    Outcome again = sheet("rest.csv", "--columns", "plants.columns", "--apply");
    assertThat(again.status()).as(again.out() + again.err()).isZero();
    assertThat(plain(again.out())).contains("1 row: 1 taken in, as entry 3.");
  }

  @Test
  void withoutAMappingTheGuessIsTriedAndShown() {
    Outcome tried = sheet("plants.csv");
    assertThat(plain(tried.out())).contains("The columns, as guessed:", "taxon = Art");
    assertThat(plain(tried.out())).contains("--guess MAPPING");
    assertThat(list()).doesNotContain("E-17");
  }

  @Test
  void aGuessNeverReplacesAMapping() throws IOException {
    Files.writeString(folder.resolve("mine"), "rows = plants");
    Outcome guessed = sheet("plants.csv", "--guess", "mine");
    assertThat(guessed.status()).isEqualTo(3);
    assertThat(plain(guessed.err())).contains("is there already, and nothing was written");
    assertThat(folder.resolve("mine")).hasContent("rows = plants");
  }

  @Test
  void wordsThatDoNotGoTogetherAreRefused() {
    assertThat(plain(sheet("plants.csv", "--apply").err()))
        .contains("--apply needs a mapping that you have looked over");
    assertThat(plain(sheet("plants.csv", "--good-rows", "r.csv").err()))
        .contains("--good-rows goes with --apply");
    assertThat(plain(sheet("plants.csv", "--guess", "m", "--columns", "c").err()))
        .contains("--guess proposes a mapping and does nothing else");
    assertThat(plain(sheet("plants.csv", "--rows", "plants", "--columns", "c").err()))
        .contains("the mapping says already what a row is");
    assertThat(sheet("plants.csv", "--rows", "hats").status()).isEqualTo(2);
  }

  @Test
  void filesThatCannotBeReadAreNamed() throws IOException {
    Outcome missing = sheet("nowhere.csv");
    assertThat(missing.status()).isEqualTo(3);
    assertThat(plain(missing.err())).contains("there is no file or folder", "nowhere.csv");
    Files.write(
        folder.resolve("latin.columns"), "place = Öl".getBytes(Charset.forName("windows-1252")));
    assertThat(plain(sheet("plants.csv", "--columns", "latin.columns").err()))
        .contains("is no text in UTF-8");
    Files.writeString(folder.resolve("empty.csv"), "");
    Outcome empty = sheet("empty.csv");
    assertThat(empty.status()).isEqualTo(1);
    assertThat(plain(empty.err())).contains("is empty; save the table again as CSV");
  }

  @Test
  void columnsNobodyUsesAndTheLettersAreSaid() throws IOException {
    Files.write(
        folder.resolve("old.csv"),
        "Art;Größe\nEcheveria laui;groß\n".getBytes(Charset.forName("windows-1252")));
    Files.writeString(folder.resolve("c"), "rows = plants\ntaxon = Art");
    assertThat(plain(sheet("old.csv", "--columns", "c").out()))
        .contains("old.csv is windows-1252 (it is not UTF-8", "columns parted by semicolons")
        .contains("Not read, because the mapping names no use for it: Größe.");
  }

  @Test
  void moreIsListedOnRequest() throws IOException {
    String[] lines = new String[31];
    lines[0] = "Nr;Art";
    for (int i = 1; i < lines.length; i++) {
      lines[i] = i + ";laui";
    }
    table(lines);
    assertThat(plain(sheet("plants.csv").out())).contains("Refused, the first of them:");
    String all = sheet("plants.csv", "--list", "40").out();
    assertThat(plain(all)).doesNotContain("the first of them");
    assertThat(all.lines().filter(line -> line.contains("its genus")).count()).isEqualTo(30);
  }

  @Test
  void theAnswerIsOneObjectForAProgram() {
    Outcome tried = sheet("plants.csv", "--json");
    JsonNode json = new JsonMapper().readTree(tried.out());
    assertThat(tried.status()).isEqualTo(1);
    assertThat(json.get("written").asBoolean()).isFalse();
    assertThat(json.get("refused").asInt()).isEqualTo(1);
    assertThat(json.get("complaints").get(0).get("line").asInt()).isEqualTo(3);
    assertThat(json.get("complaints").get(0).get("column").asString()).isEqualTo("Art");
  }

  @Test
  void noProgressIsDrawnWhereNobodyWatches() throws IOException {
    String[] lines = new String[10_001];
    lines[0] = "Nr;Art";
    for (int i = 1; i < lines.length; i++) {
      lines[i] = i + ";laui";
    }
    table(lines);
    assertThat(sheet("plants.csv").err()).isEmpty();
  }
}

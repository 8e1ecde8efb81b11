package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import dev.filial.core.register.Observed;
import dev.filial.core.store.SqliteStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FateVerbsTest {

  private static final String BORDER = "across a border,";

  @TempDir Path folder;

  private BenchStory bench;

  @BeforeEach
  void aPlantAndAPacket() {
    bench = new BenchStory(folder);
    bench.done("plant", "Echeveria laui", "--date", "2023");
    bench.done("seed", "Echeveria setosa", "40", "--date", "2025-10");
  }

  private void refused(int status, String because, String... words) {
    Outcome outcome = bench.type(words);
    assertThat(outcome.status()).isEqualTo(status);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().replace("\n", " ")).contains(because);
  }

  @Test
  void whatLeavesTheHouseTravelsWithTheGrowersMark() {
    assertThat(bench.cautioned(BORDER, "give", "23-001", "--to", "Lena Muster"))
        .isEqualTo(
            """
            Entry 4: 23-001A given away to Lena Muster.
            Write on the tag:
                KB 23-001A
                Echeveria laui
            """);
  }

  @Test
  void someOfThePacketIsGivenAndTheRestStays() {
    assertThat(bench.cautioned(BORDER, "give", "25-001 H1", "--count", "15", "--to", "Lena Muster"))
        .contains("15 of 25-001")
        .contains("    KB 25-001");
    refused(1, "held 25 when 30 left it", "give", "25-001-H1", "--count", "30");
    assertThat(bench.done("discard", "25-001 H1", "--cause", "mouldy"))
        .contains("discarded (mouldy)");
  }

  @Test
  void aPacketOfOneLotIsThatLot() {
    assertThat(bench.cautioned(BORDER, "give", "25-001", "--count", "5")).contains("5 of 25-001");
    assertThat(bench.type("give", "25-001", "--to", "Lena \u202E Muster").err())
        .contains("turns the direction");
  }

  @Test
  void everyGiftOfSeveralHasItsTag() {
    assertThat(bench.cautioned(BORDER, "give", "23-001", "25-001 H1"))
        .contains("    KB 23-001A | Echeveria laui\n")
        .containsPattern("    KB 25-001. H1 \\| Echeveria setosa \\| got OCT 25\n");
    bench.done("plant", "Echeveria laui", "--date", "2024");
    assertThat(bench.json("give", "24-001").get("tags").get(0).get("lines").get(0).stringValue())
        .startsWith("KB 24-001");
    assertThat(bench.type("give", "23-001").err().replaceAll("\\s+", " "))
        .contains("23-001A was gone already");
  }

  @Test
  void aGiftAcrossABorderIsDoneAndTheRulesAreNamed() {
    Outcome outcome = bench.type("give", "23-001", "--abroad");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.out()).contains("KB 23-001A");
    assertThat(outcome.err())
        .startsWith("Note: across a border")
        .containsOnlyOnce("Note:")
        .contains("plant health");
  }

  @Test
  void theRulesOfTheBorderAreNamedOnceUnlessAskedFor() {
    bench.cautioned(BORDER, "give", "25-001 H1", "--count", "5");
    bench.done("give", "25-001 H1", "--count", "5");
    bench.cautioned(BORDER, "give", "25-001 H1", "--count", "5", "--abroad");
  }

  @Test
  void deathAndRejectionStayOnRecordAndCanBeUndone() {
    assertThat(bench.done("died", "23-001", "--cause", "red spider", "--date", "yesterday"))
        .isEqualTo(
            """
            Entry 4: 23-001A died (red spider).
            Next: if that was the wrong one: filial undo
            """);
    assertThat(bench.done("keep", "25-001 H1")).contains("kept");
  }

  @Test
  void aNumberGoesWithAPotOrSeedOnly() {
    refused(1, "is one plant; a number goes with", "died", "23-001", "--count", "2");
    refused(2, "there is no option --count", "keep", "23-001", "--count", "2");
    refused(1, "say what became of its seed", "died", "25-001");
    refused(2, "WHAT is missing", "died");
  }

  @Test
  void aTraitIsDeclaredAndSeen() {
    assertThat(bench.done("trait", "Leaf edge", "--states", "red, green"))
        .isEqualTo(
            """
            Entry 4: trait Leaf edge: red, green.
            Next: look at a plant: filial observe PLANT 'Leaf edge' red
            """);
    assertThat(bench.done("observe", "23-001", "leaf edge", "RED"))
        .contains("23-001A: Leaf edge red");
    refused(1, "it is one of red, green", "observe", "23-001", "leaf edge", "blue");
    refused(1, "no trait is called \"hue\"", "observe", "23-001", "hue", "blue");
    refused(1, "was declared in entry 4", "trait", "leaf edge", "--states", "a,b");
  }

  @Test
  void aScoreAndASizeAreNumbersInTheirRange() {
    bench.done("trait", "wax", "--least", "0", "--most", "5");
    bench.done("trait", "rosette", "--unit", "mm");

    assertThat(bench.done("observe", "23-001", "wax", "3.5")).contains("wax 3.5");
    refused(1, "wax goes from 0 to 5", "observe", "23-001", "wax", "6");
    refused(1, "is no number", "observe", "23-001", "rosette", "wide");
  }

  @Test
  void aTraitIsOneThingOrTheOther() {
    refused(2, "what can wax be?", "trait", "wax");
    refused(2, "not both", "trait", "wax", "--states", "a,b", "--unit", "mm");
    refused(2, "is not a number", "trait", "wax", "--least", "low");
    refused(1, "at least two, and differ", "trait", "wax", "--states", "thick");
    refused(1, "there is nothing in it", "trait", "wax", "--states", "thick,,thin");
  }

  @Test
  void aPhotographIsKeptByItsPlaceAndItsDigest() throws IOException {
    bench.done("trait", "leaf edge", "--states", "red,green");
    Files.createDirectories(folder.resolve("pictures"));
    Files.writeString(folder.resolve("pictures/laui.jpg"), "abc");
    bench.done("observe", "23-001", "leaf edge", "red", "--photo", "pictures/laui.jpg");

    try (var store = SqliteStore.open(folder.resolve("filial.register"))) {
      assertThat(store.effective(5))
          .map(seen -> ((Observed) seen).photograph().path())
          .hasValue("pictures/laui.jpg");
    }
    refused(
        3, "there is no file or folder", "observe", "23-001", "leaf edge", "red", "--photo", "x");
    refused(
        3, "is a folder, not a picture", "observe", "23-001", "leaf edge", "red", "--photo", ".");
  }
}

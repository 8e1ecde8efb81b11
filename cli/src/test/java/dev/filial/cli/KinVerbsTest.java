package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** How sure, how close: asked of the demo bench. */
class KinVerbsTest {

  @TempDir Path folder;

  private DemoStory demo;

  @BeforeEach
  void theDemoBench() throws IOException {
    demo = new DemoStory(folder);
  }

  @Test
  void ancestryGrowsALikelyRange() {
    assertThat(demo.told("ancestry", "24-007-1"))
        .contains("taxon                share        likely between\n")
        .containsPattern("Echeveria agavoides    1/4  25 %  1[56] and 3[45] %\n")
        .contains("two species meet  at 50 % of the loci, as in a BC1\n")
        .contains("likely between    9 of 10 such seedlings; 11 chromosomes of 100 cM (assumed),\n")
        .contains("2000 genomes dropped\n");
    JsonNode likely =
        demo.json("ancestry", "24-007-1", "--map", "100", "--genomes", "100").get("likely");
    assertThat(likely.get("map").stringValue()).isEqualTo("1 chromosome of 100 cM");
    assertThat(likely.get("taxa").get(1).get("standardDeviation").doubleValue())
        .isBetween(0.18835, 0.18836);
  }

  @Test
  void theSpreadIsDrawn() {
    String drawn =
        demo.told("ancestry", "26-013", "--spread", "--less-than", "1/10", "--dice", "3");
    assertThat(drawn)
        .contains("less than 10 %")
        .contains("Of 100 such seedlings, by their share of Echeveria agavoides:\n")
        .contains("  10 to 15 %  ########################################")
        .contains("75 %");
    Outcome narrow =
        new CommandLineRun()
            .in(folder)
            .env("COLUMNS", "40")
            .run("ancestry", "26-013", "--spread", "--dice", "3");
    assertThat(narrow.out().lines().filter(line -> line.contains("##")))
        .isNotEmpty()
        .allMatch(line -> line.length() <= 40 && line.contains(" to "));
    assertThat(demo.told("ancestry", "26-013", "--spread", "--less-than", "1/10", "--dice", "3"))
        .isEqualTo(drawn);
  }

  @Test
  void theChanceOfLessIsToldWithoutTheDrawing() {
    assertThat(demo.told("ancestry", "26-013", "--less-than", "10%"))
        .contains("less than 10 %")
        .containsPattern("Echeveria agavoides  4.6 % +75 % +0 of 10000 +3\\d\\.\\d %")
        .doesNotContain("Of 100 such seedlings");
  }

  @Test
  void mapsAndNumbersThatCannotBeAreNamed() {
    assertThat(demo.refused(2, "ancestry", "24-007-1", "--map", "0"))
        .contains("a chromosome of 0 centimorgans");
    assertThat(demo.refused(2, "ancestry", "24-007-1", "--map", "100000x100"))
        .contains("a map of 100000 chromosomes; state the 1 to 1000 of one set");
    assertThat(demo.refused(2, "ancestry", "24-007-1", "--less-than", "7/3"))
        .contains("no part of a whole");
    assertThat(demo.refused(1, "ancestry", "24-007-1", "--genomes", "0"))
        .contains("0 genomes to drop; state 1 or more");
    assertThat(demo.refused(1, "ancestry", "24-007-1", "--genomes", "999999999"))
        .contains("999999999 genomes of 2 taxa are more than can be kept; drop at most 33333333");
  }

  @Test
  void relatedSaysHowCloseTwoPlantsAre() {
    assertThat(demo.told("related", "22-009-1", "22-009-2"))
        .startsWith("22-009R-1 and 22-009R-2 are as close as full sibs, or parent and offspring")
        .contains("their seedlings    inbred by 25 % (1/4): a close cross");
    assertThat(demo.json("related", "22-009-1", "24-007-1").get("coancestry").doubleValue())
        .isEqualTo(0.375);
    assertThat(demo.told("related", "22-001", "23-003"))
        .isEqualTo(
            """
            22-001E and 23-003D are one and the same plant.
            their seedlings  by selfing, inbred by 50 % (1/2)
            """);
    assertThat(demo.told("related", "26-013-1")).startsWith("26-013E-1 is inbred by 37.5 % (3/8)");
    assertThat(demo.told("related", "22-001"))
        .startsWith("22-001E is not inbred, as far as is recorded");
    assertThat(demo.told("related", "22-011-1", "22-011-2"))
        .contains("taken as full\n                   sibs; nobody recorded their parents.");
  }

  @Test
  void severalPlantsMakeATable() {
    assertThat(demo.told("related", "22-009-1", "22-009-2", "24-007-1", "24-009-1"))
        .contains("3 24-007E-1  37.5  25  62.5  12.5\n")
        .contains("Two different ones have 22.9 % on the average.");
    assertThat(
            demo.json("related", "22-009", "22-009", "22-001").get("plants").get(1).stringValue())
        .isEqualTo("another of 22-009R");
  }

  @Test
  void foundersStandBehindTheWholeBenchOrAFewPlants() {
    assertThat(demo.told("founders")).startsWith("56 genotypes go back to 16 founders");
    assertThat(demo.told("founders", "24-007-1"))
        .startsWith("1 genotype goes back to 2 founders, as varied as 1.6 of like shares would be.")
        .contains("22-001E  75 % (3/4)\n");
    assertThat(
            demo.json("founders", "24-007-1")
                .get("contributions")
                .get("effectiveNumber")
                .doubleValue())
        .isBetween(1.5999, 1.6001);
    assertThat(demo.refused(1, "founders", "24-099")).contains("24-099");
  }

  @Test
  void anEmptyRegisterHasNoFounders() throws IOException {
    Path empty = folder.resolve("empty");
    Files.createDirectory(empty);
    new CommandLineRun().in(empty).run("start", "KB", "--grower", "Klara Beispiel");
    Outcome outcome = new CommandLineRun().in(empty).run("founders");
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("no plant stands here under a number of its own");
  }

  @Test
  void aCloseCrossIsNotedWhenItIsRecordedAndWhenItsOddsAreAsked() {
    Outcome close = demo.type("cross", "22-009-1", "22-009-2", "--date", "2026-03-02");
    assertThat(close.status()).isZero();
    assertThat(close.err().replaceAll("\\s+", " "))
        .isEqualTo(
            "Note: a close cross: 22-009R-1 and 22-009R-2 are as close as full sibs, or parent and"
                + " offspring; their seedlings would be inbred by 25 % ");
    assertThat(demo.type("cross", "22-001", "22-005", "--date", "2026-03-02").err()).isEmpty();
    assertThat(demo.type("cross", "22-001", "--selfed", "--date", "2026-03-02").err()).isEmpty();
    assertThat(demo.told("forecast", "24-007-1", "22-001", "--trait", "tips"))
        .contains("It is a close cross: ");
    assertThat(demo.told("odds", "24-007-1", "22-001", "--trait", "tips").replaceAll("\\s+", " "))
        .contains("It is a close cross: 24-007E-1 and 22-001E are closer kin than full sibs");
  }

  @Test
  void ofACrossThatWasMadeItIsTooLateToSayThatItIsClose() {
    // The same two parents, by the code of their cross.
    assertThat(demo.told("related", "24-007-1", "22-001")).contains("a close cross");
    assertThat(demo.told("odds", "26-013", "--trait", "tips")).doesNotContain("close");
    assertThat(demo.told("fit", "26-013", "--trait", "tips")).doesNotContain("close");
  }
}

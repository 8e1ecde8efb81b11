package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun;
import dev.filial.cli.CommandLineRun.Outcome;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlantVerbsTest {

  @TempDir Path folder;

  private BenchStory bench;

  @BeforeEach
  void aRegister() {
    bench = new BenchStory(folder);
  }

  @Test
  void aPlantGetsTheNextCodeOfTheYearOfItsDate() {
    assertThat(
            bench.cautioned(
                "across a border,",
                "plant",
                "Echeveria",
                "laui",
                "--field",
                "KB 117",
                "--from",
                "Lena Muster"))
        .isEqualTo(
            """
            Entry 2: 26-001M acquired: Echeveria laui, KB 117, from Lena Muster.
            Write on the tag:
                26-001M  Echeveria laui
                KB 117
            Next: when it flowers: filial cross 26-001M POLLEN_PARENT
            """);
    assertThat(bench.done("plant", "E. agavoides", "--date", "may 2024"))
        .contains("24-001W acquired: Echeveria agavoides");
    assertThat(bench.done("plant", "E. agavoides", "--date", "?")).contains("26-002N acquired");
  }

  @Test
  void theAnswerAsJsonHasTheCodeTheTagAndWhatComesNext() {
    JsonNode json = bench.json("plant", "Echeveria laui");

    assertThat(json.propertyNames())
        .containsExactly("entry", "code", "text", "tag", "next", "warnings");
    assertThat(json.get("code").stringValue()).isEqualTo("26-001M");
    assertThat(json.get("tag").get(0).stringValue()).startsWith("26-001M");
  }

  @Test
  void aCodeFromANotebookPageIsKeptAndNeverGivenTwice() {
    assertThat(bench.done("plant", "Echeveria laui", "--code", "24-13", "--date", "2024"))
        .contains("24-013");
    Outcome again = bench.type("plant", "Echeveria elegans", "--code", "24-13");

    assertThat(again.status()).isEqualTo(1);
    assertThat(again.err()).contains("is taken already").contains("take the next number, 24-014");
    assertThat(bench.done("plant", "E. laui", "--date", "2024")).contains("24-014");
  }

  @Test
  void aWrongCheckLetterIsAWrongCommandLine() {
    Outcome outcome = bench.type("plant", "Echeveria laui", "--code", "26-001A");

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).startsWith("filial plant: --code: ");
  }

  @Test
  void aPlantNobodyKnowsIsEnteredWithoutAName() {
    assertThat(bench.done("plant")).contains("acquired: unknown");
    assertThat(bench.asked(new String[] {""}, "plant").out()).contains("acquired: unknown");
    assertThat(bench.asked(new String[] {"Echeveria laui"}, "plant").out())
        .contains("acquired: Echeveria laui");
  }

  @Test
  void aNameOneLetterAwayFromAKnownOneIsEnteredWithANote() {
    bench.done("plant", "Echeveria laui");
    Outcome outcome = bench.type("plant", "Echeveria lauii");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.err().replace("\n", " "))
        .startsWith("Note: Echeveria lauii is new here, and one letter away from Echeveria laui;");
    assertThat(bench.done("plant", "Echeveria lauii")).contains("acquired");
  }

  @Test
  void aStatedHybridAnswersWithItsShares() {
    bench.done("plant", "Echeveria laui");
    bench.done(
        "plant",
        "--makeup",
        "E. laui=1/2",
        "--makeup",
        "Echeveria setosa=50%",
        "--generation",
        "F1",
        "--name",
        "Fuzzy");

    assertThat(bench.done("ancestry", "fuzzy"))
        .contains("F1")
        .containsPattern("Echeveria laui +1/2 +50 %")
        .containsPattern("Echeveria setosa +1/2 +50 %");
  }

  @Test
  void aFormulaIsNoTaxonAndTheRemedyIsNamed() {
    Outcome outcome = bench.type("plant", "Echeveria laui x E. setosa");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("names the parents of a hybrid").contains("--makeup");
  }

  @ParameterizedTest
  @ValueSource(strings = {"E. laui", "laui", "Echeveria Laui grandis", "<b>Echeveria</b>"})
  void whatIsNoNameIsRefused(String written) {
    Outcome outcome = bench.type("plant", written);

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err()).startsWith("filial plant: ");
  }

  @Test
  void sharesThatExceedTheWholeAreRefused() {
    Outcome outcome =
        bench.type("plant", "--makeup", "Echeveria laui=2/3", "--makeup", "Echeveria setosa=1/2");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err().replace("\n", " ")).contains("which exceeds 1");
  }

  @Test
  void aShareAboveTheWholeAndAShareOfNothingAreWrongCommandLines() {
    assertThat(bench.type("plant", "--makeup", "Echeveria laui=50").err())
        .contains("no part of a whole; write 5%");
    assertThat(bench.type("plant", "--makeup", "Echeveria laui").err()).contains("states no share");
    assertThat(
            bench
                .type("plant", "--makeup", "Echeveria laui=1/4", "--makeup", "Echeveria laui=1/4")
                .err())
        .contains("names Echeveria laui twice");
  }

  @Test
  void aPlantHeldElsewhereHasNoTagAndNoDate() {
    bench.done("plant", "Echeveria laui", "--date", "2024");
    String answer =
        bench.cautioned(
            "across a border,",
            "plant",
            "Echeveria setosa",
            "--elsewhere",
            "--from",
            "Lena Muster");

    assertThat(answer)
        .contains("a plant held elsewhere")
        .doesNotContain("Write on the tag")
        .contains("filial cross SEED_PARENT 26-001M");
    // Its pollen may have come at any time, so no date of its coming is held against the cross.
    bench.done("cross", "24-001", "26-001", "--date", "2025-05-04");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Bo's \"best\" <b>", "🌵 no. 7", "Größte; DROP TABLE item --"})
  void namesOfAnyKindAreKeptAndFoundAgain(String name) {
    assertThat(bench.type("plant", "Echeveria laui", "--name", name).status()).isZero();

    assertThat(bench.done("note", name, "flowers")).contains("26-001M: flowers");
  }

  @Test
  void aNameOfThreeHundredLettersIsKeptAndTheTagStillFits() {
    String name = "Long" + "g".repeat(296);
    JsonNode json =
        JsonMapper.shared()
            .readTree(
                bench.cautioned(
                    "no room on the tag for", "plant", "Echeveria laui", "--name", name, "--json"));

    json.get("tag").forEach(line -> assertThat(line.stringValue().length()).isLessThan(25));
    assertThat(bench.done("note", "longgg", "flowers")).contains("26-001M: flowers");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "two\nlines", "bell\u0007"})
  void aNameThatIsNoneIsAWrongCommandLine(String name) {
    Outcome outcome = bench.type("plant", "Echeveria laui", "--name", name);

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).startsWith("filial plant: --name: ");
  }

  @Test
  void aFurtherNameStandsOnTheTagAndOneThatIsTakenIsNoted() {
    bench.done("plant", "Echeveria laui");
    bench.done("plant", "Echeveria setosa");

    assertThat(bench.done("name", "26-1", "Grey", "Lady"))
        .contains("26-001M is also called Grey Lady")
        .contains("    Grey Lady\n");
    Outcome second = bench.type("name", "26-2", "grey lady");
    assertThat(second.status()).isZero();
    assertThat(second.err()).startsWith("Note: \"grey lady\" is also what 26-001M is called;");
  }

  @Test
  void aPacketIsCountedGuessedOrNeither() {
    assertThat(bench.done("seed", "Echeveria laui", "~80", "--donor-code", "L 12"))
        .contains("26-001M: seed acquired, Echeveria laui, ~80 seeds")
        .contains("Next: when you sow it: filial sow 26-001M");
    assertThat(bench.done("seed", "?", "?")).contains("unknown, an unknown number of seeds");
    assertThat(bench.asked(new String[] {"", "few"}, "seed").out()).contains("unknown, few seeds");

    Outcome missing = bench.type("seed", "Echeveria laui");
    assertThat(missing.status()).isEqualTo(2);
    assertThat(missing.err()).contains("COUNT is missing");
    assertThat(bench.type("seed", "Echeveria laui", "lots").err()).contains("is not a count");
  }

  @Test
  void aTaxonIsDeclaredOnceWithAllThatIsKnownOfIt() {
    bench.done("plant", "Echeveria laui", "--date", "2024");
    bench.done(
        "taxon",
        "Echeveria laui",
        "--also",
        "Echeveria lauii",
        "--ploidy",
        "4",
        "--short",
        "lau",
        "--self-incompatible");

    assertThat(bench.done("plant", "Echeveria lauii", "--date", "2024")).contains("24-002");
    assertThat(bench.done("ancestry", "24-002")).contains("Echeveria laui ");
    Outcome selfed = bench.type("cross", "24-001", "--selfed");
    assertThat(selfed.err()).contains("self-incompatible");
    assertThat(selfed.out()).contains("lau selfed");
    Outcome again = bench.type("taxon", "Echeveria laui");
    assertThat(again.status()).isEqualTo(1);
    assertThat(again.err()).contains("was declared in entry 3; amend that entry");
  }

  @Test
  void aHybridTaxonGivesItsPlantsItsMakeUp() {
    bench.done(
        "taxon",
        "Echeveria ×gilva",
        "--makeup",
        "Echeveria agavoides=1/2",
        "--makeup",
        "Echeveria elegans=1/2");
    bench.done("plant", "E. gilva", "--name", "Rosy");

    assertThat(bench.done("ancestry", "rosy"))
        .containsPattern("Echeveria agavoides +1/2")
        .containsPattern("Echeveria elegans +1/2");
  }

  @Test
  void anOffsetIsThePlantOnceMore() {
    bench.done("plant", "Echeveria laui", "--date", "2024");
    assertThat(bench.done("offset", "24-001", "--how", "leaf cutting"))
        .contains("26-001M: leaf cutting of 24-001W")
        .contains("Write on the tag:");
    assertThat(bench.done("ancestry", "26-001")).containsPattern("Echeveria laui +1 ");
    Outcome sport = bench.type("offset", "24-001", "--sport", "leaf edge");
    assertThat(sport.status()).isEqualTo(1);
    assertThat(sport.err()).contains("no trait is called \"leaf edge\"");
    bench.cautioned("hormones", "offset", "24-001", "--doubled");
    assertThat(bench.done("ancestry", "26-002")).contains("chromosome sets");
  }

  @Test
  void aPlantWithoutItsTagIsOneOfItsCandidates() {
    bench.done("plant", "Echeveria laui");
    bench.done("plant", "Echeveria setosa");
    assertThat(bench.done("found", "26-001=2", "26-002", "--unknown", "1/4", "--place", "bench 2"))
        .contains("found without a tag: one of 26-001M, 26-002N, or something")
        .contains("filial join 26-001M 26-003");
    assertThat(bench.done("ancestry", "26-003"))
        .containsPattern("Echeveria laui +1/2")
        .containsPattern("Echeveria setosa +1/4")
        .containsPattern("unknown +1/4");
    assertThat(bench.done("found")).contains("nobody knows what");
    assertThat(bench.type("found", "26-001", "26-001").status()).isEqualTo(1);
    assertThat(bench.type("found", "26-001=much").status()).isEqualTo(2);
  }

  @Test
  void thingsAreMovedAndNotedByName() {
    bench.done("plant", "Echeveria laui", "--name", "Grey Lady");
    bench.done("plant", "Echeveria setosa");

    assertThat(bench.done("move", "grey", "26-002", "26-002", "--to", "cold frame"))
        .contains("Entry 4: 26-001M, 26-002N moved to cold frame.");
    assertThat(bench.type("move", "grey").status()).isEqualTo(2);
    Outcome nobody = bench.type("note", "Blue Lady", "flowers");
    assertThat(nobody.status()).isEqualTo(1);
    assertThat(nobody.err()).contains("nothing here is called \"Blue Lady\"");
  }

  @Test
  void withoutARegisterNothingIsRecorded(@TempDir Path elsewhere) {
    Outcome outcome = new CommandLineRun().in(elsewhere).run("plant", "Echeveria laui");

    assertThat(outcome.status()).isEqualTo(3);
    assertThat(outcome.err()).contains("filial start");
    assertThat(elsewhere).isEmptyDirectory();
  }
}

package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Sowing, counting, potting, pricking out and tallying, on the demo bench. */
class SowingVerbsTest {

  @TempDir Path folder;

  @BeforeEach
  void aBench() throws IOException {
    DemoRegister.in(folder);
  }

  private Outcome filial(String... words) {
    return new CommandLineRun().in(folder).run(words);
  }

  private JsonNode json(String... words) {
    Outcome outcome = filial(words);
    assertThat(outcome.status()).as(outcome.err()).isZero();
    return JsonMapper.shared().readTree(outcome.out());
  }

  @Test
  void everyPotOfASowingGetsACodeAndATag() {
    Outcome outcome = filial("sow", "26-012", "40", "--pots", "2", "--medium", "pumice");

    assertThat(outcome)
        .isEqualTo(
            new Outcome(
                0,
                """
                Entry 260: 26-012D S1: 40 seeds of 26-012D H1 sown into 26-012D P1, 26-012D P2
                on pumice.
                Write on the tags, each of which is one line here, | where a new line begins:
                    26-012D P1  Lilo × Rosa | 15 JUN 26  F1
                    26-012D P2  Lilo × Rosa | 15 JUN 26  F1
                Next: when they come up: filial count "26-012D P1" --up COUNT
                """,
                ""));
  }

  @Test
  void potsAreNumberedOnWithinTheCross() {
    JsonNode sown = json("sow", "26-013 H1", "30", "--pots", "2", "--json");

    assertThat(sown.get("codes").toString()).isEqualTo("[\"26-013E P4\",\"26-013E P5\"]");
    assertThat(sown.get("tags").get(1).get("lines").get(0).stringValue()).startsWith("26-013E P5");
  }

  @Test
  void withoutPotsTheSowingItselfHasTheTag() {
    assertThat(json("sow", "26-002", "?", "--json").get("codes").toString())
        .isEqualTo("[\"26-002N S1\"]");
    assertThat(filial("count", "26-002", "--up", "5").out()).contains("26-002N S1: 5 came up");
  }

  @Test
  void whatWentIntoEachPotMakesUpTheSowing() {
    assertThat(filial("sow", "26-012", "--into", "P1=20,P2=15").out())
        .contains("35 seeds of 26-012D H1 sown into 26-012D P1, 26-012D P2");
    assertThat(filial("sow", "26-012", "--into", "P3=~20,P4").out())
        .contains("an unknown number of seeds");
  }

  @Test
  void potsThatDoNotHoldWhatWasSownAreAskedAbout() {
    Outcome outcome = filial("sow", "26-012", "40", "--into", "P1=20,P2=15");

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).contains("hold 35 seeds, and COUNT is 40");
  }

  @Test
  void aPotThatIsTakenIsRefusedWithTheNextOne() {
    Outcome outcome = filial("sow", "26-013 H1", "--into", "P1=20");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("26-013E P1 is taken already").contains("26-013E P4");
  }

  @ParameterizedTest
  @ValueSource(strings = {"P1=20,,P2=3", "P1=lots", "=20"})
  void potsThatCannotBeReadAreAWrongCommandLine(String pots) {
    assertThat(filial("sow", "26-012", "--into", pots).status()).isEqualTo(2);
  }

  @Test
  void potsAreSaidInOneWayOnly() {
    assertThat(filial("sow", "26-012", "9", "--into", "P1=9", "--pots", "1").status()).isEqualTo(2);
    assertThat(filial("sow", "26-012", "9", "--pots", "0").status()).isEqualTo(1);
  }

  @Test
  void whatTheDemoWasWarnedOfIsNotSaidAgain() {
    // The fungicide of May stands in the diary of the demo bench.
    assertThat(filial("sow", "26-012", "40", "--treatment", "soaked in 3 % peroxide").err())
        .isEmpty();
  }

  @Test
  void moreThanTheLotHoldsIsNotSown() {
    Outcome outcome = filial("sow", "26-012", "121");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("26-012D H1 held 120 when 121 left it");
  }

  @Test
  void aLotThatWasSownOutIsNotGuessedAt() {
    Outcome outcome = filial("sow", "26-008", "5");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("no seed of 26-008X is left (26-008X H1 (used up))");
  }

  @Test
  void aCrossWithoutHarvestHasNothingToSow() {
    assertThat(filial("sow", "26-014", "5").err()).contains("26-014H has no seed yet");
    assertThat(filial("sow", "Rosa", "5").err()).contains("22-001E is a plant, not a seed lot");
  }

  @Test
  void oneEntryCountsAWholeTray() {
    Outcome outcome = filial("count", "26-013 P1", "26-013 P2", "--up", "19,16", "--alive", "12,9");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.out())
        .startsWith(
            "Entry 260: 26-013E P1: 19 came up, 12 alive; 26-013E P2: 16 came up, 9 alive.\n");
  }

  @Test
  void aNumberTooFewIsNotSpreadOverThePots() {
    Outcome outcome = filial("count", "26-013 P1", "26-013 P2", "--alive", "12");

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).contains("--alive has 1 number for 2 codes");
  }

  @Test
  void moreThanWasSownIsTakenWithANote() {
    Outcome outcome = filial("count", "26-013 P1", "--up", "21");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.err()).contains("more came up in 26-013E P1 (21) than was sown (20)");
  }

  @Test
  void theOnlyPotGoesUnsaidAndOfSeveralOneIsNamed() {
    assertThat(filial("count", "26-008", "--alive", "7").out()).contains("26-008X P1: 7 alive");
    assertThat(filial("count", "26-013", "--alive", "12").err())
        .contains("26-013E has 3 pots: 26-013E P1 (13), 26-013E P2 (12), 26-013E P3");
    // Nothing is up in the second yet, which makes it a pot all the same.
    assertThat(filial("count", "26-011", "--alive", "12").err())
        .contains("26-011C has 2 pots: 26-011C P1 (21), 26-011C P2 (0)");
    assertThat(filial("count", "26-012", "--alive", "12").err())
        .contains("nothing of 26-012D stands in a pot");
  }

  @Test
  void whatWasCountedIsAskedForWhereSomebodyCanAnswer() {
    Outcome outcome = new CommandLineRun().in(folder).answering("P2", "8").run("count", "26-013");

    assertThat(outcome.out()).contains("26-013E P2: 8 alive");
    assertThat(filial("count", "26-013 P1").err()).contains("--up or --alive is missing");
  }

  @Test
  void seedlingsPottedOnLeaveTheirPot() {
    assertThat(filial("pot", "26-013 P2", "5", "--place", "window").out())
        .startsWith("Entry 260: 5 seedlings of 26-013E P2 potted as 26-013E P4, window.\n");
    assertThat(filial("pot", "26-013 P2", "8").err()).contains("26-013E P2 held 7 when 8 left it");
  }

  @Test
  void numbersGoOnWithinTheCrossWhateverThePot() {
    Outcome outcome = filial("number", "26-013 P3", "2");

    assertThat(outcome.out())
        .startsWith("Entry 260: 26-013E-8 to -9 numbered from 26-013E P3.\n")
        .contains("    26-013E-8  4 APR 26  BC2 | Morgenrot × Rosa\n")
        .endsWith("Next: see one of them: filial show 26-013E-8\n");
    assertThat(json("number", "26-013 P1", "1", "--json").get("codes").toString())
        .isEqualTo("[\"26-013E-10\"]");
  }

  @Test
  void manySeedlingsAreNotAllShownButAllAnswered() {
    assertThat(filial("count", "26-013 P1", "--alive", "40").status()).isZero();

    assertThat(filial("number", "26-013 P1", "20").out()).contains("-8 ", "... and so on", "-27 ");
    assertThat(json("number", "26-013 P1", "20", "--json").get("tags")).hasSize(20);
  }

  @Test
  void thePickedAreTalliedNext() {
    assertThat(filial("number", "26-013 P2", "2", "--picked-for", "tips").out())
        .contains("picked for tips")
        .contains("filial tally \"26-013E P2\"\n      tips STATE=COUNT ...");
    assertThat(filial("number", "26-013 P2", "2", "--picked-for", "beauty").err())
        .contains("no trait is called \"beauty\"");
  }

  @Test
  void numbersOnWrittenTagsAreTaken() {
    assertThat(json("number", "26-013 P2", "2", "--code", "26-013-20", "--json").get("codes"))
        .hasToString("[\"26-013E-20\",\"26-013E-21\"]");
    assertThat(filial("number", "26-013 P2", "2", "--code", "26-013-19").err())
        .contains("26-013E-20 is taken already");
    assertThat(filial("number", "26-013 P2", "2", "--code", "P9").status()).isEqualTo(2);
  }

  @Test
  void noSeedlingAndTooManyAreRefused() {
    assertThat(filial("number", "26-013 P2", "0").status()).isEqualTo(2);
    assertThat(filial("number", "26-013 P2", "13").err())
        .contains("26-013E P2 held 12 when 13 left it");
    assertThat(filial("number", "26-013 P2", "999999999").status()).isEqualTo(1);
  }

  @Test
  void aCrossWhoseSowingNobodyWroteDownGivesSeedlingsAllTheSame() {
    assertThat(filial("number", "26-014", "2").out())
        .startsWith("Entry 260: 26-014H-1 to -2 numbered from 26-014H.\n");
  }

  @Test
  void aTallyCountsStates() {
    assertThat(filial("tally", "26-013 P1", "tips", "red=9", "plain=4").out())
        .startsWith("Entry 260: 26-013E P1, tips: 9 red, 4 plain.\n");
  }

  @Test
  void aTallyOfWhatTheTraitDoesNotHaveIsRefused() {
    Outcome outcome = filial("tally", "26-013 P1", "tips", "blue=9");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("tips has no state \"blue\"; it is one of red, plain");
  }

  @ParameterizedTest
  @ValueSource(strings = {"red", "=9", "red=~9", "red=-1"})
  void aTallyThatCannotBeReadIsAWrongCommandLine(String showing) {
    assertThat(filial("tally", "26-013 P1", "tips", showing).status()).isEqualTo(2);
  }

  @Test
  void aStateIsTalliedOnce() {
    assertThat(filial("tally", "26-013 P1", "tips", "red=9", "red=4").status()).isEqualTo(2);
  }

  @Test
  void anythingMayStandInWords() {
    String long300 = "ä".repeat(300);

    assertThat(
            filial("sow", "26-012", "9", "--place", "O'Hara's <b> 🌵", "--medium", long300)
                .status())
        .isZero();
    assertThat(filial("pot", "26-013 P2", "5", "--place", "\"quoted\"").status()).isZero();
  }
}

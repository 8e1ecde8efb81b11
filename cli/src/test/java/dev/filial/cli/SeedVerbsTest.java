package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Harvesting, putting apart and mixing seed, on the demo bench. */
class SeedVerbsTest {

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
  void theFirstHarvestOfACrossIsItsLotOne() {
    Outcome outcome = filial("harvest", "26-014", "60", "--fruits", "2");

    assertThat(outcome)
        .isEqualTo(
            new Outcome(
                0,
                """
                Entry 260: 26-014H H1 harvested: 60 seeds from 2 fruits.
                Write on the tag:
                    26-014H H1  15 JUN 26
                    24-007E-2 × Anna
                Next: when you sow it: filial sow "26-014H H1" COUNT
                """,
                ""));
  }

  @Test
  void theNextHarvestTakesTheNextLot() {
    assertThat(json("harvest", "26-013", "~30", "--json").get("code").stringValue())
        .isEqualTo("26-013E H4");
  }

  @Test
  void aWeighedHarvestIsAGuessAtItsNumber() {
    // 12 mg of seed of which 9000 go into a gram: 12 × 9000 / 1000 = 108.
    assertThat(filial("harvest", "26-014", "--mg", "12", "--per-gram", "9000").out())
        .startsWith("Entry 260: 26-014H H1 harvested: ~108 seeds.\n");
  }

  @Test
  void theLotOnAWrittenPacketIsTaken() {
    assertThat(json("harvest", "26-014", "9", "--code", "h3", "--json").get("code").stringValue())
        .isEqualTo("26-014H H3");
    assertThat(json("harvest", "26-014", "9", "--code", "26-014 H2", "--json").get("code"))
        .hasToString("\"26-014H H2\"");
  }

  @Test
  void theLotOfAnotherCrossIsNotTaken() {
    Outcome outcome = filial("harvest", "26-014", "9", "--code", "26-012 H7");

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err())
        .contains("26-012D H7 cannot be the code of this")
        .contains("26-014H H1");
  }

  @Test
  void aPlantIsNotHarvestedButTheCrossItBears() {
    Outcome outcome = filial("harvest", "Morgenrot", "20");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("24-007E-1 is a seedling, not a cross").contains("26-013E");
  }

  @Test
  void fruitIsNotHarvestedBeforeTheCross() {
    Outcome outcome = filial("harvest", "26-014", "20", "--date", "1 may 26");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("2026-05-01 is before the cross was made");
  }

  @Test
  void withoutANumberAndWithoutAnybodyToAskNothingIsWritten() {
    Outcome outcome = filial("harvest", "26-014");

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).startsWith("filial harvest: COUNT is missing.");
  }

  @Test
  void whoSitsThereIsAskedUntilTheNumberCanBeRead() {
    Outcome outcome =
        new CommandLineRun().in(folder).answering("a lot", "~60").run("harvest", "26-014");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.out()).contains("~60 seeds");
    assertThat(outcome.err()).contains("How many seeds?").contains("\"a lot\" is not a count");
  }

  @Test
  void oneFruitKeptApartIsNotSeveral() {
    assertThat(filial("harvest", "26-014", "9", "--apart", "--fruits", "2").status()).isEqualTo(2);
    assertThat(filial("harvest", "26-014", "9", "--apart").out()).contains("from 1 fruit.");
  }

  @Test
  void aWeightIsANumber() {
    Outcome outcome = filial("harvest", "26-014", "--mg", "heavy");

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).contains("\"heavy\" is not a number");
  }

  @Test
  void theOnlyLotGoesUnsaidWhenItIsSplit() {
    assertThat(filial("split", "26-012", "20").out())
        .startsWith("Entry 260: 20 seeds of 26-012D H1 put apart as 26-012D H2.\n");
  }

  @Test
  void whereSeveralLotsHaveSeedOneIsNamed() {
    Outcome outcome = filial("split", "26-013", "20");

    assertThat(outcome.status()).isEqualTo(1);
    // H3 was given away: two are left to choose from.
    assertThat(outcome.err())
        .contains("26-013E has 2 seed lots: 26-013E H1 (60), 26-013E H2 (60); name");
  }

  @Test
  void whoSitsThereIsAskedWhichLot() {
    Outcome outcome = new CommandLineRun().in(folder).answering("H2").run("split", "26-013", "20");

    assertThat(outcome.out()).contains("20 seeds of 26-013E H2 put apart as 26-013E H4");
  }

  @Test
  void moreThanIsThereCannotBePutApart() {
    Outcome outcome = filial("split", "26-013 H2", "61");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("26-013E H2 held 60 when 61 left it");
  }

  @Test
  void countedLotsMixInProportionToTheirSeeds() {
    Outcome outcome = filial("mix", "26-012", "26-013 H2");

    // 120 and 60 seeds.
    assertThat(outcome.out())
        .startsWith("Entry 260: 26-015J mixed from 26-012D H1 (2/3), 26-013E H2 (1/3).\n");
    assertThat(outcome.err()).startsWith("Note: the shares follow from the numbers of seeds");
  }

  @Test
  void uncountedLotsMixAlikeAndThatIsSaid() {
    Outcome outcome = filial("mix", "26-012", "26-010 H1");

    assertThat(outcome.out()).contains("26-012D H1 (1/2), 26-010A H1 (1/2)");
    assertThat(outcome.err()).startsWith("Note: not every lot was counted");
  }

  @Test
  void statedSharesAreTakenAndNothingIsSaid() {
    Outcome outcome = filial("mix", "26-012=1/4", "26-013 H2=75%");

    assertThat(outcome.out()).contains("26-012D H1 (1/4), 26-013E H2 (3/4)");
    assertThat(outcome.err()).isEmpty();
  }

  @Test
  void sharesThatDoNotComeToOneAreRefused() {
    Outcome outcome = filial("mix", "26-012=1/4", "26-013 H2=1/4");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("come to 1/2; they must come to 1");
  }

  @Test
  void aShareForOneLotOnlyIsAWrongCommandLine() {
    assertThat(filial("mix", "26-012=1/4", "26-013 H2").status()).isEqualTo(2);
    assertThat(filial("mix", "26-012=much", "26-013 H2=1").err())
        .contains("\"much\" is not a fraction");
  }

  @Test
  void aMixtureHasTheAncestryOfItsLots() {
    assertThat(filial("mix", "26-012", "26-013 H2").status()).isZero();

    // 2/3 of a half lilacina.
    assertThat(filial("ancestry", "26-015").out()).containsPattern("Echeveria lilacina +1/3");
  }
}

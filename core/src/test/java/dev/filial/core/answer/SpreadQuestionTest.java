package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.answer.AncestryQuestion.Ancestry;
import dev.filial.core.answer.LikelyShares.Likely;
import dev.filial.core.name.Code;
import dev.filial.core.register.ProfileStated;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class SpreadQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);
  private final Code f1 = bench.seedling(bench.cross(laui, agavoides));
  private final Code bc1 = bench.cross(f1, laui);

  private Ancestry asked(Code code, SpreadQuestion how) {
    return AncestryQuestion.of(bench.store).withSpread(how).ask(code);
  }

  private LikelyShares likely(Code code, SpreadQuestion how) {
    return Objects.requireNonNull(asked(code, how).likely());
  }

  /** Hill 1993: eleven chromosomes of a morgan, BC1, standard deviation 0.0567924672. */
  @Test
  void aBackcrossSeedlingLiesWithinItsRange() {
    LikelyShares likely = likely(bc1, SpreadQuestion.usual());

    assertThat(likely.map()).isEqualTo("11 chromosomes of 100 cM");
    assertThat(likely.mapFrom()).isNull();
    assertThat(likely.mapAssumed()).isTrue();
    assertThat(likely.genomes()).isEqualTo(SpreadQuestion.GENOMES);
    assertThat(likely.different()).isCloseTo(0.5, within(1e-12));
    assertThat(likely.likeClass()).isEqualTo("as in a BC1");
    Likely donor = likely.taxa().get(1);
    assertThat(donor.taxon()).isEqualTo(AGAVOIDES);
    assertThat(donor.standardDeviation()).isCloseTo(0.0567924672, within(1e-9));
    assertThat(donor.low()).isCloseTo(0.25 - 1.645 * 0.0568, within(0.01));
    assertThat(donor.high()).isCloseTo(0.25 + 1.645 * 0.0568, within(0.01));
    assertThat(donor.absentAtLocus()).isCloseTo(0.5, within(1e-12));
    assertThat(donor.lessThan()).isNull();
    assertThat(donor.histogram().stream().mapToInt(Integer::intValue).sum())
        .isEqualTo(SpreadQuestion.GENOMES);
  }

  @Test
  void theChanceOfLessIsCounted() {
    Likely donor = likely(bc1, SpreadQuestion.usual().withLessThan(0.25)).taxa().get(1);

    assertThat(donor.lessThan()).isCloseTo(0.5, within(0.03));
    assertThat(likely(bc1, SpreadQuestion.usual().withLessThan(0.25)).genomes()).isEqualTo(10_000);
  }

  @Test
  void theMapStatedForAGenusIsUsedAndOneGivenGoesBeforeIt() {
    bench.say(ProfileStated.ofMap("Echeveria", GeneticMap.parse("27x80")));

    LikelyShares stated = likely(bc1, SpreadQuestion.usual());
    assertThat(stated.map()).isEqualTo("27 chromosomes of 80 cM");
    assertThat(stated.mapFrom()).isEqualTo("Echeveria");
    LikelyShares given = likely(bc1, SpreadQuestion.usual().withMap(GeneticMap.of(1)));
    assertThat(given.map()).isEqualTo("1 chromosome of 100 cM");
    assertThat(given.mapFrom()).isNull();
    assertThat(given.mapAssumed()).isFalse();
    assertThat(given.taxa().get(1).standardDeviation()).isCloseTo(0.1883593045, within(1e-9));
  }

  @Test
  void theSameDiceGiveTheSameGenomes() {
    SpreadQuestion some = SpreadQuestion.usual().withGenomes(500);

    assertThat(likely(bc1, some)).isEqualTo(likely(bc1, some));
    assertThat(likely(bc1, some.withDice(2)).taxa()).isNotEqualTo(likely(bc1, some).taxa());
    assertThat(likely(bc1, some).genomes()).isEqualTo(500);
  }

  @Test
  void behindManyPlantsTheRangeIsByTheStandardDeviation() {
    Code last = f1;
    for (int i = 0; i < SpreadQuestion.FEW; i++) {
      last = bench.seedling(bench.selfed(last));
    }
    LikelyShares likely = likely(last, SpreadQuestion.usual());

    assertThat(likely.genomes()).isZero();
    Likely one = likely.taxa().get(0);
    assertThat(one.low())
        .isCloseTo(0.5 - 1.6448536269514722 * one.standardDeviation(), within(1e-12));
    assertThat(one.lost()).isNull();
    assertThat(one.histogram()).isEmpty();
    assertThat(likely.likeClass()).as("an F65 is no F4").isNull();
    // The range that is found by dropping is as good as the same.
    Likely dropped = likely(last, SpreadQuestion.usual().withDropping()).taxa().get(0);
    assertThat(dropped.low()).isCloseTo(one.low(), within(0.02));
    assertThat(dropped.high()).isCloseTo(one.high(), within(0.02));
  }

  /**
   * By selfing ½, ¼, ⅛ of the loci are left where the taxa meet, from the F2 on: of an F4 ⅛, as the
   * table has it, of an F5 1/16. An F2 × BC1 has no name of its own: ⅝ of laui, and taxa meet where
   * just one of two gametes brings agavoides, ¾ × ½ + ¼ × ½ = ½.
   */
  @Test
  void aGenerationThatIsKnownIsNotCalledNearAnother() {
    Code f2 = bench.seedling(bench.selfed(f1));
    Code f4 = bench.seedling(bench.selfed(bench.seedling(bench.selfed(f2))));
    assertThat(likely(f4, SpreadQuestion.usual()).likeClass()).isEqualTo("as in an F4 by selfing");
    Code f5 = bench.seedling(bench.selfed(f4));
    assertThat(likely(f5, SpreadQuestion.usual()).different()).isEqualTo(1 / 16.0, within(1e-12));
    assertThat(likely(f5, SpreadQuestion.usual()).likeClass()).isNull();
    Code between = bench.seedling(bench.cross(f2, bench.seedling(bc1)));
    assertThat(likely(between, SpreadQuestion.usual()).different()).isEqualTo(0.5, within(1e-12));
    assertThat(likely(between, SpreadQuestion.usual()).likeClass())
        .isEqualTo("nearest to an F2 or a BC1");
  }

  @Test
  void purePlantsHaveNothingToSpread() {
    assertThat(asked(laui, SpreadQuestion.usual()).likely()).isNull();
    assertThat(AncestryQuestion.of(bench.store).ask(bc1).likely()).isNull();
    assertThat(likely(f1, SpreadQuestion.usual()).likeClass()).isEqualTo("as in an F1");
  }

  @Test
  void whereThereIsNoSpreadANoteSaysWhy() {
    bench.taxon("Echeveria lilacina", null, 4);
    Code four = bench.plant("Echeveria lilacina");
    Code triploid = bench.seedling(bench.cross(four, laui));
    Ancestry answer = asked(triploid, SpreadQuestion.usual());

    assertThat(answer.likely()).isNull();
    assertThat(answer.notes())
        .anyMatch(
            note ->
                note.startsWith(
                    "No likely range can be given: " + four.text() + " has 4 chromosome sets"));
  }

  @Test
  void genomesHaveToBeDropped() {
    assertThatThrownBy(() -> likely(bc1, SpreadQuestion.usual().withGenomes(0)))
        .hasMessage("0 genomes to drop; state 1 or more");
  }
}

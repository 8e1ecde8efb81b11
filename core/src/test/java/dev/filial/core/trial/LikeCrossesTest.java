package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.trial.LikeCrosses.Basis;
import dev.filial.core.trial.LikeCrosses.Differences;
import dev.filial.core.trial.LikeCrosses.Forecast;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LikeCrossesTest {

  private static final double TENTH = 1e-9;

  private static LikeCrosses someOf(int[] some, int[] all) {
    List<long[]> families = new ArrayList<>();
    for (int i = 0; i < some.length; i++) {
      families.add(new long[] {some[i], all[i] - some[i]});
    }
    return LikeCrosses.of(families);
  }

  /**
   * Seeds of Orobanche that germinated on five plates with bean root: Crowder 1978, Beta-binomial
   * Anova for proportions, Applied Statistics 27:34-37, counts from memory. By R 4.2.2, {@code
   * core/src/test/reference/published_families.R}: chisq.test, the correlation from the mean
   * squares of anova, the beta-binomial summed.
   */
  @Test
  void platesThatDifferMakeTheForecastWider() {
    int[] germinated = {10, 23, 23, 26, 17};
    int[] sown = {39, 62, 81, 51, 39};
    LikeCrosses plates = someOf(germinated, sown);

    Differences differences = plates.differences().orElseThrow();
    assertThat(differences.chiSquare()).isCloseTo(9.7595421534, within(TENTH));
    assertThat(differences.degreesOfFreedom()).isEqualTo(4);
    assertThat(differences.p()).isCloseTo(0.0446789302, within(TENTH));
    assertThat(differences.overdispersion()).isCloseTo(2.4398855383, within(TENTH));
    assertThat(differences.leastExpected()).isCloseTo(14.1948529412, within(TENTH));
    assertThat(plates.correlation(0)).isCloseTo(0.0271159382, within(TENTH));

    Forecast next = plates.forecast(0, 40, 0.95);
    assertThat(next.basis()).isEqualTo(Basis.FAMILIES_DIFFER);
    assertThat(next.fewest()).isEqualTo(6);
    assertThat(next.most()).isEqualTo(25);
    assertThat(next.expected()).isCloseTo(14.8698735424, within(TENTH));
    assertThat(next.chance()).isCloseTo(0.9689338350, within(TENTH));
    Forecast half = plates.forecast(0, 40, 0.5);
    assertThat(half.fewest()).isEqualTo(12);
    assertThat(half.most()).isEqualTo(18);
    assertThat(half.chance()).isCloseTo(0.5292878910, within(TENTH));

    // All seeds in one heap, as if plates were alike.
    Forecast heap = LikeCrosses.of(List.of(new long[] {99, 272 - 99})).forecast(0, 40, 0.95);
    assertThat(heap.fewest()).isEqualTo(8);
    assertThat(heap.most()).isEqualTo(21);
    assertThat(heap.chance()).isCloseTo(0.9699037308, within(TENTH));
  }

  /** The same seed with cucumber root: Crowder 1978, from memory; by the same script. */
  @Test
  void aFewSeedsOnAPlateMakeTheTestRough() {
    LikeCrosses plates =
        someOf(new int[] {5, 53, 55, 32, 46, 10}, new int[] {6, 74, 72, 51, 79, 13});

    Differences differences = plates.differences().orElseThrow();
    assertThat(differences.chiSquare()).isCloseTo(8.0282880844, within(TENTH));
    assertThat(differences.p()).isCloseTo(0.1546834912, within(TENTH));
    assertThat(differences.leastExpected()).isCloseTo(1.9118644068, within(TENTH));
    assertThat(plates.correlation(0)).isCloseTo(0.0133388505, within(TENTH));
    Forecast next = plates.forecast(0, 40, 0.95);
    assertThat(next.fewest()).isEqualTo(19);
    assertThat(next.most()).isEqualTo(34);
    assertThat(next.expected()).isCloseTo(27.3404837431, within(TENTH));
    assertThat(next.chance()).isCloseTo(0.9601498727, within(TENTH));
  }

  /** 18 of 25, the next 20: by R 4.2.2, the beta-binomial under a flat prior summed. */
  @Test
  void oneFamilyIsForecastAloneAndSaysSo() {
    LikeCrosses cross = LikeCrosses.of(List.of(new long[] {18, 7}));

    Forecast next = cross.forecast(0, 20, 0.95);
    assertThat(next.fewest()).isEqualTo(9);
    assertThat(next.most()).isEqualTo(19);
    assertThat(next.expected()).isCloseTo(14.0740740741, within(TENTH));
    assertThat(next.chance()).isCloseTo(0.9690972904, within(TENTH));
    assertThat(next.basis()).isEqualTo(Basis.ONE_FAMILY);
    assertThat(cross.differences()).isEmpty();
    assertThat(cross.pooled(0)).isEqualTo(new Proportion(18, 25));
  }

  @Test
  void familiesJustAlikeAreForecastAsOne() {
    LikeCrosses three =
        LikeCrosses.of(List.of(new long[] {6, 2}, new long[] {6, 2}, new long[] {6, 2}));
    LikeCrosses one = LikeCrosses.of(List.of(new long[] {18, 6}));

    assertThat(three.correlation(0)).isZero();
    assertThat(three.forecast(0, 30, 0.9).basis()).isEqualTo(Basis.FAMILIES_ALIKE);
    assertThat(three.chanceOf(0, 20, 30)).isCloseTo(one.chanceOf(0, 20, 30), within(1e-12));
    assertThat(three.differences().orElseThrow().p()).isEqualTo(1);
  }

  /** Each family all or none: the next one is too, half of the time either. */
  @Test
  void familiesAllOrNoneForecastAllOrNone() {
    LikeCrosses crosses = LikeCrosses.of(List.of(new long[] {12, 0}, new long[] {0, 12}));

    assertThat(crosses.correlation(0)).isEqualTo(1);
    assertThat(crosses.chanceOf(0, 1, 30)).isCloseTo(0.5, within(1e-12));
    assertThat(crosses.chanceOf(0, 30, 30)).isCloseTo(0.5, within(1e-12));
    Forecast next = crosses.forecast(0, 30, 0.8);
    assertThat(next.fewest()).isZero();
    assertThat(next.most()).isEqualTo(30);
  }

  @Test
  void familiesOfOneSeedlingCannotShowADifference() {
    LikeCrosses crosses =
        LikeCrosses.of(List.of(new long[] {1, 0}, new long[] {0, 1}, new long[] {1, 0}));

    assertThat(crosses.correlation(0)).isZero();
    assertThat(crosses.chanceOf(0, 1, 1)).isCloseTo(3 / 5.0, within(1e-12));
  }

  @Test
  void aStateNeverSeenIsLeftOutOfTheTestAndStillPossible() {
    LikeCrosses crosses = LikeCrosses.of(List.of(new long[] {10, 5, 0}, new long[] {8, 7, 0}));

    assertThat(crosses.differences().orElseThrow().degreesOfFreedom()).isEqualTo(1);
    // Laplace's rule: none of 30 leaves 1 in 32 for the next.
    assertThat(crosses.chanceOf(2, 1, 1)).isCloseTo(1 / 32.0, within(1e-12));
    assertThat(LikeCrosses.of(List.of(new long[] {3, 0}, new long[] {9, 0})).differences())
        .isEmpty();
  }

  /** Two sums of one distribution: there by gamma functions, here factor by factor. */
  @Property(tries = 200)
  void oneFamilyIsTheCountedRateOfSeedsToSow(
      @ForAll @IntRange(max = 60) int some,
      @ForAll @IntRange(min = 1, max = 60) int others,
      @ForAll @IntRange(max = 80) int atLeast,
      @ForAll @IntRange(max = 80) int next) {
    assertThat(LikeCrosses.of(List.of(new long[] {some, others})).chanceOf(0, atLeast, next))
        .isCloseTo(
            SeedsToSow.of(1).withRate(new Proportion(some, some + others)).chanceOf(atLeast, next),
            within(1e-10));
  }

  @Property(tries = 200)
  void aSurerIntervalHoldsTheLessSure(
      @ForAll @Size(min = 1, max = 5)
          List<@Size(3) List<@IntRange(min = 1, max = 30) Integer>> counts,
      @ForAll @IntRange(max = 100) int next) {
    LikeCrosses crosses = crosses(counts);
    Forecast inner = crosses.forecast(0, next, 0.001);
    for (double certainty : new double[] {0.2, 0.5, 0.8, 0.95, 0.999}) {
      Forecast outer = crosses.forecast(0, next, certainty);
      assertThat(outer.fewest()).isBetween(0, inner.fewest());
      assertThat(outer.most()).isBetween(inner.most(), next);
      assertThat(outer.chance()).isGreaterThanOrEqualTo(certainty - 1e-12);
      inner = outer;
    }
  }

  @Property(tries = 200)
  void theStatesTogetherAreTheWholeNextFamily(
      @ForAll @Size(min = 1, max = 5)
          List<@Size(2) List<@IntRange(min = 1, max = 30) Integer>> counts,
      @ForAll @IntRange(max = 100) int next,
      @ForAll @IntRange(max = 100) int some) {
    LikeCrosses crosses = crosses(counts);

    assertThat(crosses.correlation(0)).isCloseTo(crosses.correlation(1), within(1e-12));
    assertThat(crosses.chanceOf(0, some, next) + crosses.chanceOf(1, next - some + 1, next))
        .isCloseTo(1, within(1e-10));
    assertThat(
            crosses.forecast(0, next, 0.9).expected() + crosses.forecast(1, next, 0.9).expected())
        .isCloseTo(next, within(1e-8));
  }

  private static LikeCrosses crosses(List<List<Integer>> counts) {
    return LikeCrosses.of(
        counts.stream()
            .map(family -> family.stream().mapToLong(Integer::longValue).toArray())
            .toList());
  }

  @Test
  void whatCannotBeForecastIsNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LikeCrosses.of(List.of()))
        .withMessage("no like cross; without one there is nothing to forecast from");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LikeCrosses.of(List.of(new long[] {1, 2}, new long[] {1, 2, 3})))
        .withMessageStartingWith("families with 2 and 3 states; give each a count");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LikeCrosses.of(List.of(new long[] {1, 2}, new long[] {0, 0})))
        .withMessageStartingWith("a family of none");
    LikeCrosses crosses = LikeCrosses.of(List.of(new long[] {1, 2}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> crosses.forecast(2, 10, 0.9))
        .withMessage("state 2 of 2; states are numbered from 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> crosses.forecast(0, -1, 0.9))
        .withMessage("a forecast for -1 seedlings; ask for 0 to 100000");
    assertThatIllegalArgumentException().isThrownBy(() -> crosses.forecast(0, 10, 1));
  }
}

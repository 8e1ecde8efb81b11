package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Values by R 4.2.2, in core/src/test/reference/germination.R. */
class GerminationCurveTest {

  private static GerminationCurve twenty() {
    return GerminationCurve.of(20, Map.of(7, 3, 11, 8, 18, 11, 28, 12));
  }

  @Test
  void twelveOfTwentySeedsOverFourWeeks() {
    GerminationCurve curve = twenty();

    assertThat(curve.germination()).isEqualTo(new Proportion(12, 20));
    // (3·7 + 5·11 + 3·18 + 1·28) / 12
    assertThat(curve.meanTime().orElseThrow()).isCloseTo(158.0 / 12, within(1e-12));
    assertThat(curve.deviation().orElseThrow()).isCloseTo(6.2352857095, within(1e-9));
    // Half of 12 is 6; 3 were up on day 7 and 8 on day 11: 7 + 3·4/5.
    assertThat(curve.halfTime()).contains(new GerminationCurve.HalfTime(9.4, false));
    assertThat(curve.speed().orElseThrow()).isCloseTo(1.0854978355, within(1e-9));
    assertThat(curve.germination().score(0.95).lower()).isCloseTo(0.3865815008, within(1e-9));
  }

  @Test
  void fiftySeedsCountedNearlyEveryDay() {
    GerminationCurve curve =
        GerminationCurve.of(50, Map.of(4, 1, 5, 6, 6, 17, 7, 29, 8, 35, 10, 40, 14, 41));

    assertThat(curve.meanTime().orElseThrow()).isCloseTo(7.0975609756, within(1e-9));
    assertThat(curve.deviation().orElseThrow()).isCloseTo(1.8682194471, within(1e-9));
    assertThat(curve.halfTime().orElseThrow().days()).isCloseTo(6.2916666667, within(1e-9));
    assertThat(curve.speed().orElseThrow()).isCloseTo(6.1190476190, within(1e-9));
  }

  @Test
  void halfWereUpAtTheFirstCount() {
    GerminationCurve curve = GerminationCurve.of(20, Map.of(10, 15, 20, 16));

    // 8 of 16 are half, and 15 were up by day 10: on which of the ten days nobody knows.
    assertThat(curve.halfTime()).contains(new GerminationCurve.HalfTime(10, true));
  }

  @Test
  void aCountThatFoundNoneBoundsTheDayBelow() {
    GerminationCurve curve = GerminationCurve.of(20, Map.of(7, 0, 14, 20));

    // 10 of 20 on the line from none on day 7 to 20 on day 14.
    assertThat(curve.halfTime()).contains(new GerminationCurve.HalfTime(10.5, false));
    assertThat(curve.isAllAtFirstCount()).isFalse();
    assertThat(GerminationCurve.of(20, Map.of(14, 20)).isAllAtFirstCount()).isTrue();
  }

  @Test
  void nothingCameUp() {
    GerminationCurve curve = GerminationCurve.of(20, Map.of(21, 0));

    assertThat(curve.germination().share()).isZero();
    assertThat(curve.meanTime()).isEmpty();
    assertThat(curve.deviation()).isEmpty();
    assertThat(curve.halfTime()).isEmpty();
    assertThat(curve.speed().orElseThrow()).isZero();
  }

  @Test
  void aCountThatFallsOrExceedsWhatWasSownIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> GerminationCurve.of(20, Map.of(7, 5, 9, 4)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> GerminationCurve.of(4, Map.of(7, 5)))
        .withMessage("5 came up of 4 sown; mend one of the two");
    assertThatIllegalArgumentException().isThrownBy(() -> GerminationCurve.of(4, Map.of(-1, 2)));
    assertThatIllegalArgumentException().isThrownBy(() -> GerminationCurve.of(0, Map.of()));
  }

  @Provide
  Arbitrary<Map<Integer, Integer>> newly() {
    return Arbitraries.maps(
            Arbitraries.integers().between(1, 90), Arbitraries.integers().between(0, 9))
        .ofMaxSize(8);
  }

  private static int sum(Map<Integer, Integer> newly) {
    return newly.values().stream().mapToInt(Integer::intValue).sum();
  }

  @Property
  void oneMoreThatIsCountedNeverLowersThePercentage(
      @ForAll("newly") Map<Integer, Integer> newly, @ForAll("newly") Map<Integer, Integer> late) {
    int sown = sum(newly) + sum(late) + 1;
    Map<Integer, Integer> more = new TreeMap<>(newly);
    late.forEach((day, number) -> more.merge(day, number, Integer::sum));

    assertThat(GerminationCurve.ofNewly(sown, more).germination().share())
        .isGreaterThanOrEqualTo(GerminationCurve.ofNewly(sown, newly).germination().share());
  }

  @Property
  void potsOfASowingAddUpToIt(
      @ForAll("newly") Map<Integer, Integer> one, @ForAll("newly") Map<Integer, Integer> other) {
    Map<Integer, Integer> both = new TreeMap<>(one);
    other.forEach((day, number) -> both.merge(day, number, Integer::sum));

    GerminationCurve pots =
        GerminationCurve.ofNewly(sum(one) + 1, one)
            .plus(GerminationCurve.ofNewly(sum(other) + 1, other));

    assertThat(pots).isEqualTo(GerminationCurve.ofNewly(sum(both) + 2, both));
    assertThat(pots)
        .isEqualTo(
            GerminationCurve.ofNewly(sum(other) + 1, other)
                .plus(GerminationCurve.ofNewly(sum(one) + 1, one)));
  }

  @Test
  void halfOfSeveralIsOnTheLineBetweenDaysOnWhichAllWereCounted() {
    GerminationCurve often = GerminationCurve.of(20, Map.of(10, 3, 15, 5, 20, 5));
    GerminationCurve seldom = GerminationCurve.of(20, Map.of(7, 0, 10, 2, 20, 8));

    // 5 of 13 by day 10, all by day 20; how many of the second were up on day 15 nobody saw.
    assertThat(GerminationCurve.halfTime(List.of(often, seldom)))
        .contains(new GerminationCurve.HalfTime(10 + 1.5 * 10 / 8, false));
    assertThat(often.plus(seldom).halfTime()).contains(new GerminationCurve.HalfTime(13.75, false));
  }

  @Test
  void halfOfSowingsThatWereNeverCountedOnOneDayIsKnownFromAboveOnly() {
    GerminationCurve one = GerminationCurve.of(20, Map.of(10, 5, 20, 10));
    GerminationCurve other = GerminationCurve.of(20, Map.of(7, 0, 14, 4, 21, 10));

    assertThat(GerminationCurve.halfTime(List.of(one, other)))
        .contains(new GerminationCurve.HalfTime(21, true));
  }

  @Property
  void halfOfSowingsCountedOnTheSameDaysIsThatOfAllTheirSeed(
      @ForAll("newly") Map<Integer, Integer> one, @ForAll @IntRange(min = 0, max = 9) int more) {
    Map<Integer, Integer> other = new TreeMap<>(one);
    other.replaceAll((day, number) -> (number + more) % 5);
    GerminationCurve first = GerminationCurve.ofNewly(sum(one) + 1, one);
    GerminationCurve second = GerminationCurve.ofNewly(sum(other) + 1, other);

    assertThat(GerminationCurve.halfTime(List.of(first))).isEqualTo(first.halfTime());
    assertThat(GerminationCurve.halfTime(List.of(first, second)))
        .isEqualTo(first.plus(second).halfTime());
  }

  @Property
  void halfOfSeveralIsNoEarlierThanAnybodyWasSeen(
      @ForAll("newly") Map<Integer, Integer> one, @ForAll("newly") Map<Integer, Integer> other) {
    GerminationCurve first = GerminationCurve.ofNewly(sum(one) + 1, one);
    GerminationCurve second = GerminationCurve.ofNewly(sum(other) + 1, other);

    GerminationCurve.halfTime(List.of(first, second))
        .filter(GerminationCurve.HalfTime::byFirstCount)
        .ifPresent(
            half ->
                assertThat(half.days())
                    .isGreaterThanOrEqualTo(
                        first.plus(second).halfTime().orElseThrow().days() - 1e-9));
  }

  @Property
  void theTimesLieAmongTheDaysCounted(@ForAll("newly") Map<Integer, Integer> newly) {
    GerminationCurve curve = GerminationCurve.ofNewly(sum(newly) + 1, newly);
    if (curve.up() > 0) {
      int first =
          curve.steps().stream().filter(step -> step.newly() > 0).findFirst().orElseThrow().day();
      int last = curve.steps().get(curve.steps().size() - 1).day();
      assertThat(curve.meanTime().orElseThrow()).isBetween(first - 1e-9, last + 1e-9);
      assertThat(curve.halfTime().orElseThrow().days()).isBetween(0.0, (double) last);
    }
  }
}

package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.trial.TwoProportions.Method;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.statistics.inference.ChiSquareTest;
import org.apache.commons.statistics.inference.FisherExactTest;
import org.junit.jupiter.api.Test;

/** Values by R 4.2.2, in core/src/test/reference/germination.R, where nothing else is said. */
class TwoProportionsTest {

  private static TwoProportions two(int a, int m, int b, int n) {
    return new TwoProportions(new Proportion(a, m), new Proportion(b, n));
  }

  /** The counts and intervals of Newcombe 1998, table II, method 10 (from memory: four digits). */
  @Test
  void theIntervalsThatNewcombePublished() {
    Proportion.Interval seventy = two(56, 70, 48, 80).interval(0.95);
    assertThat(seventy.lower()).isCloseTo(0.0524, within(5e-5));
    assertThat(seventy.upper()).isCloseTo(0.3339, within(5e-5));
    assertThat(seventy.lower()).isCloseTo(0.0524314724, within(1e-9));
    assertThat(seventy.upper()).isCloseTo(0.3338726540, within(1e-9));

    Proportion.Interval ten = two(9, 10, 3, 10).interval(0.95);
    assertThat(ten.lower()).isCloseTo(0.1705, within(5e-5));
    assertThat(ten.upper()).isCloseTo(0.8090, within(5e-5));
  }

  /** Criminals among twins, like-sexed pairs: Fisher 1935 (from memory), as in R's own examples. */
  @Test
  void theTwinsThatFisherTested() {
    assertThat(two(10, 13, 2, 17).exact().p()).isCloseTo(0.0005367241, within(1e-10));
    assertThat(two(10, 13, 2, 17).chiSquare().statistic()).isCloseTo(13.0316742081, within(1e-9));
    assertThat(two(10, 13, 2, 17).leastExpected()).isCloseTo(5.2, within(1e-12));
    assertThat(two(3, 4, 1, 4).exact().p()).isCloseTo(0.4857142857, within(1e-9));
  }

  @Test
  void whereFewAreExpectedTheExactTestIsTaken() {
    assertThat(two(9, 10, 3, 10).test().method()).isEqualTo(Method.EXACT);
    assertThat(two(9, 10, 3, 10).test().p()).isCloseTo(0.0197666111, within(1e-9));
    assertThat(two(16, 20, 12, 20).test().method()).isEqualTo(Method.CHI_SQUARE);
    assertThat(two(16, 20, 12, 20).test().statistic()).isCloseTo(1.9047619048, within(1e-9));
    assertThat(two(16, 20, 12, 20).test().p()).isCloseTo(0.1675462775, within(1e-9));
  }

  @Test
  void allOfBothOrNoneLeaveNothingToTest() {
    assertThat(two(0, 10, 0, 7).test().p()).isEqualTo(1);
    assertThat(two(10, 10, 7, 7).test().p()).isEqualTo(1);
    assertThat(two(10, 10, 7, 7).chiSquare().p()).isEqualTo(1);
    assertThat(two(10, 10, 0, 10).interval(0.95).upper()).isEqualTo(1);
  }

  /** All tables of the same sums, by whole numbers. */
  private static List<BigInteger> ways(int m, int n, int some) {
    return IntStream.rangeClosed(Math.max(0, some - n), Math.min(m, some))
        .mapToObj(k -> choose(m, k).multiply(choose(n, some - k)))
        .toList();
  }

  private static BigInteger choose(int n, int k) {
    BigInteger ways = BigInteger.ONE;
    for (int i = 1; i <= k; i++) {
      ways = ways.multiply(BigInteger.valueOf(n - k + i)).divide(BigInteger.valueOf(i));
    }
    return ways;
  }

  /**
   * By counting the tables, and against Apache Commons Statistics 1.1, which takes a table that is
   * exactly as likely as the one seen for a likelier one where rounding has it so: left out there.
   */
  @Property
  void countingAllTablesAndCommonsStatisticsFindTheSame(
      @ForAll @IntRange(min = 0, max = 30) int a,
      @ForAll @IntRange(min = 0, max = 30) int notA,
      @ForAll @IntRange(min = 0, max = 30) int b,
      @ForAll @IntRange(min = 0, max = 30) int notB) {
    if (a + notA == 0 || b + notB == 0) {
      return;
    }
    TwoProportions both = two(a, a + notA, b, b + notB);
    List<BigInteger> tables = ways(a + notA, b + notB, a + b);
    BigInteger seen = choose(a + notA, a).multiply(choose(b + notB, b));
    BigInteger all = tables.stream().reduce(BigInteger.ZERO, BigInteger::add);
    BigInteger tail =
        tables.stream()
            .filter(one -> one.compareTo(seen) <= 0)
            .reduce(BigInteger.ZERO, BigInteger::add);
    assertThat(both.exact().p())
        .isCloseTo(
            new BigDecimal(tail).divide(new BigDecimal(all), MathContext.DECIMAL64).doubleValue(),
            within(1e-9));
    if (tables.stream().filter(seen::equals).count() == 1) {
      assertThat(both.exact().p())
          .isCloseTo(
              FisherExactTest.withDefaults().test(new int[][] {{a, notA}, {b, notB}}).getPValue(),
              within(1e-9));
    }
    if (a + b > 0 && notA + notB > 0) {
      var chi = ChiSquareTest.withDefaults().test(new long[][] {{a, notA}, {b, notB}});
      assertThat(both.chiSquare().statistic()).isCloseTo(chi.getStatistic(), within(1e-9));
      assertThat(both.chiSquare().p()).isCloseTo(chi.getPValue(), within(1e-9));
    }
  }

  @Property
  void whichOfTheTwoComesFirstDoesNotMatter(
      @ForAll @IntRange(min = 0, max = 40) int a,
      @ForAll @IntRange(min = 0, max = 40) int notA,
      @ForAll @IntRange(min = 0, max = 40) int b,
      @ForAll @IntRange(min = 1, max = 40) int notB) {
    TwoProportions one = two(a, a + notA + 1, b, b + notB);
    TwoProportions other = new TwoProportions(one.other(), one.one());

    assertThat(other.exact().p()).isCloseTo(one.exact().p(), within(1e-9));
    assertThat(other.interval(0.95).lower()).isCloseTo(-one.interval(0.95).upper(), within(1e-12));
    assertThat(one.interval(0.95).lower()).isLessThanOrEqualTo(one.difference());
    assertThat(one.interval(0.95).upper()).isGreaterThanOrEqualTo(one.difference());
  }
}

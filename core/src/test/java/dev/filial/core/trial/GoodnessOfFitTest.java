package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.trial.Fit.Method;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.statistics.inference.AlternativeHypothesis;
import org.apache.commons.statistics.inference.BinomialTest;
import org.apache.commons.statistics.inference.ChiSquareTest;
import org.apache.commons.statistics.inference.GTest;
import org.apache.commons.statistics.inference.SignificanceResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GoodnessOfFitTest {

  private static final double TENTH = 1e-9;

  /** Mendel 1866, Versuche über Pflanzenhybriden; statistics by R 4.2.2's chisq.test. */
  @ParameterizedTest
  @CsvSource({
    "seed form, 5474, 1850, 0.2628800291, 0.6081484045",
    "cotyledon colour, 6022, 2001, 0.0149985459, 0.9025279516",
    "seed coat colour, 705, 224, 0.3907427341, 0.5319092474",
    "pod form, 882, 299, 0.0635055038, 0.8010387575",
    "pod colour, 428, 152, 0.4505747126, 0.5020621588",
    "flower position, 651, 207, 0.3496503497, 0.5543111254",
    "stem length, 787, 277, 0.6065162907, 0.4361025115"
  })
  void mendelsPeasFitThreeToOne(String what, long dominant, long recessive, double x, double p) {
    Fit fit = GoodnessOfFit.of(Ratio.of(3, 1)).test(dominant, recessive);

    assertThat(fit.method()).as(what).isEqualTo(Method.CHI_SQUARE);
    assertThat(fit.statistic()).isCloseTo(x, within(TENTH));
    assertThat(fit.p()).isCloseTo(p, within(TENTH));
  }

  /** Mendel 1866; by R 4.2.2. */
  @Test
  void formAndColourTogetherFitNineToThreeToThreeToOne() {
    GoodnessOfFit test = GoodnessOfFit.of(Ratio.parse("9:3:3:1"));

    Fit fit = test.test(315, 108, 101, 32);
    assertThat(fit.statistic()).isCloseTo(0.4700239808, within(TENTH));
    assertThat(fit.p()).isCloseTo(0.9254258951, within(TENTH));
    assertThat(fit.expected().get(0)).isEqualTo(312.75);

    Fit g = test.withMethod(Method.G).test(315, 108, 101, 32);
    assertThat(g.statistic()).isCloseTo(0.475445239, within(TENTH));
    assertThat(g.p()).isCloseTo(0.924251904, within(TENTH));
  }

  /** Mendel 1866, F3 of dominants; by R 4.2.2. */
  @Test
  void oneDominantInThreeBreedsTrue() {
    Fit fit = GoodnessOfFit.of(Ratio.of(1, 2)).test(193, 372);

    assertThat(fit.statistic()).isCloseTo(0.1734513274, within(TENTH));
    assertThat(fit.p()).isCloseTo(0.6770625436, within(TENTH));
  }

  /** By R 4.2.2, outcomes no likelier than the one seen being summed. */
  @Test
  void aSmallFamilyIsTestedExactly() {
    Fit four = GoodnessOfFit.of(Ratio.of(9, 3, 3, 1)).test(9, 1, 2, 0);
    assertThat(four.method()).isEqualTo(Method.EXACT);
    assertThat(four.why()).isEqualTo("fewer than five are expected of some class");
    assertThat(four.p()).isCloseTo(0.7887923298, within(TENTH));

    assertThat(GoodnessOfFit.of(Ratio.of(3, 1)).test(7, 5).p())
        .isCloseTo(0.1893200278, within(TENTH));
  }

  /** All 1.4 million outcomes in whole numbers, by a loop in Python 3.11 over math.comb. */
  @Test
  void twoHundredSeedlingsInFourClassesCanBeSummed() {
    Fit exact =
        GoodnessOfFit.of(Ratio.of(9, 3, 3, 1)).withMethod(Method.EXACT).test(120, 36, 32, 12);

    assertThat(exact.p()).isCloseTo(0.7330516826882422, within(1e-10));
  }

  /** Commons Statistics 1.1, another implementation of the same tests. */
  @Property(tries = 300)
  void agreesWithCommonsStatistics(
      @ForAll @Size(4) List<@IntRange(max = 200) Integer> seen,
      @ForAll @Size(4) List<@IntRange(min = 1, max = 30) Integer> terms) {
    long[] counts = seen.stream().mapToLong(Integer::longValue).toArray();
    counts[0]++;
    double[] shares = terms.stream().mapToDouble(Integer::doubleValue).toArray();
    Ratio ratio = Ratio.of(terms.stream().mapToLong(Integer::longValue).toArray());

    SignificanceResult chi = ChiSquareTest.withDefaults().test(shares, counts);
    Fit ours = GoodnessOfFit.of(ratio).withMethod(Method.CHI_SQUARE).test(counts);
    assertThat(ours.statistic())
        .isCloseTo(chi.getStatistic(), within(1e-9 * (1 + chi.getStatistic())));
    assertThat(ours.p()).isCloseTo(chi.getPValue(), within(1e-9));

    SignificanceResult g = GTest.withDefaults().test(shares, counts);
    Fit ourG = GoodnessOfFit.of(ratio).withMethod(Method.G).test(counts);
    assertThat(ourG.statistic()).isCloseTo(g.getStatistic(), within(1e-8 * (1 + g.getStatistic())));
    assertThat(ourG.p()).isCloseTo(g.getPValue(), within(1e-8));
  }

  /**
   * Commons Statistics 1.1: of two classes the exact test is the two-sided binomial one. Outcomes
   * just as likely as the one seen are left out here: rounding decides there whether they count.
   */
  @Property(tries = 300)
  void ofTwoClassesItIsTheBinomialTest(
      @ForAll @IntRange(max = 60) int some,
      @ForAll @IntRange(min = 1, max = 60) int others,
      @ForAll @IntRange(min = 1, max = 15) int term,
      @ForAll @IntRange(min = 1, max = 15) int other) {
    double share = (double) term / (term + other);
    BinomialDistribution outcomes = new BinomialDistribution(null, some + others, share);
    for (int outcome = 0; outcome <= some + others; outcome++) {
      double difference = outcomes.logProbability(outcome) - outcomes.logProbability(some);
      Assume.that(outcome == some || Math.abs(difference) > 1e-6);
    }
    double p =
        BinomialTest.withDefaults()
            .with(AlternativeHypothesis.TWO_SIDED)
            .test(some + others, some, share)
            .getPValue();

    assertThat(
            GoodnessOfFit.of(Ratio.of(term, other)).withMethod(Method.EXACT).test(some, others).p())
        .isCloseTo(p, within(1e-9));
  }

  @Property
  void theOrderOfTheClassesMakesNoDifference(
      @ForAll @IntRange(min = 1, max = 12) int a,
      @ForAll @IntRange(max = 12) int b,
      @ForAll @IntRange(max = 12) int c) {
    for (Method method : Method.values()) {
      assertThat(GoodnessOfFit.of(Ratio.of(1, 2, 1)).withMethod(method).test(a, b, c).p())
          .isCloseTo(
              GoodnessOfFit.of(Ratio.of(1, 2, 1)).withMethod(method).test(c, b, a).p(),
              within(1e-12));
    }
  }

  @Test
  void whatCannotBeTestedIsNamed() {
    GoodnessOfFit test = GoodnessOfFit.of(Ratio.of(9, 3, 3, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> test.test(3, 1))
        .withMessage(
            "2 counts for the 4 classes of 9:3:3:1; give one for each class, 0 if none was seen");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> test.test(3, 1, -1, 0))
        .withMessage("a count of -1; counts are 0 or more");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> test.test(0, 0, 0, 0))
        .withMessage("a family of none; there is nothing to test");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> test.withMethod(Method.EXACT).test(5_000, 5_000, 5_000, 1))
        .withMessageContaining("more outcomes than can be summed; test by chi-square");
    assertThat(test.test(5_000_000, 1, 1, 1).method()).isEqualTo(Method.CHI_SQUARE);
  }

  @Test
  void ratiosAreReadAndRefused() {
    assertThat(Ratio.parse("9:3:3:1").text()).isEqualTo("9:3:3:1");
    assertThat(Ratio.parse(" 18 : 6 : 6 : 2 ").text()).isEqualTo("9:3:3:1");
    assertThat(Ratio.parse("1:0.5").text()).isEqualTo("2:1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Ratio.parse("3;1"))
        .withMessage("\"3;1\" is not a ratio; write it as 3:1 or 9:3:3:1");
    assertThatIllegalArgumentException().isThrownBy(() -> Ratio.parse("3"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Ratio.of(3, 0))
        .withMessageContaining("above 0");
  }
}

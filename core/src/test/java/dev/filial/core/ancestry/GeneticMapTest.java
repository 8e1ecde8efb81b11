package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeneticMapTest {

  private static final GaussIntegrator FINE = new GaussIntegratorFactory().legendre(48);

  @Test
  void aMapIsReadAndWritten() {
    GeneticMap map = GeneticMap.parse("80, 2x100,120.5");
    assertThat(map.chromosomes()).isEqualTo(4);
    assertThat(map.length(0)).isCloseTo(1.205, within(1e-12));
    assertThat(map.total()).isCloseTo(4.005, within(1e-12));
    assertThat(map.text()).isEqualTo("4 chromosomes of 120.5, 2 x 100, 80 cM");
    assertThat(GeneticMap.parse(map.notation())).isEqualTo(map).hasSameHashCodeAs(map);
    assertThat(GeneticMap.assumed()).hasToString("11 chromosomes of 100 cM");
    GeneticMap tiny = GeneticMap.parse("10x0.000001");
    assertThat(tiny.notation()).isEqualTo("10 x 0.000001");
    assertThat(GeneticMap.parse(tiny.notation())).isEqualTo(tiny);
    assertThat(GeneticMap.of(1)).hasToString("1 chromosome of 100 cM");
  }

  @Test
  void aMapOfNoLengthIsRefused() {
    assertThatThrownBy(() -> GeneticMap.of(1, 0))
        .hasMessage("a chromosome of 0 centimorgans; state more than 0 and at most 10000");
    assertThatThrownBy(() -> GeneticMap.of(Double.NaN)).hasMessageContaining("a chromosome of NaN");
    assertThatThrownBy(() -> GeneticMap.parse("999999"))
        .hasMessageContaining("a chromosome of 999999 centimorgans");
    assertThatThrownBy(GeneticMap::of).hasMessageContaining("a map of 0 chromosomes");
  }

  @Test
  void aHundredThousandChromosomesAreRefused() {
    String message =
        "a map of 100000 chromosomes; state the 1 to 1000 of one set, not of the whole plant";
    assertThatThrownBy(() -> GeneticMap.alike(100_000, 1)).hasMessage(message);
    assertThatThrownBy(() -> GeneticMap.parse("100000x100")).hasMessage(message);
    assertThatThrownBy(() -> GeneticMap.of(new double[100_000])).hasMessage(message);
    assertThatThrownBy(() -> GeneticMap.parse("0x100")).hasMessageContaining("a map of 0");
  }

  @Test
  void whatIsNoLengthIsNamed() {
    assertThatThrownBy(() -> GeneticMap.parse("100,, 80"))
        .hasMessage(
            "\"\" is no chromosome length; write centimorgans parted by commas, as 120,100,80, or"
                + " 11x100 for eleven alike");
    assertThatThrownBy(() -> GeneticMap.parse("1 Morgan")).hasMessageContaining("\"1 Morgan\"");
  }

  /**
   * The mean of u^k = e^(−2kd) over pairs of positions, in closed form: on a chromosome of length
   * l, (2kl − 1 + e^(−2kl)) / (2k²l²), and 0 between chromosomes.
   */
  @Property(tries = 200)
  void theGaussRuleGivesEveryPowerOfLinkage(
      @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 10_000) Integer> centimorgans,
      @ForAll @IntRange(max = 127) int degree) {
    double[] lengths = centimorgans.stream().mapToDouble(length -> length / 100.0).toArray();
    GeneticMap map = GeneticMap.of(lengths);
    PairsOnMap rule = PairsOnMap.of(map, degree);
    for (int power = 0; power <= degree; power += 1 + power / 8) {
      double sum = 0;
      for (int node = 0; node < rule.size(); node++) {
        sum += rule.weight(node) * Math.pow(rule.value(node), power);
      }
      double expected = 0;
      for (double length : lengths) {
        double x = 2 * power * length;
        double mean = power == 0 ? 1 : x < 1e-4 ? 1 - x / 3 : 2 * (x + Math.expm1(-x)) / (x * x);
        expected += mean * length * length;
      }
      expected /= map.total() * map.total();
      assertThat(sum).isCloseTo(power == 0 ? 1 : expected, within(1e-10));
    }
  }

  /**
   * The mean of r^j (1 − r)^(g − j) C(g, j) over pairs of positions, each j's error added up: what
   * a chance through g meioses can be wrong by at most, whatever it is the chance of. Integrated
   * over the distance by Commons Math's composite Gauss-Legendre rule beside it.
   */
  @ParameterizedTest
  @CsvSource({
    "5, 126, 1e-12",
    "50, 60, 1e-12",
    "100, 10, 1e-12",
    "100, 40, 1e-12",
    "100, 126, 1e-12",
    "100, 400, 1e-12",
    "100, 1000, 1e-8",
    "400, 30, 1e-12",
    "400, 400, 1e-12",
    "400, 1000, 1e-8",
    "10000, 200, 1e-12"
  })
  void theGaussRuleGivesEveryChanceThroughManyMeioses(
      int centimorgans, int meioses, double allowed) {
    double length = centimorgans / 100.0;
    PairsOnMap rule = PairsOnMap.of(GeneticMap.of(length), meioses);
    double wrong = 0;
    for (int crossed = 0; crossed <= meioses; crossed++) {
      double sum = 0;
      for (int node = 0; node < rule.size(); node++) {
        sum += rule.weight(node) * binomial(meioses, crossed, (1 - rule.value(node)) / 2);
      }
      wrong += Math.abs(sum - meanOverPairs(length, meioses, crossed));
    }
    assertThat(wrong).isLessThan(allowed);
  }

  private static double meanOverPairs(double length, int meioses, int crossed) {
    double mean = 0;
    // Halved again and again towards distance 0, where the chances change fastest.
    for (double to = length; to > 0; to = to > 1e-6 ? to / 2 : 0) {
      double from = to > 1e-6 ? to / 2 : 0;
      double half = (to - from) / 2;
      for (int k = 0; k < FINE.getNumberOfPoints(); k++) {
        double distance = from + half * (1 + FINE.getPoint(k));
        mean +=
            half
                * FINE.getWeight(k)
                * 2
                * (length - distance)
                / (length * length)
                * binomial(meioses, crossed, -Math.expm1(-2 * distance) / 2);
      }
    }
    return mean;
  }

  private static double binomial(int trials, int successes, double chance) {
    return new BinomialDistribution(null, trials, Math.max(0, chance)).probability(successes);
  }
}

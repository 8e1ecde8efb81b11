package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class GeneticMapTest {

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
}

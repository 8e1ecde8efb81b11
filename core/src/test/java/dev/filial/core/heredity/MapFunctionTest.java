package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class MapFunctionTest {

  /** Haldane 1919, Journal of Genetics 8:299-309; value by R 4.2.2. */
  @Test
  void tenCentimorgansByHaldane() {
    assertThat(MapFunction.HALDANE.recombination(0.1)).isCloseTo(0.0906346235, within(1e-10));
  }

  /** Kosambi 1944, Annals of Eugenics 12:172-175; values by R 4.2.2. */
  @Test
  void tenCentimorgansByKosambi() {
    assertThat(MapFunction.KOSAMBI.recombination(0.1)).isCloseTo(0.0986876601, within(1e-10));
    assertThat(MapFunction.KOSAMBI.morgans(0.2)).isCloseTo(0.2118244651, within(1e-10));
  }

  @Property
  void distancesComeBack(
      @ForAll MapFunction function, @ForAll @DoubleRange(min = 0, max = 2) double morgans) {
    double recombination = function.recombination(morgans);

    assertThat(recombination).isBetween(0.0, 0.5);
    assertThat(function.morgans(recombination)).isCloseTo(morgans, within(1e-6));
  }

  /** r = r₁ + r₂ − 2r₁r₂ over two intervals is what Haldane's distances add up to. */
  @Property
  void haldanesDistancesAdd(
      @ForAll @DoubleRange(min = 0, max = 3) double one,
      @ForAll @DoubleRange(min = 0, max = 3) double other) {
    double first = MapFunction.HALDANE.recombination(one);
    double second = MapFunction.HALDANE.recombination(other);

    assertThat(MapFunction.HALDANE.recombination(one + other))
        .isCloseTo(first + second - 2 * first * second, within(1e-14));
  }

  @Test
  void farApartIsHalf() {
    for (MapFunction function : MapFunction.values()) {
      assertThat(function.recombination(1e6)).isEqualTo(0.5);
      assertThat(function.recombination(Double.POSITIVE_INFINITY)).isEqualTo(0.5);
      assertThat(function.morgans(0.5)).isInfinite();
      assertThat(function.recombination(0)).isZero();
      assertThat(function.morgans(0)).isZero();
    }
  }

  @Test
  void whatIsNoDistanceIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MapFunction.HALDANE.recombination(-0.1))
        .withMessage("a map distance of -0.1 morgans; it is 0 or more");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MapFunction.HALDANE.recombination(Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MapFunction.KOSAMBI.morgans(0.6))
        .withMessage("a recombination of 0.6; it lies between 0 and 1/2");
  }
}

package dev.filial.core.number;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DecimalTest {

  @Test
  void aNumberHasNoMoreDigitsThanItTakes() {
    assertThat(Decimal.text(100, 6)).isEqualTo("100");
    assertThat(Decimal.text(12.5, 2)).isEqualTo("12.5");
    assertThat(Decimal.text(2 / 3.0, 2)).isEqualTo("0.67");
    assertThat(Decimal.text(1e-6, 6)).isEqualTo("0.000001");
    assertThat(Decimal.text(-1e-9, 2)).isEqualTo("0");
    assertThat(Decimal.text(1e20, 2)).isEqualTo("100000000000000000000");
    assertThat(Decimal.text(Double.NaN, 2)).isEqualTo("NaN");
    assertThat(Decimal.percent(0.125, 1)).isEqualTo("12.5 %");
    // 7/16 by way of 1 - 9/16 in steps, a hair below a half of the last decimal.
    assertThat(Decimal.percent(0.43749999999999994, 1)).isEqualTo("43.8 %");
    assertThat(Decimal.percent(0.4375, 1)).isEqualTo("43.8 %");
    assertThat(Decimal.percent(1, 1)).isEqualTo("100 %");
  }
}

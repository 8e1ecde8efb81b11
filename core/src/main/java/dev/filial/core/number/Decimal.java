package dev.filial.core.number;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers that were reckoned in doubles, written as people write them. */
public final class Decimal {

  private Decimal() {}

  /**
   * The number with as many decimals as it takes and no more than {@code most}, never with an
   * exponent: {@code 12.5}, {@code 100}. What is no finite number is written as Java writes it.
   */
  public static String text(double value, int most) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(most, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A share of 1 as a percentage, as {@link #text} writes it: {@code 12.5 %}. */
  public static String percent(double share, int most) {
    return text(100 * share, most) + " %";
  }
}

package dev.filial.core.number;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers that were reckoned in doubles, written as people write them. */
public final class Decimal {

  private static final MathContext KEPT = new MathContext(12, RoundingMode.HALF_UP);

  private Decimal() {}

  /**
   * The number with as many decimals as it takes and no more than {@code most}, never with an
   * exponent: {@code 12.5}, {@code 100}. What is no finite number is written as Java writes it.
   */
  public static String text(double value, int most) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    // First to as many digits as arithmetic with doubles keeps: a half that came out a few units of
    // the last place below a half is one, as it is where the same number is a fraction.
    BigDecimal rounded = BigDecimal.valueOf(value).round(KEPT).setScale(most, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A share of 1 as a percentage, as {@link #text} writes it: {@code 12.5 %}. */
  public static String percent(double share, int most) {
    return text(100 * share, most) + " %";
  }
}

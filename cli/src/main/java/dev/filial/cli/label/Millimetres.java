package dev.filial.cli.label;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as text. */
public final class Millimetres {

  private Millimetres() {}

  /** To a thousandth of a millimetre, no zeros at the end: as SVG and CSS take it. */
  public static String text(double length) {
    return rounded(length, 3);
  }

  /** To a tenth of a millimetre: as people take it. */
  public static String inTenths(double length) {
    return rounded(length, 1);
  }

  private static String rounded(double length, int digits) {
    BigDecimal value = new BigDecimal(length).setScale(digits, RoundingMode.HALF_EVEN);
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}

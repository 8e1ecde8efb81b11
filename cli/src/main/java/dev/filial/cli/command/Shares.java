package dev.filial.cli.command;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Shares that were reckoned in doubles, as percentages. */
final class Shares {

  /** Halves of halves down to this are worth writing as a fraction. */
  private static final int FINEST = 64;

  private static final double NEAR = 1e-9;

  private Shares() {}

  /** As {@code 12.5 % (1/8)} where that is what it is, else {@code 13.3 %}. */
  static String text(double share) {
    String percent = bare(share) + "\u00a0%"; // never parted at the end of a line
    for (int parts = 2; parts <= FINEST; parts *= 2) {
      double part = share * parts;
      if (share > NEAR && share < 1 - NEAR && Math.abs(part - Math.rint(part)) < NEAR) {
        return percent + " (" + Math.round(part) + "/" + parts + ")";
      }
    }
    return percent;
  }

  /** The percentage as a bare number, to a tenth, or finer if it is small. */
  static String bare(double share) {
    int decimals = 1;
    while (share > NEAR && decimals < 4 && share * 100 < 0.95 * Math.pow(10, 1 - decimals)) {
      decimals++;
    }
    BigDecimal percent = BigDecimal.valueOf(100 * share).setScale(decimals, RoundingMode.HALF_UP);
    return percent.signum() == 0 ? "0" : percent.stripTrailingZeros().toPlainString();
  }
}

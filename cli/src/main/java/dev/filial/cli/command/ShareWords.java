package dev.filial.cli.command;

import dev.filial.core.number.Decimal;

/** Shares that were reckoned in doubles, as percentages. */
final class ShareWords {

  /** Halves of halves down to this are worth writing as a fraction. */
  private static final int FINEST = 64;

  private static final double NEAR = 1e-9;

  private ShareWords() {}

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
    return Decimal.text(100 * share, decimals);
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.core.number.Fraction;

/** How sure something is to be, as it is typed. */
final class Certainty {

  /** 95% or 0.95: between 0 and 1. */
  static final Reading<Double> READING =
      (text, bench) -> {
        Fraction share = RecordReadings.SHARE.read(text, bench);
        if (share.isZero()) {
          throw new IllegalArgumentException(
              "\"" + text + "\" is sure of nothing; write 95% or 99%");
        }
        if (share.toDouble() >= 1) {
          throw new IllegalArgumentException(
              "\"" + text + "\" is more than can be had; write 95% or 99%");
        }
        return share.toDouble();
      };

  /** What most people mean. */
  static final double USUAL = 0.95;

  private Certainty() {}
}

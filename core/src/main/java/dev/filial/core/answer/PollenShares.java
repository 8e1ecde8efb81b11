package dev.filial.core.answer;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Shares of the pollens of a mix, once a style has refused some of them. */
final class PollenShares {

  private PollenShares() {}

  /**
   * The shares, those of the pollens rescaled by what comes through of each, so that they come to
   * what they came to; unchanged if nothing comes through.
   *
   * @param through what comes through of each; null for a share that is of seeds and no pollen's
   */
  static List<Fraction> rescaled(
      List<Fraction> shares, List<? extends @Nullable Fraction> through) {
    Fraction before = Fraction.ZERO;
    Fraction after = Fraction.ZERO;
    for (int i = 0; i < shares.size(); i++) {
      Fraction part = through.get(i);
      if (part != null) {
        before = before.plus(shares.get(i));
        after = after.plus(shares.get(i).times(part));
      }
    }
    List<Fraction> rescaled = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      Fraction part = through.get(i);
      rescaled.add(
          part == null || after.isZero()
              ? shares.get(i)
              : shares.get(i).times(part).times(before).dividedBy(after));
    }
    return rescaled;
  }

  /** That some of a pollen is refused. */
  static String note(String pollen, Fraction through) {
    return "Of the pollen of "
        + pollen
        + " only "
        + through.toPercent(1)
        + " comes through, by its S alleles, and its share is reckoned so.";
  }
}

package dev.filial.core.trial;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;

/**
 * How many seeds to sow, to have at least so many of a wanted type at a stated certainty.
 *
 * <p>With the rates known, the smallest n for which the binomial chance of at least r is large
 * enough (Sedcole 1977, Crop Science 17:667-668). A rate that was counted is not known: it is drawn
 * from what the count leaves open under a flat prior, so that the seedlings follow a beta-binomial
 * and more seed is needed than its share suggests.
 */
public final class SeedsToSow {

  /** More seed than anybody sows. */
  private static final int MOST = 10_000_000;

  /** Above so many seeds the chances through two counted rates take minutes. */
  private static final int MOST_THROUGH_TWO = 4_000;

  /** Above so many seeds the chances through one counted rate take minutes. */
  private static final int MOST_THROUGH_ONE = 200_000;

  private final double chance;
  private final List<Proportion> counted;

  private SeedsToSow(double chance, List<Proportion> counted) {
    this.chance = chance;
    this.counted = counted;
  }

  /**
   * For a wanted type of that chance among the seedlings.
   *
   * @param chance above 0, at most 1
   * @throws IllegalArgumentException if it is not
   */
  public static SeedsToSow of(double chance) {
    return new SeedsToSow(requireRate("chance of the wanted type", chance), List.of());
  }

  /**
   * The same, of seeds only a share of which gets that far.
   *
   * @param rate how many germinate, or live, above 0, at most 1
   * @throws IllegalArgumentException if it is not
   */
  public SeedsToSow withRate(double rate) {
    return new SeedsToSow(chance * requireRate("rate", rate), counted);
  }

  /** The same, of seeds of which so many of so many got that far when they were counted. */
  public SeedsToSow withRate(Proportion rate) {
    List<Proportion> rates = new ArrayList<>(counted);
    rates.add(rate);
    return new SeedsToSow(chance, List.copyOf(rates));
  }

  private static double requireRate(String what, double rate) {
    if (!(rate > 0 && rate <= 1)) {
      throw new IllegalArgumentException(
          "a " + what + " of " + rate + "; it lies above 0 and is at most 1");
    }
    return rate;
  }

  /**
   * The smallest number of seeds.
   *
   * @param atLeast how many of the wanted type are wanted, 1 or more
   * @param certainty how sure that is to be, between 0 and 1, as 0.95
   * @throws IllegalArgumentException if {@code atLeast} is below 1, the certainty is not between 0
   *     and 1, or more seeds would be needed than can be reckoned with
   */
  public int seeds(int atLeast, double certainty) {
    if (atLeast < 1) {
      throw new IllegalArgumentException(
          "at least " + atLeast + " wanted; ask for 1 or more, none needs no seed");
    }
    Proportion.requireCertainty(certainty);
    int most = counted.isEmpty() ? MOST : counted.size() == 1 ? MOST_THROUGH_ONE : MOST_THROUGH_TWO;
    int enough = Math.min(atLeast, most);
    while (chanceOf(atLeast, enough) < certainty) {
      if (enough == most) {
        throw new IllegalArgumentException(
            "more than "
                + most
                + " seeds would be needed; ask for fewer, be less certain, or raise more parents");
      }
      enough = (int) Math.min(most, enough * 2L);
    }
    int tooFew = atLeast - 1;
    while (enough - tooFew > 1) {
      int middle = (enough + tooFew) >>> 1;
      if (chanceOf(atLeast, middle) < certainty) {
        tooFew = middle;
      } else {
        enough = middle;
      }
    }
    return enough;
  }

  /**
   * The chance of at least so many of the wanted type from that many seeds, 0 to 1. Time in
   * proportion to the seeds with one counted rate, and to their square with two.
   */
  public double chanceOf(int atLeast, int seeds) {
    if (atLeast <= 0) {
      return 1;
    }
    if (seeds < atLeast) {
      return 0;
    }
    if (counted.isEmpty()) {
      return tail(atLeast, seeds);
    }
    double[] left = new double[seeds + 1];
    left[seeds] = 1;
    for (Proportion rate : counted) {
      left = through(rate, left);
    }
    double sum = 0;
    for (int plants = atLeast; plants <= seeds; plants++) {
      if (left[plants] > 0) {
        sum += left[plants] * tail(atLeast, plants);
      }
    }
    return Math.min(1, sum);
  }

  private double tail(int atLeast, int plants) {
    return chance == 1 ? 1 : Beta.regularizedBeta(chance, atLeast, plants - atLeast + 1.0);
  }

  /** How many are left, when so many of so many got through before, under a flat prior. */
  private static double[] through(Proportion rate, double[] before) {
    double a = rate.some() + 1.0;
    double b = rate.all() - rate.some() + 1.0;
    double[] logFactorial = new double[before.length];
    for (int i = 1; i < before.length; i++) {
      logFactorial[i] = logFactorial[i - 1] + Math.log(i);
    }
    double[] passed = new double[before.length];
    double[] lost = new double[before.length];
    for (int i = 0; i < before.length; i++) {
      passed[i] = Gamma.logGamma(a + i) - logFactorial[i];
      lost[i] = Gamma.logGamma(b + i) - logFactorial[i];
    }
    double[] after = new double[before.length];
    for (int n = 0; n < before.length; n++) {
      if (before[n] == 0) {
        continue;
      }
      double whole = logFactorial[n] - Gamma.logGamma(a + b + n) - Beta.logBeta(a, b);
      for (int k = 0; k <= n; k++) {
        after[k] += before[n] * Math.exp(whole + passed[k] + lost[n - k]);
      }
    }
    return after;
  }
}

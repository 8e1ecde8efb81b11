package dev.filial.core.trial;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/**
 * A proportion counted from so many of so many, and how sure it is.
 *
 * @param some how many did: came up, lived, were red
 * @param all out of how many
 */
public record Proportion(int some, int all) {

  private static final double ACCURACY = 1e-13;

  /**
   * Checks the counts.
   *
   * @throws IllegalArgumentException if {@code all} is below 1, or {@code some} not from 0 to it
   */
  public Proportion {
    if (all < 1 || some < 0 || some > all) {
      throw new IllegalArgumentException(
          some + " of " + all + " is no proportion; it is 0 or more out of 1 or more");
    }
  }

  /**
   * An interval that holds the true proportion.
   *
   * @param lower its lower end, 0 to 1
   * @param upper its upper end, 0 to 1
   */
  public record Interval(double lower, double upper) {}

  /** The share counted. */
  public double share() {
    return (double) some / all;
  }

  /**
   * The exact interval, wide enough at every true proportion (Clopper and Pearson 1934, Biometrika
   * 26:404-413).
   *
   * @param certainty how often such intervals hold the true one, between 0 and 1, as 0.95
   * @throws IllegalArgumentException if it is not between 0 and 1
   */
  public Interval exact(double certainty) {
    requireCertainty(certainty);
    double tail = (1 - certainty) / 2;
    return new Interval(
        some == 0 ? 0 : quantile(some, all - some + 1.0, tail),
        some == all ? 1 : quantile(some + 1.0, all - some, 1 - tail));
  }

  /**
   * The score interval, right on the average (Wilson 1927, Journal of the American Statistical
   * Association 22:209-212).
   *
   * @param certainty how often such intervals hold the true one, between 0 and 1, as 0.95
   * @throws IllegalArgumentException if it is not between 0 and 1
   */
  public Interval score(double certainty) {
    requireCertainty(certainty);
    ConfidenceInterval ends = new WilsonScoreInterval().createInterval(all, some, certainty);
    return new Interval(Math.max(0, ends.getLowerBound()), Math.min(1, ends.getUpperBound()));
  }

  private static double quantile(double a, double b, double probability) {
    return new BetaDistribution(null, a, b, ACCURACY).inverseCumulativeProbability(probability);
  }

  static void requireCertainty(double certainty) {
    if (!(certainty > 0 && certainty < 1)) {
      throw new IllegalArgumentException(
          "a certainty of " + certainty + "; it lies between 0 and 1, as 0.95");
    }
  }
}

package dev.filial.core.trial;

import org.apache.commons.math3.special.Gamma;

/**
 * Two proportions held against each other: as how many came up under one treatment and under
 * another. Every one is taken to have come up or not by itself; where seeds of one pot share their
 * luck, the chance comes out too small and the interval too narrow.
 *
 * @param one the first
 * @param other the second
 */
public record TwoProportions(Proportion one, Proportion other) {

  /** Where fewer are expected anywhere, the exact test is taken. */
  private static final double ENOUGH = 5;

  /** What is equal but for rounding counts as no likelier than what was seen. */
  private static final double SLACK = 1 + 1e-7;

  /** How two proportions are tested. */
  public enum Method {
    /** Fisher's exact test. */
    EXACT,
    /** Pearson's chi-square, without a correction for continuity. */
    CHI_SQUARE
  }

  /**
   * The outcome of a test.
   *
   * @param method which test
   * @param statistic the chi-square; 0 for the exact test, which has none
   * @param p the chance that two proportions that are truly alike would differ as much, 0 to 1
   */
  public record Test(Method method, double statistic, double p) {}

  /** The first less the second, −1 to 1. */
  public double difference() {
    return one.share() - other.share();
  }

  /**
   * An interval for the difference, from the score intervals of both (Newcombe 1998, Statistics in
   * Medicine 17:873-890, method 10, without a correction for continuity; formula from memory).
   *
   * @param certainty how often such intervals hold the true one, between 0 and 1, as 0.95
   * @return its ends, −1 to 1
   * @throws IllegalArgumentException if it is not between 0 and 1
   */
  public Proportion.Interval interval(double certainty) {
    Proportion.Interval first = one.score(certainty);
    Proportion.Interval second = other.score(certainty);
    double down = Math.hypot(one.share() - first.lower(), second.upper() - other.share());
    double up = Math.hypot(first.upper() - one.share(), other.share() - second.lower());
    return new Proportion.Interval(
        Math.max(-1, difference() - down), Math.min(1, difference() + up));
  }

  /**
   * The smallest number that is expected in any of the four cells, if the two are alike; 0 if all
   * of both did, or none.
   */
  public double leastExpected() {
    double all = (double) one.all() + other.all();
    double some = (double) one.some() + other.some();
    return Math.min(some, all - some) * Math.min(one.all(), other.all()) / all;
  }

  /**
   * The test that suits them: the exact one where fewer than five are expected in a cell, else the
   * chi-square (Cochran 1954, Biometrics 10:417-451, from memory).
   */
  public Test test() {
    return leastExpected() < ENOUGH ? exact() : chiSquare();
  }

  /**
   * Fisher's exact test, two-sided: the chance of all tables with these sums that are no likelier
   * than the one that was seen (Fisher 1935, The Logic of Inductive Inference, Journal of the Royal
   * Statistical Society 98:39-82, from memory).
   */
  public Test exact() {
    int some = Math.addExact(one.some(), other.some());
    int least = Math.max(0, some - other.all());
    int most = Math.min(one.all(), some);
    double seen = logWays(one.some(), some);
    double top = Double.NEGATIVE_INFINITY;
    for (int k = least; k <= most; k++) {
      top = Math.max(top, logWays(k, some));
    }
    double all = 0;
    double tail = 0;
    for (int k = least; k <= most; k++) {
      double ways = Math.exp(logWays(k, some) - top);
      all += ways;
      if (ways <= Math.exp(seen - top) * SLACK) {
        tail += ways;
      }
    }
    return new Test(Method.EXACT, 0, Math.min(1, tail / all));
  }

  /**
   * Pearson's chi-square of the fourfold table, on one degree of freedom; 0 if all of both did, or
   * none.
   */
  public Test chiSquare() {
    double all = (double) one.all() + other.all();
    double some = (double) one.some() + other.some();
    if (some == 0 || some == all) {
      return new Test(Method.CHI_SQUARE, 0, 1);
    }
    double share = some / all;
    double statistic =
        difference() * difference() / (share * (1 - share) * (1.0 / one.all() + 1.0 / other.all()));
    return new Test(Method.CHI_SQUARE, statistic, GoodnessOfFit.upperTail(statistic, 1));
  }

  private double logWays(int ofFirst, int some) {
    return logChoose(one.all(), ofFirst) + logChoose(other.all(), some - ofFirst);
  }

  private static double logChoose(int n, int k) {
    return Gamma.logGamma(n + 1.0) - Gamma.logGamma(k + 1.0) - Gamma.logGamma(n - k + 1.0);
  }
}

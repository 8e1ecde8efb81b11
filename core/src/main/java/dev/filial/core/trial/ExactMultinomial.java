package dev.filial.core.trial;

import org.apache.commons.math3.special.Gamma;
import org.apache.commons.math3.util.CombinatoricsUtils;

/**
 * The exact multinomial test of one family: every outcome of that many seedlings is gone through,
 * and the probabilities of those no likelier than the one seen are summed.
 *
 * <p>Time in proportion to the number of outcomes, n + k − 1 over k − 1 of n seedlings in k
 * classes. Outcomes within a ten-millionth of the seen one's probability count as ties, as in R's
 * {@code binom.test}.
 *
 * @param probability the probability of just these counts
 * @param p the summed probability, at most 1
 */
record ExactMultinomial(double probability, double p) {

  /** Above so many outcomes the sum takes seconds. */
  private static final double MOST_OUTCOMES = 5e7;

  private static final double TIE = 1e-7;

  /** Whether the outcomes of such a family are few enough. */
  static boolean isSummable(long family, int classes) {
    return family <= Integer.MAX_VALUE / 2
        && CombinatoricsUtils.binomialCoefficientLog((int) family + classes - 1, classes - 1)
            <= Math.log(MOST_OUTCOMES);
  }

  /**
   * The test.
   *
   * @throws IllegalArgumentException if there are more outcomes than can be summed
   */
  static ExactMultinomial of(Ratio ratio, long[] counts) {
    long family = ratio.requireFamily(counts);
    if (!isSummable(family, counts.length)) {
      throw new IllegalArgumentException(
          family
              + " seedlings in "
              + counts.length
              + " classes have more outcomes than can be summed; test by chi-square");
    }
    int n = (int) family;
    double[][] terms = new double[counts.length][n + 1];
    for (int i = 0; i < counts.length; i++) {
      double logShare = Math.log(ratio.shares().get(i).toDouble());
      for (int count = 0; count <= n; count++) {
        terms[i][count] = count * logShare - Gamma.logGamma(count + 1.0);
      }
    }
    double ways = Gamma.logGamma(n + 1.0);
    double seen = ways;
    for (int i = 0; i < counts.length; i++) {
      seen += terms[i][(int) counts[i]];
    }
    Sum sum = new Sum(terms, seen + Math.log1p(TIE));
    sum.add(0, n, ways);
    return new ExactMultinomial(Math.exp(seen), Math.min(1, sum.value));
  }

  private static final class Sum {
    private final double[][] terms;
    private final double bound;
    private double value;

    Sum(double[][] terms, double bound) {
      this.terms = terms;
      this.bound = bound;
    }

    /** Adds what comes of giving {@code left} seedlings to this class and those after it. */
    void add(int place, int left, double log) {
      double[] here = terms[place];
      if (place < terms.length - 2) {
        for (int count = 0; count <= left; count++) {
          add(place + 1, left - count, log + here[count]);
        }
        return;
      }
      double[] last = terms[place + 1];
      for (int count = 0; count <= left; count++) {
        double outcome = log + here[count] + last[left - count];
        if (outcome <= bound) {
          value += Math.exp(outcome);
        }
      }
    }
  }
}

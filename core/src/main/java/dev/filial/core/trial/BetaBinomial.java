package dev.filial.core.trial;

/**
 * How many of so many seedlings are of a state whose share is itself drawn, from a beta
 * distribution.
 */
final class BetaBinomial {

  private BetaBinomial() {}

  /**
   * The chance of each number, 0 to {@code seedlings}. Time in proportion to the seedlings.
   *
   * @param mean the mean share, between 0 and 1
   * @param spread the share's variance as a part of the largest possible, mean (1 − mean); above 0,
   *     at most 1, where a family is all or none. Of a beta distribution of a and b it is 1/(a + b
   *     + 1)
   */
  static double[] chances(double mean, double spread, int seedlings) {
    double[] chances = new double[seedlings + 1];
    if (seedlings == 0) {
      chances[0] = 1;
      return chances;
    }
    // Rising factorials of a, b and a + b times the spread, without their first factor 1 − spread:
    // so a spread of 1 needs no limit to be taken.
    double[] these = rising(mean, spread, seedlings);
    double[] others = rising(1 - mean, spread, seedlings);
    double whole = rising(1, spread, seedlings)[seedlings];
    double[] logFactorial = new double[seedlings + 1];
    for (int i = 1; i <= seedlings; i++) {
      logFactorial[i] = logFactorial[i - 1] + Math.log(i);
    }
    double sum = 0;
    for (int k = 0; k <= seedlings; k++) {
      double ways = logFactorial[seedlings] - logFactorial[k] - logFactorial[seedlings - k];
      double one = Math.exp(ways + these[k] + others[seedlings - k] - whole);
      chances[k] = k == 0 || k == seedlings ? one : one * (1 - spread);
      sum += chances[k];
    }
    for (int k = 0; k <= seedlings; k++) {
      chances[k] /= sum;
    }
    return chances;
  }

  private static double[] rising(double mean, double spread, int most) {
    double[] logs = new double[most + 1];
    logs[1] = Math.log(mean);
    for (int i = 1; i < most; i++) {
      logs[i + 1] = logs[i] + Math.log(mean * (1 - spread) + i * spread);
    }
    return logs;
  }
}

package dev.filial.core.plan;

import java.util.List;

/**
 * What a plan has to come to.
 *
 * @param atLeast how many wanted seedlings, 1 or more
 * @param certainty how surely, between 0 and 1
 * @param mostInbred the most that the last seedlings may be inbred, 0 to 1
 * @param leastShares the least expected share of each thing that {@link Relations} knows shares of
 */
public record Goal(int atLeast, double certainty, double mostInbred, List<Double> leastShares) {

  private static final double ROUNDING = 1e-9;

  /** So much of what may fail may do so because no more was kept for what sets no seed. */
  private static final double UNTRIED = 0.1;

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if a number lies outside its range
   */
  public Goal {
    leastShares = List.copyOf(leastShares);
    if (atLeast < 1) {
      throw new IllegalArgumentException(
          "at least " + atLeast + " wanted; ask for 1 or more, none needs no seed");
    }
    if (!(certainty > 0 && certainty < 1)) {
      throw new IllegalArgumentException(
          "a certainty of " + certainty + "; it lies between 0 and 1, as 0.95");
    }
    if (!(mostInbred >= 0 && mostInbred <= 1)) {
      throw new IllegalArgumentException(
          "an inbreeding coefficient of at most " + mostInbred + "; it lies between 0 and 1");
    }
  }

  /** So many, so surely, however related and of whatever share. */
  public static Goal of(int atLeast, double certainty) {
    return new Goal(atLeast, certainty, 1, List.of());
  }

  /** Where not all that is kept sets seed, the chance that nothing that is tried does. */
  double failingUntried() {
    return (1 - certainty) * UNTRIED;
  }

  /** Whether the seedlings at the end of that way are related and made up as they have to be. */
  boolean allows(Relations relations, CrossPath path) {
    if (mostInbred < 1 && relations.inbreeding(path) > mostInbred + ROUNDING) {
      return false;
    }
    if (!leastShares.isEmpty()) {
      double[] shares = relations.shares(path);
      for (int i = 0; i < shares.length; i++) {
        if (shares[i] < leastShares.get(i) - ROUNDING) {
          return false;
        }
      }
    }
    return true;
  }
}

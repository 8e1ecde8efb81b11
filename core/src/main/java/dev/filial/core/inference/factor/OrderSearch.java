package dev.filial.core.inference.factor;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest of several greedy orders. Finding the cheapest of all is NP-hard, so a costly one is
 * tried for a bounded number of times more with the rules shaken; always in the same way, so that a
 * graph has one plan.
 */
final class OrderSearch {

  /** Below this many entries a better order is not worth looking for. */
  private static final double CHEAP = 2e4;

  private static final double COSTLY = 1e5;

  /** Past this no shaking brings an order within reach. */
  private static final double HOPELESS = 1e16;

  private static final int MOST_TRIES = 60;

  /** Looks at neighbours that all further tries may take together. */
  private static final long BUDGET = 20_000_000L;

  /** A look takes about as long as the work at so many entries; no more is spent than saved. */
  private static final int LOOKS_COST = 4;

  private OrderSearch() {}

  /** Of the variables that are not to be last; those are taken as one table of their own. */
  static GreedyOrder cheapest(int[] states, int[][] scopes, int[][] base, boolean[] last) {
    double least = 0;
    for (int[] scope : scopes) {
      double size = 1;
      for (int v : scope) {
        size *= states[v];
      }
      least += size;
    }
    GreedyOrder best = first(states, base, last);
    long effort = best.effort();
    // Nothing can be much below the tables themselves.
    if (best.entries <= CHEAP || best.entries <= 1.5 * least) {
      return best;
    }
    if (best.entries <= HOPELESS) {
      GreedyOrder.Rule[] rules = {GreedyOrder.Rule.WEIGHTED_FILL, GreedyOrder.Rule.WEIGHT};
      for (GreedyOrder.Rule rule : rules) {
        best = better(best, GreedyOrder.find(states, base, last, rule, null, best.entries));
      }
    }
    if (best.entries > COSTLY && best.entries > 3 * least) {
      // Many generations of few plants are long and thin, which a greedy rule does not see.
      best = swept(best, states, base, last, GreedyOrder.distanceRanks(base));
      int[] numbers = new int[states.length];
      Arrays.setAll(numbers, v -> v);
      best = swept(best, states, base, last, numbers);
      Arrays.setAll(numbers, v -> numbers.length - v);
      best = swept(best, states, base, last, numbers);
    }
    if (best.entries > COSTLY && best.entries > 3 * least && best.entries <= HOPELESS) {
      SplittableRandom random = new SplittableRandom(20_090_731L);
      long spent = 0;
      GreedyOrder.Rule[] all = {
        GreedyOrder.Rule.FILL, GreedyOrder.Rule.WEIGHTED_FILL, GreedyOrder.Rule.WEIGHT
      };
      for (int i = 0;
          i < MOST_TRIES && spent + effort < Math.min(BUDGET, best.entries / LOOKS_COST);
          i++) {
        GreedyOrder next =
            GreedyOrder.find(states, base, last, all[i % all.length], random.split(), best.entries);
        spent += next == null ? effort / 2 : next.effort();
        best = better(best, next);
      }
    }
    return best;
  }

  private static GreedyOrder swept(
      GreedyOrder best, int[] states, int[][] base, boolean[] last, int[] rank) {
    return better(best, GreedyOrder.sweep(states, base, last, rank, best.entries));
  }

  private static GreedyOrder first(int[] states, int[][] base, boolean[] last) {
    GreedyOrder found =
        GreedyOrder.find(states, base, last, GreedyOrder.Rule.FILL, null, Double.POSITIVE_INFINITY);
    if (found == null) {
      throw new AssertionError("an order without a limit is always found");
    }
    return found;
  }

  private static GreedyOrder better(GreedyOrder one, @Nullable GreedyOrder other) {
    return other != null && other.entries < one.entries ? other : one;
  }
}

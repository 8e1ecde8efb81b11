package dev.filial.core.answer;

import dev.filial.core.plan.PlanSearch;
import java.util.HashMap;
import java.util.Map;

/**
 * Of ways in order of their cost so many of different costs, and of one cost so many: of sister
 * seedlings of which the same is known a dozen tell as much as a hundred.
 */
final class FewOfEach {
  private static final int OF_ONE_COST = 12;

  private final long different;
  private final Map<Long, Integer> taken = new HashMap<>();

  FewOfEach(long different) {
    this.different = different;
  }

  boolean takes(PlanSearch.Found way) {
    long cost = Math.round(way.cost() * 1e6);
    if (!taken.containsKey(cost) && taken.size() >= different) {
      return false;
    }
    return taken.merge(cost, 1, Integer::sum) <= OF_ONE_COST;
  }
}

package dev.filial.core.inference.conflict;

import java.util.BitSet;
import java.util.function.Predicate;

/**
 * A minimal set with a property that no addition takes away, by QuickXplain. Both a conflict and a
 * correction are such: that a set contradicts itself, or that the rest does not without it.
 */
final class MinimalSet {

  private final int[] candidates;
  private final Predicate<BitSet> holds;

  private MinimalSet(int[] candidates, Predicate<BitSet> holds) {
    this.candidates = candidates;
    this.holds = holds;
  }

  /**
   * A minimal set among these, which all together have the property.
   *
   * <p>If it is said not to hold where it does, the set has the property and is only larger than
   * need be. Of none at all the property is never asked, so of at least one candidate at least one
   * is returned.
   */
  static BitSet within(BitSet candidates, Predicate<BitSet> holds) {
    if (candidates.isEmpty()) {
      return new BitSet();
    }
    int[] listed = candidates.stream().toArray();
    return new MinimalSet(listed, holds).needed(new BitSet(), false, 0, listed.length);
  }

  /** What is needed of the candidates from one place to another beside what stands already. */
  private BitSet needed(BitSet standing, boolean grown, int from, int to) {
    if (grown && holds.test(standing)) {
      return new BitSet();
    }
    BitSet needed = new BitSet();
    if (to - from == 1) {
      needed.set(candidates[from]);
      return needed;
    }
    int middle = (from + to) >>> 1;
    BitSet withFirst = Search.copy(standing);
    for (int i = from; i < middle; i++) {
      withFirst.set(candidates[i]);
    }
    needed.or(needed(withFirst, true, middle, to));
    BitSet withSecond = Search.copy(standing);
    withSecond.or(needed);
    needed.or(needed(withSecond, !needed.isEmpty(), from, middle));
    return needed;
  }
}

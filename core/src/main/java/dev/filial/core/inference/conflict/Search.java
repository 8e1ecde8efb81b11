package dev.filial.core.inference.conflict;

import dev.filial.core.inference.conflict.SmallestConflict.Found;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.Predicate;

/** One search for a smallest conflict, and the tests it has made. */
final class Search {

  private static final long STEPS_PER_TEST = 40;

  private final BitSet all;
  private final Predicate<BitSet> consistent;
  private final int most;
  private final HittingSets corrections;
  private int tests;

  Search(BitSet all, Predicate<BitSet> consistent, int most) {
    this.all = all;
    this.consistent = consistent;
    this.most = most;
    this.corrections = new HittingSets(STEPS_PER_TEST * most);
  }

  static BitSet copy(BitSet set) {
    return (BitSet) set.clone();
  }

  Optional<Found> find() {
    if (test(all)) {
      return Optional.empty();
    }
    BitSet best = MinimalSet.within(all, set -> !test(set));
    while (true) {
      Optional<BitSet> hitting = corrections.smallest(best.cardinality() - 1);
      if (hitting.isEmpty()) {
        return found(best, !corrections.gaveUp());
      }
      BitSet seed = hitting.get();
      // Whether nothing at all is consistent, which is asked first, is settled in any case.
      if (isSpent() && !seed.isEmpty()) {
        return found(best, false);
      }
      if (!test(seed)) {
        return found(seed, true);
      }
      corrections.add(correction(seed));
      best = smaller(best, beyond(seed));
    }
  }

  /**
   * Adds corrections that share nothing with those before, which raise the bound at once, for as
   * long as all of them together are consistent. Returns the conflict at which that ends, or all.
   */
  private BitSet beyond(BitSet consistentSeed) {
    BitSet seed = copy(consistentSeed);
    seed.or(corrections.latest());
    while (!isSpent()) {
      if (!test(seed)) {
        return MinimalSet.within(seed, set -> !isSpent() && !test(set));
      }
      corrections.add(correction(seed));
      seed.or(corrections.latest());
    }
    return all;
  }

  /**
   * The smaller of two conflicts; the first if the tests ran out over the second, which is then not
   * known to be minimal.
   */
  private BitSet smaller(BitSet best, BitSet other) {
    return !isSpent() && other.cardinality() < best.cardinality() ? other : best;
  }

  /**
   * What may be left out to make the rest consistent, of it nothing of the seed. When tests run out
   * it comes out larger than need be, and still is a correction.
   */
  private BitSet correction(BitSet seed) {
    return MinimalSet.within(without(seed), set -> !isSpent() && test(without(set)));
  }

  private BitSet without(BitSet set) {
    BitSet rest = copy(all);
    rest.andNot(set);
    return rest;
  }

  private boolean isSpent() {
    return tests >= most;
  }

  private boolean test(BitSet set) {
    tests++;
    return consistent.test(copy(set));
  }

  private Optional<Found> found(BitSet things, boolean proven) {
    return Optional.of(new Found(things, proven, tests));
  }
}

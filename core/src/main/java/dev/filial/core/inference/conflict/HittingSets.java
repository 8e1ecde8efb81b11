package dev.filial.core.inference.conflict;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Smallest sets that hold some of each of several sets, which grow in number. */
final class HittingSets {

  /** The smallest first; none contains another, for who hits the smaller hits the larger. */
  private final List<BitSet> sets = new ArrayList<>();

  private BitSet latest = new BitSet();
  private int least;
  private long steps;

  /** With a bound on the steps of all searches together. */
  HittingSets(long steps) {
    this.steps = steps;
  }

  /** Adds a set that is to be hit, not empty. */
  void add(BitSet set) {
    latest = set;
    if (sets.stream().anyMatch(other -> contains(set, other))) {
      return;
    }
    sets.removeIf(other -> contains(other, set));
    sets.add(set);
    sets.sort(Comparator.comparingInt(BitSet::cardinality));
  }

  /** The set that was added last. */
  BitSet latest() {
    return latest;
  }

  /** Whether the steps ran out, so that nothing found means nothing. */
  boolean gaveUp() {
    return steps <= 0;
  }

  /** A smallest set that hits all, if one of so many things at most does. */
  Optional<BitSet> smallest(int most) {
    // What did not do before does less with more to hit, so the search goes on where it ended.
    while (least <= most) {
      BitSet chosen = new BitSet();
      if (extend(chosen, new BitSet(), least)) {
        return Optional.of(chosen);
      }
      if (gaveUp()) {
        return Optional.empty();
      }
      least++;
    }
    return Optional.empty();
  }

  /** Whether what is chosen can be made to hit all with so many more things, none of the barred. */
  private boolean extend(BitSet chosen, BitSet alreadyBarred, int more) {
    if (gaveUp()) {
      return false;
    }
    steps--;
    List<BitSet> open = new ArrayList<>();
    BitSet narrowest = new BitSet();
    BitSet taken = new BitSet();
    int apart = 0;
    for (BitSet set : sets) {
      if (set.intersects(chosen)) {
        continue;
      }
      BitSet free = Search.copy(set);
      free.andNot(alreadyBarred);
      if (free.isEmpty()) {
        return false;
      }
      // Sets that have nothing in common need a thing each.
      if (!free.intersects(taken) && ++apart > more) {
        return false;
      }
      if (!free.intersects(taken)) {
        taken.or(free);
      }
      if (open.isEmpty() || free.cardinality() < narrowest.cardinality()) {
        narrowest = free;
      }
      open.add(free);
    }
    BitSet barred = Search.copy(alreadyBarred);
    for (int thing : byHits(narrowest, open)) {
      chosen.set(thing);
      if (extend(chosen, barred, more - 1)) {
        return true;
      }
      chosen.clear(thing);
      barred.set(thing); // with it there is none, so from here on without it
    }
    return open.isEmpty();
  }

  private static List<Integer> byHits(BitSet things, List<BitSet> open) {
    Comparator<Integer> hits =
        Comparator.comparingLong(thing -> open.stream().filter(set -> set.get(thing)).count());
    return things.stream().boxed().sorted(hits.reversed()).toList();
  }

  private static boolean contains(BitSet larger, BitSet smaller) {
    BitSet outside = Search.copy(smaller);
    outside.andNot(larger);
    return outside.isEmpty();
  }
}

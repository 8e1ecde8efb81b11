package dev.filial.core.inference.conflict;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Finds smallest sets of things that cannot all hold together, given a test whether some do.
 *
 * <p>A first set none of whose things can be missed comes by halving (Junker 2004, QuickXplain,
 * Proceedings of AAAI-04:167-172); the smallest by hitting sets: whatever contradicts itself must
 * hold something of every set whose removal mends all (Ignatiev, Previti, Liffiton and
 * Marques-Silva 2015, Principles and Practice of Constraint Programming, LNCS 9255:173-182). Cost:
 * k·log(n/k) tests for a first set of k among n; what the smallest takes is not bounded but by
 * {@link #withMostTests}.
 */
public final class SmallestConflict {

  private static final int USUAL_TESTS = 5000;

  private final int things;
  private final Predicate<BitSet> consistent;
  private final int mostTests;

  private SmallestConflict(int things, Predicate<BitSet> consistent, int mostTests) {
    this.things = things;
    this.consistent = consistent;
    this.mostTests = mostTests;
  }

  /**
   * Among so many things.
   *
   * @param things how many, numbered from 0
   * @param consistent whether some of them can all hold; of a set that can, every part can too
   * @throws IllegalArgumentException if there are fewer than 0
   */
  public static SmallestConflict of(int things, Predicate<BitSet> consistent) {
    if (things < 0) {
      throw new IllegalArgumentException(things + " things; there are 0 or more");
    }
    return new SmallestConflict(things, consistent, USUAL_TESTS);
  }

  /**
   * The same with another bound on the search for the smallest.
   *
   * @param most after so many tests a set that only cannot be made smaller by leaving things out is
   *     given; at least one such is always found
   */
  public SmallestConflict withMostTests(int most) {
    return new SmallestConflict(things, consistent, most);
  }

  /**
   * A set that contradicts itself.
   *
   * @param things its things; without any one of them it would hold
   * @param provenSmallest whether no set of fewer things contradicts itself
   * @param tests how many tests it took
   */
  public record Found(BitSet things, boolean provenSmallest, int tests) {
    /** Copies the set. */
    public Found {
      things = (BitSet) things.clone();
    }

    @Override
    public BitSet things() {
      return (BitSet) things.clone();
    }
  }

  /** A smallest set; empty if all can hold together. */
  public Optional<Found> find() {
    BitSet all = new BitSet();
    all.set(0, things);
    return new Search(all).find();
  }

  /**
   * Several contradictions that have nothing in common: after each its things are set aside and the
   * rest is searched again.
   *
   * @param most at most so many
   */
  public List<Found> findAll(int most) {
    List<Found> found = new ArrayList<>();
    BitSet left = new BitSet();
    left.set(0, things);
    while (found.size() < most) {
      Optional<Found> next = new Search(left).find();
      if (next.isEmpty()) {
        break;
      }
      found.add(next.get());
      left.andNot(next.get().things());
    }
    return List.copyOf(found);
  }

  private final class Search {
    private final BitSet all;
    private int tests;

    Search(BitSet all) {
      this.all = (BitSet) all.clone();
    }

    private boolean holds(BitSet some) {
      tests++;
      return consistent.test((BitSet) some.clone());
    }

    Optional<Found> find() {
      if (holds(all)) {
        return Optional.empty();
      }
      BitSet none = new BitSet();
      BitSet first = holds(none) ? explained(none, none, all) : none;
      if (first.cardinality() <= 1) {
        return Optional.of(new Found(first, true, tests));
      }
      List<BitSet> mends = new ArrayList<>();
      while (tests < mostTests) {
        BitSet hitting = smallestHitting(mends, first.cardinality());
        if (hitting == null) {
          // Nothing smaller than the first hits every mend: it is a smallest.
          return Optional.of(new Found(first, true, tests));
        }
        if (!holds(hitting)) {
          return Optional.of(new Found(hitting, true, tests));
        }
        mends.add(mend(hitting));
      }
      return Optional.of(new Found(first, false, tests));
    }

    /** A set none of whose things can be missed, given that the background holds. */
    private BitSet explained(BitSet background, BitSet added, BitSet some) {
      if (!added.isEmpty() && !holds(background)) {
        return new BitSet();
      }
      if (some.cardinality() == 1) {
        return some;
      }
      BitSet one = new BitSet();
      int half = some.cardinality() / 2;
      for (int i = some.nextSetBit(0); half > 0; i = some.nextSetBit(i + 1), half--) {
        one.set(i);
      }
      BitSet other = (BitSet) some.clone();
      other.andNot(one);
      BitSet ofOther = explained(union(background, one), one, other);
      BitSet ofOne = explained(union(background, ofOther), ofOther, one);
      return union(ofOther, ofOne);
    }

    /** What has to go for the rest to hold, beginning with what surely holds. */
    private BitSet mend(BitSet holding) {
      BitSet kept = (BitSet) holding.clone();
      BitSet open = (BitSet) all.clone();
      open.andNot(kept);
      grow(kept, open);
      BitSet gone = (BitSet) all.clone();
      gone.andNot(kept);
      return gone;
    }

    /** Adds as many of the open things as hold, halving what does not. */
    private void grow(BitSet kept, BitSet open) {
      if (open.isEmpty()) {
        return;
      }
      if (holds(union(kept, open))) {
        kept.or(open);
        return;
      }
      if (open.cardinality() == 1) {
        return;
      }
      BitSet one = new BitSet();
      int half = open.cardinality() / 2;
      for (int i = open.nextSetBit(0); half > 0; i = open.nextSetBit(i + 1), half--) {
        one.set(i);
      }
      BitSet other = (BitSet) open.clone();
      other.andNot(one);
      grow(kept, one);
      grow(kept, other);
    }
  }

  private static BitSet union(BitSet one, BitSet other) {
    BitSet both = (BitSet) one.clone();
    both.or(other);
    return both;
  }

  /**
   * A smallest set that has something of each; null if none has fewer things than {@code below}.
   */
  private static @Nullable BitSet smallestHitting(List<BitSet> sets, int below) {
    Hitting search = new Hitting(sets, below);
    search.go(new BitSet(), 0);
    return search.best;
  }

  /** Branches on the things of the smallest set that is not hit yet. */
  private static final class Hitting {
    private final List<BitSet> sets;
    private int bound;
    private @Nullable BitSet best;

    Hitting(List<BitSet> sets, int below) {
      this.sets = sets;
      this.bound = below;
    }

    void go(BitSet chosen, int size) {
      if (size + leastMore(chosen) >= bound) {
        return;
      }
      BitSet next = null;
      for (BitSet set : sets) {
        if (!set.intersects(chosen) && (next == null || set.cardinality() < next.cardinality())) {
          next = set;
        }
      }
      if (next == null) {
        best = (BitSet) chosen.clone();
        bound = size;
        return;
      }
      for (int i = next.nextSetBit(0); i >= 0; i = next.nextSetBit(i + 1)) {
        chosen.set(i);
        go(chosen, size + 1);
        chosen.clear(i);
      }
    }

    /** Sets without anything in common each need a thing of their own. */
    private int leastMore(BitSet chosen) {
      BitSet taken = new BitSet();
      int more = 0;
      for (BitSet set : sets) {
        if (!set.intersects(chosen) && !set.intersects(taken)) {
          taken.or(set);
          more++;
        }
      }
      return more;
    }
  }
}

package dev.filial.core.inference.conflict;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The smallest sets of things that cannot all hold.
 *
 * <p>A first minimal conflict is found by leaving out halves, and halves of halves (QuickXplain:
 * Junker 2004, Proceedings of AAAI-04:167-172). From there the search goes by implicit hitting sets
 * (Ignatiev, Previti, Liffiton and Marques-Silva 2015, Principles and Practice of Constraint
 * Programming, LNCS 9255:173-182): whatever has to be left out of all things to make them
 * consistent, every conflict holds some of it. So the smallest set that holds some of each such
 * correction known is no larger than the smallest conflict. If it is a conflict itself, it is the
 * smallest; if not, it leads to corrections that were not known.
 *
 * <p>The first conflict, of k out of n things, takes at most about 2k(1 + log2(n/k)) tests. The
 * proof that none is smaller may take many more, exponentially many at worst, and is bounded by
 * {@link #withMostTests}.
 */
public final class SmallestConflict {

  private static final int MOST_TESTS = 5000;

  private final int things;
  private final Predicate<BitSet> consistent;
  private final int mostTests;

  private SmallestConflict(int things, Predicate<BitSet> consistent, int mostTests) {
    this.things = things;
    this.consistent = consistent;
    this.mostTests = mostTests;
  }

  /**
   * Among things numbered from 0.
   *
   * @param things how many there are, 0 or more
   * @param consistent whether all things of a set can hold together. Part of a consistent set must
   *     be consistent too; where it is not, what is found is a conflict, but perhaps no smallest
   *     one. Each set it is given is its own to keep or change
   * @throws IllegalArgumentException if the number is negative
   */
  public static SmallestConflict of(int things, Predicate<BitSet> consistent) {
    if (things < 0) {
      throw new IllegalArgumentException(things + " things to search; state 0 or more");
    }
    return new SmallestConflict(things, consistent, MOST_TESTS);
  }

  /**
   * The same with another bound on the tests of one conflict, instead of 5000. The first minimal
   * conflict is searched to its end all the same; then as many tests as are left look for a smaller
   * one, and the search for hitting sets between them may take forty steps for each test allowed.
   *
   * @param most 1 or more
   * @throws IllegalArgumentException if it is less
   */
  public SmallestConflict withMostTests(int most) {
    if (most < 1) {
      throw new IllegalArgumentException(most + " tests at most; state 1 or more");
    }
    return new SmallestConflict(things, consistent, most);
  }

  /**
   * A set of things that cannot all hold.
   *
   * @param things which; empty if not even nothing at all is consistent. The caller's own to change
   * @param provenSmallest whether no smaller set conflicts; if not, the bound was reached, and all
   *     that is known is that it would be consistent without any one of its things
   * @param tests how often was asked whether a set is consistent
   */
  public record Found(BitSet things, boolean provenSmallest, int tests) {

    /** With a copy of the set. */
    public Found {
      things = Search.copy(things);
    }

    /** A copy of the set. */
    @Override
    public BitSet things() {
      return Search.copy(things);
    }
  }

  /**
   * A smallest conflict; empty if all things together are consistent, which takes one test. Of
   * several smallest ones always the same is found.
   */
  public Optional<Found> find() {
    return find(new BitSet());
  }

  /**
   * Conflicts that have nothing in common: a smallest one, then a smallest one of what is left
   * without all its things, and so on until the rest is consistent. Conflicts that share a thing
   * with an earlier one are not among them. Each is searched with the bound of tests anew.
   *
   * @param most how many at most, 0 or more
   * @throws IllegalArgumentException if that is negative
   */
  public List<Found> findAll(int most) {
    if (most < 0) {
      throw new IllegalArgumentException(most + " conflicts at most; state 0 or more");
    }
    List<Found> all = new ArrayList<>();
    BitSet aside = new BitSet();
    while (all.size() < most) {
      Optional<Found> next = find(aside);
      if (next.isEmpty()) {
        break;
      }
      all.add(next.get());
      BitSet found = next.get().things();
      if (found.isEmpty()) {
        break; // nothing can be set aside, and whatever is left conflicts
      }
      aside.or(found);
    }
    return List.copyOf(all);
  }

  private Optional<Found> find(BitSet aside) {
    BitSet searched = new BitSet();
    searched.set(0, things);
    searched.andNot(aside);
    return new Search(searched, consistent, mostTests).find();
  }
}

package dev.filial.core.ancestry;

import dev.filial.core.ancestry.LocalityLoss.Cause;
import dev.filial.core.ancestry.LocalityLoss.Why;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeGraph.Role;
import dev.filial.core.pedigree.Route;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/**
 * Which plants of a pedigree are true to a collector's field number, or to several that are of one
 * population, and where those that are not stopped being so.
 *
 * <p>A plant is true when every founder behind it bears one of the numbers and nobody else can have
 * come in. A founder bears its own number; one without any is not known to be of it. A seedling is
 * not true if one of its parents is not, else not certain if one of them is not certain or not
 * known; of several ways in which it may have come about, it has the verdict they agree in, else it
 * is not certain. A ramet, and a seedling without fertilisation, is what it repeats. A plant whose
 * origin the caller calls doubtful is not certain at best. (Common practice, no source.)
 *
 * <p>Numbers are compared letter for letter, outer spaces left out. Which species a founder is of
 * does not matter: two may have been collected under one number, and a cross of them is true to it.
 *
 * <p>One pass over the plants, linear in plants and parents, for each set of numbers; then the
 * verdict on a plant and the first place where its line was lost are looked up at once. Safe to
 * share between threads if the predicate is.
 */
public final class LocalityTruth {

  private static final LocalityVerdict[] VERDICTS = LocalityVerdict.values();
  private static final byte YES = 0;
  private static final byte OPEN = 1;
  private static final byte NO = 2;

  private final Pedigree pedigree;
  private final Set<String> numbers = new HashSet<>();
  private final IntPredicate inDoubt;
  private final byte[] verdict;

  /** Where the line of a plant was first lost, by level; unknown where it was not. */
  private final int[] first;

  /** The plants that have a founder of the numbers behind them, in one way at least. */
  private final BitSet descends;

  /** The plants whose line was lost in more than one place. */
  private final BitSet several = new BitSet();

  private LocalityTruth(Pedigree pedigree, Collection<String> numbers, IntPredicate inDoubt) {
    this.pedigree = pedigree;
    this.inDoubt = inDoubt;
    numbers.forEach(number -> this.numbers.add(number.strip()));
    verdict = new byte[pedigree.size()];
    first = new int[pedigree.size()];
    descends = new BitSet(pedigree.size());
    for (int plant = 0; plant < verdict.length; plant++) {
      settle(plant);
    }
  }

  /**
   * Goes through the pedigree, taking no plant's recorded origin for doubtful.
   *
   * @param fieldNumbers the number, or all numbers of one population
   */
  public static LocalityTruth of(Pedigree pedigree, Collection<String> fieldNumbers) {
    return of(pedigree, fieldNumbers, plant -> false);
  }

  /**
   * Goes through the pedigree.
   *
   * @param fieldNumbers the number, or all numbers of one population
   * @param inDoubt whether the origin of the plant of that index is open to doubt beyond what the
   *     pedigree says: flowers that were left open to other pollen. Asked again for causes
   */
  public static LocalityTruth of(
      Pedigree pedigree, Collection<String> fieldNumbers, IntPredicate inDoubt) {
    return new LocalityTruth(pedigree, fieldNumbers, inDoubt);
  }

  private void settle(int plant) {
    Founder founder = pedigree.founder(plant);
    byte found;
    if (founder != null) {
      found = ofFounder(founder);
      descends.set(plant, found == YES);
    } else if (pedigree.isRamet(plant)) {
      int source = pedigree.rametOf(plant);
      found = verdict[source];
      descends.set(plant, descends.get(source));
    } else if (pedigree.isPlainCross(plant)) {
      found = ofCross(plant, pedigree.seedParent(plant), pedigree.pollenParent(plant));
    } else {
      found = ofCases(plant);
    }
    verdict[plant] = found == YES && inDoubt.test(plant) ? OPEN : found;
    first[plant] = Pedigree.UNKNOWN;
    if (verdict[plant] != YES && descends.get(plant)) {
      trace(plant);
    }
  }

  private byte ofFounder(Founder founder) {
    String number = founder.fieldNumber();
    if (number == null) {
      return OPEN;
    }
    return numbers.contains(number) ? YES : NO;
  }

  private byte ofCross(int plant, int seed, int pollen) {
    return (byte) Math.max(ofParent(plant, seed), ofParent(plant, pollen));
  }

  private byte ofParent(int plant, int parent) {
    if (parent == Pedigree.UNKNOWN) {
      return OPEN;
    }
    if (descends.get(parent)) {
      descends.set(plant);
    }
    return verdict[parent];
  }

  private byte ofCases(int plant) {
    byte agreed = OPEN;
    boolean any = false;
    for (Descent descent : pedigree.descents(plant)) {
      byte one =
          descent instanceof Descent.Sexual cross
              ? ofCross(plant, cross.seed(), cross.pollen())
              : ofParent(plant, ((Descent.Copy) descent).of());
      // Once they differ it stays open, whatever the others are.
      agreed = !any || agreed == one ? one : OPEN;
      any = true;
    }
    return agreed;
  }

  /** A line that was lost further back stays lost from there. */
  private void trace(int plant) {
    int earliest = Pedigree.UNKNOWN;
    for (int parent : pedigree.parents(plant)) {
      if (isLostAlike(parent, plant)) {
        boolean differs = earliest != Pedigree.UNKNOWN && first[parent] != earliest;
        if (differs || several.get(parent)) {
          several.set(plant);
        }
        earliest = earliest == Pedigree.UNKNOWN ? first[parent] : Math.min(earliest, first[parent]);
      }
    }
    first[plant] = earliest == Pedigree.UNKNOWN ? plant : earliest;
  }

  private boolean isLostAlike(int parent, int plant) {
    return descends.get(parent) && verdict[parent] == verdict[plant];
  }

  /** The pedigree asked about. */
  public Pedigree pedigree() {
    return pedigree;
  }

  /** Whether the plant of that index is true to the numbers. */
  public LocalityVerdict verdict(int plant) {
    return VERDICTS[verdict[plant]];
  }

  /**
   * Whether the plant of this code is true to the numbers.
   *
   * @throws dev.filial.core.pedigree.PedigreeException if there is no such plant
   */
  public LocalityVerdict verdict(String code) {
    return verdict(pedigree.indexOf(code));
  }

  /**
   * Whether a founder of the numbers stands behind the plant, or may: it is one, or came of one.
   */
  public boolean isDescended(int plant) {
    return descends.get(plant);
  }

  /**
   * The plant at which the line was first lost, the one of the lowest level where there are
   * several; {@link Pedigree#UNKNOWN} for a plant that is true, and for one that does not come of
   * the numbers. It may be the plant itself.
   */
  public int firstLoss(int plant) {
    return first[plant];
  }

  /** Whether the line of the plant was lost in more than one place. */
  public boolean isLostSeveralTimes(int plant) {
    return several.get(plant);
  }

  /**
   * What happened at a plant where a line was lost, as {@link #firstLoss} names it.
   *
   * @throws IllegalArgumentException if no line was lost there
   */
  public LocalityLoss lossAt(int plant) {
    if (first[plant] != plant) {
      throw new IllegalArgumentException(
          "no line was lost at "
              + pedigree.code(plant)
              + "; ask at the plant it was first lost at");
    }
    return new LocalityLoss(pedigree.code(plant), verdict(plant), causes(plant));
  }

  /**
   * Every place where a line that leads to the plant of this code was lost, founders' side first:
   * those at which it became what it is, so that of a plant that is not true those are left out at
   * which its line had merely become uncertain. Empty for a plant that is true, or that does not
   * come of the numbers. Cost in proportion to the ancestors.
   *
   * @throws dev.filial.core.pedigree.PedigreeException if there is no such plant
   */
  public List<LocalityLoss> losses(String code) {
    int plant = pedigree.indexOf(code);
    if (first[plant] == Pedigree.UNKNOWN) {
      return List.of();
    }
    BitSet open = new BitSet(plant + 1);
    BitSet lost = new BitSet(plant + 1);
    open.set(plant);
    for (int i = plant; i >= 0; i = open.previousSetBit(i - 1)) {
      if (first[i] == i) {
        lost.set(i);
        continue;
      }
      for (int parent : pedigree.parents(i)) {
        if (isLostAlike(parent, i)) {
          open.set(parent);
        }
      }
    }
    return lost.stream().mapToObj(this::lossAt).toList();
  }

  private List<Cause> causes(int plant) {
    List<Cause> causes = new ArrayList<>();
    if (verdict[plant] == OPEN && inDoubt.test(plant)) {
      Route route = pedigree.caseCount(plant) == 0 ? null : pedigree.descents(plant).get(0).route();
      causes.add(new Cause(Why.OPEN_TO_DOUBT, route, Fraction.ONE, null, null, null));
    }
    for (Descent descent : pedigree.descents(plant)) {
      if (descent instanceof Descent.Sexual cross) {
        addParent(causes, plant, descent, Role.SEED, cross.seed());
        if (cross.pollen() != cross.seed() || cross.pollen() == Pedigree.UNKNOWN) {
          addParent(causes, plant, descent, Role.POLLEN, cross.pollen());
        }
      } else if (descent instanceof Descent.Copy copy) {
        addParent(causes, plant, descent, Role.COPY, copy.of());
      }
    }
    return causes;
  }

  private void addParent(List<Cause> causes, int plant, Descent descent, Role role, int parent) {
    byte brings = parent == Pedigree.UNKNOWN ? OPEN : verdict[parent];
    if (brings == YES || brings < verdict[plant]) {
      return;
    }
    int founder = parent == Pedigree.UNKNOWN ? Pedigree.UNKNOWN : other(parent);
    Cause cause =
        new Cause(
            founder == Pedigree.UNKNOWN
                ? Why.UNKNOWN_PLANT
                : verdict[founder] == NO ? Why.OTHER_NUMBER : Why.NO_NUMBER,
            descent.route(),
            descent.share(),
            role,
            codeOf(parent),
            codeOf(founder));
    for (int i = 0; i < causes.size(); i++) {
      Cause before = causes.get(i);
      if (before.role() == role && isOne(before, cause)) {
        causes.set(i, withShare(before, before.share().plus(cause.share())));
        return;
      }
    }
    causes.add(cause);
  }

  /** A known parent counts once, in however many ways; unknown ones once for each way. */
  private static boolean isOne(Cause before, Cause cause) {
    return before.parent() == null
        ? cause.parent() == null && before.route() == cause.route()
        : before.parent().equals(cause.parent());
  }

  private static Cause withShare(Cause cause, Fraction share) {
    return new Cause(
        cause.why(), cause.route(), share, cause.role(), cause.parent(), cause.founder());
  }

  private @Nullable String codeOf(int plant) {
    return plant == Pedigree.UNKNOWN ? null : pedigree.code(plant);
  }

  /** A founder behind a plant by which it is not true; unknown where it is a plant nobody knows. */
  private int other(int plant) {
    int at = plant;
    while (!pedigree.isFounder(at)) {
      int next = Pedigree.UNKNOWN;
      for (int parent : pedigree.parents(at)) {
        // One that is as far from true as the plant itself, else any that is not true.
        if (verdict[parent] == verdict[at]) {
          next = parent;
          break;
        }
        next = verdict[parent] == YES ? next : parent;
      }
      if (next == Pedigree.UNKNOWN) {
        return Pedigree.UNKNOWN;
      }
      at = next;
    }
    return at;
  }
}

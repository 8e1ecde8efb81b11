package dev.filial.core.plan;

import dev.filial.core.plan.PlanSearch.Found;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * The best way of one first cross: of fewest seeds by the mean odds, and among such of least
 * inbreeding.
 */
final class BestWay {

  private static final double NOTHING = 1e-12;

  private final Relations relations;
  private final Goal goal;
  private final KeptAlleles alleles;
  private final SeedCost cost;
  private @Nullable Found best;

  BestWay(Relations relations, Goal goal, KeptAlleles alleles, SeedCost cost) {
    this.relations = relations;
    this.goal = goal;
    this.alleles = alleles;
    this.cost = cost;
  }

  /** What it takes; without end if none was found. */
  double cost() {
    return best == null ? Double.POSITIVE_INFINITY : best.cost();
  }

  /** Whether a way that takes at least that may be the best. */
  boolean mayTake(double its) {
    return its < Double.POSITIVE_INFINITY && (best == null || its <= best.cost() + NOTHING);
  }

  /**
   * Takes one more cross of a kept seedling, if that is the best now.
   *
   * @param spent what it takes to have the seedling
   * @param mass the share of wanted ones among the seeds of that cross
   * @param of how many sowings the way has in all
   * @return whether it is
   */
  boolean take(CrossPath before, Kept kept, Mate mate, double spent, double mass, int of) {
    double its = spent + cost.wanted(mass, of);
    return mayTake(its)
        && take(
            before.then(kept.appearance(), mate),
            its,
            mate instanceof Mate.Sib ? 2 : 1,
            kept.share());
  }

  /**
   * Takes a way, if it is the best now.
   *
   * @param known what it takes if all that is kept sets seed
   * @param each how many of what is kept a mating of the last season takes
   * @param share of the seeds that are kept for it
   * @return whether it is
   */
  boolean take(CrossPath path, double known, int each, double share) {
    OptionalInt tried = alleles.tried(path, cost.failingUntried());
    if (tried.isEmpty()) {
      return false;
    }
    double its = known + cost.spare(share, (tried.getAsInt() - 1) * each);
    if (!mayTake(its)) {
      return false;
    }
    double inbreeding = relations.inbreeding(path);
    boolean better =
        best == null || its < best.cost() - NOTHING || inbreeding < best.inbreeding() - NOTHING;
    if (better && goal.allows(relations, path)) {
      best = new Found(path, its, inbreeding);
      return true;
    }
    return false;
  }

  /** It; empty if none was found. */
  Optional<Found> found() {
    return Optional.ofNullable(best);
  }
}

package dev.filial.core.plan;

import dev.filial.core.plan.PlanSearch.Pair;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Which seedlings kept of two different crosses are best crossed with each other: for each one the
 * few with which that takes the fewest seeds.
 *
 * <p>All are compared with all as far as that can still take fewer than what is known of a way. Of
 * more of them than {@value #MOST_WORK} products would go through, those are compared that could do
 * best with the best gametes there are.
 */
final class DoubleCrosses {

  /** So many others are remembered of each. */
  private static final int PARTNERS = 4;

  private static final double MOST_WORK = 4e7;

  private final PlanGenes genes;
  private final Seeds seeds;
  private final List<Promising> halves;
  private final int gametes;
  private final double[] eggs;
  private final double[] worthByEgg;

  /** How many seeds it takes. */
  interface Seeds {
    /** Until one is kept, that share of them being so. */
    double kept(double share);

    /** 1 if a sowing may not come to one that is kept, that share of them being so; otherwise 0. */
    int failing(double share);

    /**
     * From two that are crossed to the end.
     *
     * @param mass the share of their seeds that count
     * @param failing how many of the sowings they come of may fail, 0 to 2
     */
    double after(double mass, int failing);

    /** Never more than that, and found without a logarithm. */
    double atLeastAfter(double mass, int failing);
  }

  /**
   * A seedling that is kept, and all crosses it can be kept of: their parents are of the same odds.
   *
   * @param bound what a way has to take less than, to be of any use to one of those crosses
   */
  record Half(Kept kept, List<Pair> pairs, double bound) {}

  /**
   * One crossed with another.
   *
   * @param asSeed whether the other is the seed parent
   * @param cost about how many seeds it takes, those of both crosses before it counted in
   */
  record Joined(Half one, Half other, boolean asSeed, double cost) {
    /** The share of which so many seeds of either cross take as many as of both by theirs. */
    double share() {
      double one = one().kept().share();
      double other = other().kept().share();
      return one * other / (one + other);
    }
  }

  /** What is to be kept before, and what the rest takes with the best mate there could be. */
  private record Promising(Half half, double keeping, double after, int failing) {
    double promise() {
      return keeping + after;
    }
  }

  /**
   * Among these.
   *
   * @param worth by genotype, the share of such seeds that count
   */
  DoubleCrosses(PlanGenes genes, Seeds seeds, List<Half> all, double[] worth) {
    this.genes = genes;
    this.seeds = seeds;
    this.halves = all.isEmpty() ? List.of() : best(all, worth);
    // In one row each, for they are gone through many million times.
    this.gametes = all.isEmpty() ? 0 : all.get(0).kept().eggs().length;
    this.eggs = new double[halves.size() * gametes];
    this.worthByEgg = new double[halves.size() * gametes];
    for (int i = 0; i < halves.size(); i++) {
      Kept kept = halves.get(i).half().kept();
      System.arraycopy(kept.eggs(), 0, eggs, i * gametes, gametes);
      System.arraycopy(
          genes.wantedByEgg(kept.grains(), worth), 0, worthByEgg, i * gametes, gametes);
    }
  }

  /** The share that counts of the seeds of one with pollen of the other. */
  private double share(int seed, int pollen) {
    double sum = 0;
    for (int egg = 0; egg < gametes; egg++) {
      sum += eggs[seed * gametes + egg] * worthByEgg[pollen * gametes + egg];
    }
    return sum;
  }

  /** Those that can give anything, the ones that are kept with the fewest seeds first. */
  private List<Promising> best(List<Half> all, double[] worth) {
    boolean[] eggsThere = new boolean[all.get(0).kept().eggs().length];
    boolean[] grainsThere = new boolean[all.get(0).kept().grains().length];
    for (Half half : all) {
      mark(eggsThere, half.kept().eggs());
      mark(grainsThere, half.kept().grains());
    }
    double[] byEgg = genes.bestByEgg(worth, grainsThere);
    double[] byGrain = genes.bestByGrain(worth, eggsThere);
    double bound = all.stream().mapToDouble(Half::bound).max().orElse(0);
    List<Promising> promising = new ArrayList<>();
    for (Half half : all) {
      double asSeed = PlanGenes.dot(half.kept().eggs(), byEgg);
      double asPollen = PlanGenes.dot(half.kept().grains(), byGrain);
      int failing = seeds.failing(half.kept().share());
      Promising one =
          new Promising(
              half,
              seeds.kept(half.kept().share()),
              seeds.after(Math.max(asSeed, asPollen), failing), // the other may be sure to come
              failing);
      if (one.promise() + 1 < bound) { // one seed at least for the other of the two
        promising.add(one);
      }
    }
    int most = (int) Math.sqrt(MOST_WORK / eggsThere.length);
    promising.sort(Comparator.comparingDouble(Promising::promise));
    return promising.subList(0, Math.min(most, promising.size())).stream()
        .sorted(Comparator.comparingDouble(Promising::keeping))
        .toList();
  }

  private static void mark(boolean[] there, double[] gametes) {
    for (int i = 0; i < there.length; i++) {
      there[i] |= gametes[i] > 0;
    }
  }

  /** The best of each, those of fewest seeds first. */
  List<Joined> joined() {
    List<Joined> joined = new ArrayList<>();
    for (int i = 0; i < halves.size(); i++) {
      Few few = new Few(halves.get(i).half().bound());
      best(i, few);
      few.into(joined, halves.get(i).half());
    }
    joined.sort(Comparator.comparingDouble(Joined::cost));
    return joined;
  }

  private void best(int one, Few few) {
    Promising its = halves.get(one);
    for (int j = 0; j < halves.size(); j++) {
      Promising other = halves.get(j);
      double keeping = its.keeping() + other.keeping();
      if (keeping + its.after() >= few.worst()) {
        return; // and those after it take more
      }
      if (!isPair(its.half(), other.half())) {
        continue;
      }
      double there = share(one, j);
      double back = genes.isDirected() ? share(j, one) : 0;
      double mass = Math.max(there, back);
      int failing = its.failing() + other.failing();
      if (keeping + seeds.atLeastAfter(mass, failing) < few.worst()) {
        few.take(j, back > there, keeping + seeds.after(mass, failing));
      }
    }
  }

  /** Whether two different crosses are among theirs. */
  private static boolean isPair(Half one, Half other) {
    return one.pairs().size() > 1
        || other.pairs().size() > 1
        || !one.pairs().get(0).equals(other.pairs().get(0));
  }

  /** The few best of one, in order. */
  private final class Few {
    private final int[] others = new int[PARTNERS];
    private final boolean[] asSeed = new boolean[PARTNERS];
    private final double[] costs = new double[PARTNERS];

    Few(double bound) {
      Arrays.fill(others, -1);
      Arrays.fill(costs, bound);
    }

    double worst() {
      return costs[PARTNERS - 1];
    }

    void take(int other, boolean seed, double its) {
      if (its >= worst()) {
        return;
      }
      int at = PARTNERS - 1;
      while (at > 0 && costs[at - 1] > its) {
        others[at] = others[at - 1];
        asSeed[at] = asSeed[at - 1];
        costs[at] = costs[at - 1];
        at--;
      }
      others[at] = other;
      asSeed[at] = seed;
      costs[at] = its;
    }

    void into(List<Joined> joined, Half one) {
      for (int at = 0; at < PARTNERS; at++) {
        if (others[at] >= 0) {
          joined.add(new Joined(one, halves.get(others[at]).half(), asSeed[at], costs[at]));
        }
      }
    }
  }
}

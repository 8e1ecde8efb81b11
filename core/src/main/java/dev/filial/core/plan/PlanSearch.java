package dev.filial.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds the ways to a wanted seedling that take the fewest seeds.
 *
 * <p>One season is a cross of two candidates or a selfing. In each further season a seedling that
 * was kept for what it shows is selfed, crossed with a sib that shows the same, or crossed with any
 * candidate, a backcross if that is its own parent. One and two seasons are gone through whole; of
 * three only the {@value #BEAM} best kept seedlings of the first season are carried on (a beam
 * search), judged by what one or two further crosses of them would give. A kept seedling is never
 * crossed with one that was kept of another cross.
 *
 * <p>Ways are compared by mean odds: every candidate's odds stand for themselves, as if what is
 * uncertain of one plant told nothing of another. Candidates of the same odds are reckoned once.
 */
public final class PlanSearch {

  /** How many kept seedlings of the first season are carried on to a third one. */
  public static final int BEAM = 2000;

  private static final double NOTHING = 1e-12;

  private static final int MOST_EXACT = 20;

  /** Below it log(1 - x) is -x to the precision that ways are compared with. */
  private static final double RARE = 1e-6;

  private final PlanGenes genes;
  private final List<Candidate> candidates;
  private final Relations relations;
  private final SeedSetting setting;
  private final Goal goal;
  private final int seasons;
  private final double coming;

  private final int[] type;
  private final List<double[]> odds = new ArrayList<>();
  private final List<double[]> eggs = new ArrayList<>();
  private final List<double[]> grains = new ArrayList<>();
  private final List<double[]> wantedByEgg = new ArrayList<>();
  private final List<double[]> wantedByGrain = new ArrayList<>();
  private final List<double[]> laterByEgg = new ArrayList<>();
  private final List<double[]> laterByGrain = new ArrayList<>();
  private final double[] wantedOfSelfed;
  private final double[] laterOfSelfed;
  private final double[] logFailing = new double[4];
  private final double[] meanOfTwo = new double[4];
  private final double[] meanWanted = new double[4];
  private final Map<Long, List<Kept>> firsts = new HashMap<>();

  private PlanSearch(
      PlanGenes genes,
      List<Candidate> candidates,
      Relations relations,
      SeedSetting setting,
      Goal goal,
      int seasons,
      double coming) {
    this.genes = genes;
    this.candidates = List.copyOf(candidates);
    this.relations = relations;
    this.setting = setting;
    this.goal = goal;
    this.seasons = seasons;
    this.coming = coming;
    this.wantedOfSelfed = genes.wantedOfSelfed();
    this.laterOfSelfed = new double[genes.size()];
    for (int n = 0; n < laterOfSelfed.length; n++) {
      double[] seeds = genes.seeds(n, n);
      laterOfSelfed[n] =
          Math.max(wantedOfSelfed[n], PlanGenes.dot(seeds, wantedOfSelfed)) * genes.lives(n);
    }
    for (int of = 1; of < logFailing.length; of++) {
      double certainty = Math.pow(goal.certainty(), 1.0 / of);
      logFailing[of] = Math.log1p(-certainty);
      meanOfTwo[of] = expected(2, certainty);
      meanWanted[of] = expected(goal.atLeast(), certainty);
    }
    this.type = types();
  }

  /** Among these candidates, one season ahead, every seed coming up. */
  public static PlanSearch of(
      PlanGenes genes, List<Candidate> candidates, Relations relations, Goal goal) {
    return new PlanSearch(genes, candidates, relations, (seed, pollen) -> true, goal, 1, 1);
  }

  /**
   * The same, so many seasons ahead.
   *
   * @param number 1 to 3
   * @throws IllegalArgumentException if it is not
   */
  public PlanSearch withSeasons(int number) {
    if (number < 1 || number > 3) {
      throw new IllegalArgumentException(number + " seasons; plans are made for 1, 2 or 3 of them");
    }
    return new PlanSearch(genes, candidates, relations, setting, goal, number, coming);
  }

  /** The same with pairs left out that set no seed. */
  public PlanSearch withSeedSetting(SeedSetting other) {
    return new PlanSearch(genes, candidates, relations, other, goal, seasons, coming);
  }

  /** The same with only that share of the seeds coming to a seedling that can be looked at. */
  public PlanSearch withComing(double share) {
    return new PlanSearch(genes, candidates, relations, setting, goal, seasons, share);
  }

  /**
   * A way that was found.
   *
   * @param path the way
   * @param cost about how many seeds it takes, by the mean odds
   * @param inbreeding of the seedlings at its end
   */
  public record Found(CrossPath path, double cost, double inbreeding) {}

  /** A seedling that is kept of a cross for what it shows. */
  private static final class Kept {
    private final int appearance;
    private final double share;
    private final double[] odds;
    private final double[] eggs;
    private final double[] grains;

    Kept(PlanGenes genes, int appearance, double share, double[] odds) {
      this.appearance = appearance;
      this.share = share;
      this.odds = odds;
      this.eggs = genes.eggs(odds);
      this.grains = genes.grains(odds);
    }
  }

  /** Two candidates, or one that is selfed. */
  private record Pair(int seed, int pollen) {}

  private int[] types() {
    int[] types = new int[candidates.size()];
    for (int i = 0; i < types.length; i++) {
      double[] its = candidates.get(i).odds();
      int found = -1;
      for (int t = 0; t < odds.size() && found < 0; t++) {
        found = Arrays.equals(odds.get(t), its) ? t : -1;
      }
      if (found < 0) {
        found = odds.size();
        odds.add(its);
        double[] egg = genes.eggs(its);
        double[] grain = genes.grains(its);
        eggs.add(egg);
        grains.add(grain);
        wantedByEgg.add(genes.wantedByEgg(grain, genes.wantedSeeds()));
        wantedByGrain.add(genes.wantedByGrain(egg, genes.wantedSeeds()));
        laterByEgg.add(genes.wantedByEgg(grain, laterOfSelfed));
        laterByGrain.add(genes.wantedByGrain(egg, laterOfSelfed));
      }
      types[i] = found;
    }
    return types;
  }

  /** The best way of each first cross and each number of seasons, those of fewest seeds first. */
  public List<Found> ways() {
    List<Found> all = new ArrayList<>();
    List<Pair> pairs = pairs();
    for (Pair pair : pairs) {
      one(pair).ifPresent(all::add);
    }
    if (seasons >= 2) {
      for (Pair pair : pairs) {
        two(pair).ifPresent(all::add);
      }
    }
    if (seasons >= 3) {
      three(pairs, all);
    }
    all.sort(
        Comparator.comparingInt((Found found) -> found.path().seasons())
            .thenComparingDouble(Found::cost)
            .thenComparingDouble(Found::inbreeding));
    return all;
  }

  /** Of plants of which it does not matter which bears the seed, each two once. */
  private List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < candidates.size(); i++) {
      if (candidates.get(i).selfs()) {
        pairs.add(new Pair(i, i));
      }
      for (int j = i + 1; j < candidates.size(); j++) {
        boolean there = setting.sets(i, j);
        boolean back = setting.sets(j, i);
        if (there) {
          pairs.add(new Pair(i, j));
        }
        if (back && (genes.isDirected() || !there)) {
          pairs.add(new Pair(j, i));
        }
      }
    }
    return pairs;
  }

  /** How many pairs, and selfings, set no seed. */
  public int refused() {
    int refused = 0;
    for (int i = 0; i < candidates.size(); i++) {
      refused += candidates.get(i).selfs() ? 0 : 1;
      for (int j = i + 1; j < candidates.size(); j++) {
        refused += setting.sets(i, j) || setting.sets(j, i) ? 0 : 1;
      }
    }
    return refused;
  }

  private Optional<Found> one(Pair pair) {
    int s = type[pair.seed()];
    int p = type[pair.pollen()];
    double mass =
        pair.seed() == pair.pollen()
            ? PlanGenes.dot(odds.get(s), wantedOfSelfed)
            : PlanGenes.dot(eggs.get(s), wantedByEgg.get(p));
    if (mass < NOTHING) {
      return Optional.empty();
    }
    CrossPath path = new CrossPath(pair.seed(), pair.pollen(), List.of());
    return goal.allows(relations, path)
        ? Optional.of(new Found(path, cost(mass, goal.atLeast(), 1), relations.inbreeding(path)))
        : Optional.empty();
  }

  /** About how many seeds one of so many seasons takes. */
  private double cost(double mass, int atLeast, int of) {
    if (mass < NOTHING) {
      return Double.POSITIVE_INFINITY;
    }
    double share = Math.min(1, mass * coming);
    if (atLeast > 1) {
      double mean = atLeast == 2 ? meanOfTwo[of] : meanWanted[of];
      return atLeast + (1 - share) * mean / share;
    }
    if (share >= 1 - NOTHING) {
      return 1;
    }
    double missing = share < RARE ? -share : Math.log(1 - share);
    return Math.max(1, logFailing[of] / missing);
  }

  /** The mean at which so many come with that certainty, rare as each is. */
  private static double expected(int atLeast, double certainty) {
    if (atLeast > MOST_EXACT) {
      return atLeast + 2 * Math.sqrt(atLeast); // near enough to compare ways by
    }
    double low = 0;
    double high = 10 + 10.0 * atLeast;
    for (int step = 0; step < 60; step++) {
      double mean = (low + high) / 2;
      double term = Math.exp(-mean);
      double fewer = 0;
      for (int k = 0; k < atLeast; k++) {
        fewer += term;
        term *= mean / (k + 1);
      }
      if (1 - fewer < certainty) {
        low = mean;
      } else {
        high = mean;
      }
    }
    return high;
  }

  private List<Kept> firsts(Pair pair) {
    boolean selfing = pair.seed() == pair.pollen();
    long key =
        ((long) type[pair.seed()] * odds.size() + type[pair.pollen()]) * 2 + (selfing ? 1 : 0);
    return firsts.computeIfAbsent(
        key,
        any ->
            kept(
                selfing
                    ? genes.selfed(odds.get(type[pair.seed()]))
                    : genes.seeds(eggs.get(type[pair.seed()]), grains.get(type[pair.pollen()]))));
  }

  private List<Kept> kept(double[] seeds) {
    List<Kept> all = new ArrayList<>();
    for (int k = 0; k < genes.appearances().size(); k++) {
      double share = genes.showing(seeds, k);
      if (share > NOTHING) {
        double[] its = genes.kept(seeds, k, share);
        all.add(new Kept(genes, k, share, its));
      }
    }
    return all;
  }

  private Optional<Found> two(Pair pair) {
    Best best = new Best();
    for (Kept kept : firsts(pair)) {
      last(
          best, new CrossPath(pair.seed(), pair.pollen(), List.of()), kept, 0, 2, 1, selfing(pair));
    }
    return best.found();
  }

  private boolean selfing(Pair pair) {
    return candidates.get(pair.seed()).selfs() || candidates.get(pair.pollen()).selfs();
  }

  /** The last cross of a kept seedling. */
  private void last(
      Best best, CrossPath before, Kept kept, double spent, int of, int ways, boolean selfs) {
    double keeping = spent + cost(kept.share, ways, of);
    if (selfs) {
      double mass = PlanGenes.dot(kept.odds, wantedOfSelfed);
      best.take(before, kept, new Mate.Itself(), keeping, mass, of);
    }
    double sibs = PlanGenes.dot(kept.eggs, genes.wantedByEgg(kept.grains, genes.wantedSeeds()));
    best.take(before, kept, new Mate.Sib(), spent + cost(kept.share, 2, of), sibs, of);
    double[] asPollen = new double[odds.size()];
    double[] asSeed = new double[odds.size()];
    double most = 0;
    for (int t = 0; t < asPollen.length; t++) {
      asPollen[t] = PlanGenes.dot(kept.eggs, wantedByEgg.get(t));
      asSeed[t] = genes.isDirected() ? PlanGenes.dot(kept.grains, wantedByGrain.get(t)) : 0;
      most = Math.max(most, Math.max(asPollen[t], asSeed[t]));
    }
    // Fewer wanted ones never take fewer seeds, so most kept seedlings are done with here.
    if (!best.mayTake(keeping + cost(most, goal.atLeast(), of))) {
      return;
    }
    double taken = 0;
    for (int c = 0; c < candidates.size(); c++) {
      double pollen = asPollen[type[c]];
      if (pollen >= taken - NOTHING
          && best.take(before, kept, new Mate.Plant(c, false), keeping, pollen, of)) {
        taken = pollen;
      }
      double seed = asSeed[type[c]];
      if (seed > 0
          && seed >= taken - NOTHING
          && best.take(before, kept, new Mate.Plant(c, true), keeping, seed, of)) {
        taken = seed;
      }
    }
  }

  /** The best of one first cross. */
  private final class Best {
    private @Nullable Found best;

    boolean mayTake(double cost) {
      return cost < Double.POSITIVE_INFINITY && (best == null || cost <= best.cost() + NOTHING);
    }

    /** Whether it is the best now. */
    boolean take(CrossPath before, Kept kept, Mate mate, double spent, double mass, int of) {
      double cost = spent + cost(mass, goal.atLeast(), of);
      if (!mayTake(cost)) {
        return false;
      }
      List<CrossPath.Later> later = new ArrayList<>(before.later());
      later.add(new CrossPath.Later(kept.appearance, mate));
      CrossPath path = new CrossPath(before.seed(), before.pollen(), later);
      double inbreeding = relations.inbreeding(path);
      boolean better =
          best == null || cost < best.cost() - NOTHING || inbreeding < best.inbreeding() - NOTHING;
      if (better && goal.allows(relations, path)) {
        best = new Found(path, cost, inbreeding);
        return true;
      }
      return false;
    }

    Optional<Found> found() {
      return Optional.ofNullable(best);
    }
  }

  private record Started(Pair pair, Kept kept, double score) {}

  private void three(List<Pair> pairs, List<Found> all) {
    List<Started> started = new ArrayList<>();
    Map<Kept, Double> scores = new HashMap<>();
    for (Pair pair : pairs) {
      for (Kept kept : firsts(pair)) {
        started.add(new Started(pair, kept, scores.computeIfAbsent(kept, this::score)));
      }
    }
    started.removeIf(one -> one.score() == Double.POSITIVE_INFINITY);
    started.sort(Comparator.comparingDouble(Started::score));
    Map<Pair, Best> best = new HashMap<>();
    Map<Kept, Map<Object, List<Kept>>> seconds = new HashMap<>();
    for (Started one : started.subList(0, Math.min(BEAM, started.size()))) {
      Best its = best.computeIfAbsent(one.pair(), any -> new Best());
      further(its, one, seconds.computeIfAbsent(one.kept(), any -> new HashMap<>()));
    }
    best.values().forEach(one -> one.found().ifPresent(all::add));
  }

  /** By what one more cross of it gives, or two. */
  private double score(Kept kept) {
    double once = PlanGenes.dot(kept.odds, wantedOfSelfed);
    double twice = PlanGenes.dot(kept.odds, laterOfSelfed);
    for (int t = 0; t < odds.size(); t++) {
      once = Math.max(once, PlanGenes.dot(kept.eggs, wantedByEgg.get(t)));
      twice = Math.max(twice, PlanGenes.dot(kept.eggs, laterByEgg.get(t)));
      if (genes.isDirected()) {
        once = Math.max(once, PlanGenes.dot(kept.grains, wantedByGrain.get(t)));
        twice = Math.max(twice, PlanGenes.dot(kept.grains, laterByGrain.get(t)));
      }
    }
    return cost(kept.share, 1, 3) + Math.min(cost(once, 1, 3), cost(twice, 1, 3));
  }

  private void further(Best best, Started from, Map<Object, List<Kept>> seconds) {
    CrossPath first = new CrossPath(from.pair().seed(), from.pair().pollen(), List.of());
    Kept kept = from.kept();
    double spent = cost(kept.share, 1, 3);
    boolean selfs = selfing(from.pair());
    if (selfs) {
      onwards(
          best,
          first,
          kept,
          new Mate.Itself(),
          spent,
          seconds.computeIfAbsent("itself", any -> kept(genes.selfed(kept.odds))),
          true);
    }
    onwards(
        best,
        first,
        kept,
        new Mate.Sib(),
        cost(kept.share, 2, 3),
        seconds.computeIfAbsent("sib", any -> kept(genes.seeds(kept.eggs, kept.grains))),
        selfs);
    for (int c = 0; c < candidates.size(); c++) {
      int other = type[c];
      onwards(
          best,
          first,
          kept,
          new Mate.Plant(c, false),
          spent,
          seconds.computeIfAbsent(other, any -> kept(genes.seeds(kept.eggs, grains.get(other)))),
          selfs || candidates.get(c).selfs());
      if (genes.isDirected()) {
        onwards(
            best,
            first,
            kept,
            new Mate.Plant(c, true),
            spent,
            seconds.computeIfAbsent(
                -1 - other, any -> kept(genes.seeds(eggs.get(other), kept.grains))),
            selfs || candidates.get(c).selfs());
      }
    }
  }

  private void onwards(
      Best best,
      CrossPath first,
      Kept kept,
      Mate mate,
      double spent,
      List<Kept> seconds,
      boolean selfs) {
    CrossPath path =
        new CrossPath(
            first.seed(), first.pollen(), List.of(new CrossPath.Later(kept.appearance, mate)));
    for (Kept second : seconds) {
      last(best, path, second, spent, 3, 1, selfs);
    }
  }
}

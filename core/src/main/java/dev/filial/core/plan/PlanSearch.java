package dev.filial.core.plan;

import dev.filial.core.plan.DoubleCrosses.Half;
import dev.filial.core.plan.DoubleCrosses.Joined;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the ways to a wanted seedling that take the fewest seeds.
 *
 * <p>One season is a cross of two candidates or a selfing. In each further season a seedling that
 * was kept for what it shows is selfed, crossed with a sib that shows the same, or crossed with any
 * candidate, a backcross if that is its own parent; or two crosses are made in the first season,
 * and what is kept of the one is crossed with what is kept of the other in the second. One and two
 * seasons are gone through whole, save that of some thousands of kept seedlings only the most
 * promising are crossed with each other; of three seasons only the {@value #BEAM} best kept
 * seedlings of the first season are carried on (a beam search), judged by what one or two further
 * crosses of them would give, and as many pairs of them.
 *
 * <p>Ways are compared by mean odds: every candidate's odds stand for themselves, as if what is
 * uncertain of one plant told nothing of another. Candidates of the same odds are reckoned once.
 */
public final class PlanSearch {

  /** How many kept seedlings of the first season are carried on to a third one. */
  public static final int BEAM = 2000;

  private static final double NOTHING = 1e-12;

  /** Of crosses of which the same is known, so many are carried on as two crosses at once. */
  private static final int OF_ONE_KIND = 12;

  private final PlanGenes genes;
  private final List<Candidate> candidates;
  private final Relations relations;
  private final SeedSetting setting;
  private final Goal goal;
  private final int seasons;
  private final double coming;

  private final CandidateTypes types;
  private final SeedCost cost;
  private final KeptAlleles alleles;
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
    this.cost = new SeedCost(goal, coming);
    this.alleles = new KeptAlleles(this.candidates);
    this.types = new CandidateTypes(genes, this.candidates);
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

  /** Two candidates, or one that is selfed. */
  record Pair(int seed, int pollen) {
    boolean isSelfing() {
      return seed == pollen;
    }
  }

  /** The best way of each first cross and each number of seasons, those of fewest seeds first. */
  public List<Found> ways() {
    List<Found> all = new ArrayList<>();
    List<Pair> pairs = pairs();
    for (Pair pair : pairs) {
      one(pair).ifPresent(all::add);
    }
    if (seasons >= 2) {
      // What takes more than a shorter way of the same first cross is of no use to it.
      Map<Pair, Double> shorter = new HashMap<>();
      note(shorter, all);
      Map<Pair, BestWay> two = new LinkedHashMap<>();
      for (Pair pair : pairs) {
        two(pair, two.computeIfAbsent(pair, any -> best()));
      }
      twoOfTwo(halves(pairs, shorter, two), two);
      two.values().forEach(best -> best.found().ifPresent(all::add));
      if (seasons >= 3) {
        note(shorter, all);
        Map<Pair, BestWay> three = new LinkedHashMap<>();
        three(pairs, three);
        threeOfTwo(halves(pairs, shorter, three), three);
        three.values().forEach(best -> best.found().ifPresent(all::add));
      }
    }
    all.sort(
        Comparator.comparingInt((Found found) -> found.path().seasons())
            .thenComparingDouble(Found::cost)
            .thenComparingDouble(Found::inbreeding));
    return eachOnce(all);
  }

  private BestWay best() {
    return new BestWay(relations, goal, alleles, cost);
  }

  private static void note(Map<Pair, Double> costs, List<Found> all) {
    for (Found found : all) {
      costs.merge(new Pair(found.path().seed(), found.path().pollen()), found.cost(), Math::min);
    }
  }

  /** Two crosses made beside each other are found from either. */
  private List<Found> eachOnce(List<Found> all) {
    Set<Object> seen = new HashSet<>();
    List<Found> once = new ArrayList<>();
    for (Found found : all) {
      CrossPath path = found.path();
      Optional<Mate.OtherCross> beside = path.beside();
      if (beside.isEmpty()) {
        once.add(found);
        continue;
      }
      Mate.OtherCross other = beside.get();
      Object one = List.of(path.seed(), path.pollen(), path.later().get(0).keep());
      Object two = List.of(other.seed(), other.pollen(), other.keep());
      Object both =
          !genes.isDirected()
              ? Set.of(one, two)
              : other.asSeed() ? List.of(two, one) : List.of(one, two);
      if (seen.add(List.of(both, path.later().subList(1, path.later().size())))) {
        once.add(found);
      }
    }
    return once;
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
    int s = types.of(pair.seed());
    int p = types.of(pair.pollen());
    double mass =
        pair.seed() == pair.pollen()
            ? PlanGenes.dot(types.odds(s), types.wantedOfSelfed())
            : PlanGenes.dot(types.eggs(s), types.wantedByEgg(p));
    if (mass < NOTHING) {
      return Optional.empty();
    }
    CrossPath path = new CrossPath(pair.seed(), pair.pollen(), List.of());
    return goal.allows(relations, path)
        ? Optional.of(new Found(path, cost.wanted(mass, 1), relations.inbreeding(path)))
        : Optional.empty();
  }

  private List<Kept> firsts(Pair pair) {
    boolean selfing = pair.seed() == pair.pollen();
    long key =
        ((long) types.of(pair.seed()) * types.size() + types.of(pair.pollen())) * 2
            + (selfing ? 1 : 0);
    return firsts.computeIfAbsent(
        key,
        any ->
            Kept.of(
                genes,
                selfing
                    ? genes.selfed(types.odds(types.of(pair.seed())))
                    : genes.seeds(
                        types.eggs(types.of(pair.seed())), types.grains(types.of(pair.pollen())))));
  }

  private void two(Pair pair, BestWay best) {
    CrossPath first = new CrossPath(pair.seed(), pair.pollen(), List.of());
    for (Kept kept : firsts(pair)) {
      last(best, first, kept, 0, 1 + cost.failing(kept.share()), seedlingsSelf(pair));
    }
  }

  /** Whether seedlings of it are taken to set seed with their own pollen. */
  private boolean seedlingsSelf(Pair pair) {
    return candidates.get(pair.seed()).selfs() || candidates.get(pair.pollen()).selfs();
  }

  /** The last cross of a kept seedling. */
  private void last(
      BestWay best, CrossPath before, Kept kept, double spent, int of, boolean selfs) {
    double keeping = spent + cost.kept(kept.share(), 1, of);
    if (selfs) {
      double mass = PlanGenes.dot(kept.odds(), types.wantedOfSelfed());
      best.take(before, kept, new Mate.Itself(), keeping, mass, of);
    }
    double sibs = PlanGenes.dot(kept.eggs(), genes.wantedByEgg(kept.grains(), genes.wantedSeeds()));
    best.take(before, kept, new Mate.Sib(), spent + cost.kept(kept.share(), 2, of), sibs, of);
    double[] asPollen = new double[types.size()];
    double[] asSeed = new double[types.size()];
    double most = 0;
    for (int t = 0; t < asPollen.length; t++) {
      asPollen[t] = PlanGenes.dot(kept.eggs(), types.wantedByEgg(t));
      asSeed[t] = genes.isDirected() ? PlanGenes.dot(kept.grains(), types.wantedByGrain(t)) : 0;
      most = Math.max(most, Math.max(asPollen[t], asSeed[t]));
    }
    // Fewer wanted ones never take fewer seeds, so most kept seedlings are done with here.
    if (!best.mayTake(keeping + cost.wanted(most, of))) {
      return;
    }
    double taken = 0;
    for (int c = 0; c < candidates.size(); c++) {
      double pollen = asPollen[types.of(c)];
      if (pollen >= taken - NOTHING
          && best.take(before, kept, new Mate.Plant(c, false), keeping, pollen, of)) {
        taken = pollen;
      }
      double seed = asSeed[types.of(c)];
      if (seed > 0
          && seed >= taken - NOTHING
          && best.take(before, kept, new Mate.Plant(c, true), keeping, seed, of)) {
        taken = seed;
      }
    }
  }

  /** All kept seedlings of the first season, each with the crosses it can come of. */
  private List<Half> halves(List<Pair> pairs, Map<Pair, Double> shorter, Map<Pair, BestWay> found) {
    Map<Kept, List<Pair>> of = new LinkedHashMap<>();
    for (Pair pair : pairs) {
      for (Kept kept : firsts(pair)) {
        // A selfing of which nothing is chosen hands on what its parent does, a season later.
        if (pair.seed() != pair.pollen() || kept.share() < 1 - NOTHING) {
          of.computeIfAbsent(kept, any -> new ArrayList<>()).add(pair);
        }
      }
    }
    List<Half> halves = new ArrayList<>();
    of.forEach(
        (kept, its) -> {
          double bound = 0;
          for (Pair pair : its) {
            double known = shorter.getOrDefault(pair, Double.POSITIVE_INFINITY);
            BestWay best = found.get(pair);
            bound = Math.max(bound, best == null ? known : Math.min(known, best.cost()));
          }
          halves.add(new Half(kept, its, bound + NOTHING)); // one as good may be less inbred
        });
    return halves;
  }

  /** Two kept seedlings of different crosses give the wanted one. */
  private void twoOfTwo(List<Half> halves, Map<Pair, BestWay> all) {
    for (Joined joined :
        new DoubleCrosses(genes, cost.ofTwoAndOne(), halves, genes.wantedSeeds()).joined()) {
      for (Pair pair : joined.one().pairs()) {
        BestWay best = all.computeIfAbsent(pair, any -> best());
        if (best.mayTake(joined.cost())) {
          beside(pair, joined, true)
              .ifPresent(path -> best.take(path, joined.cost(), 1, joined.share()));
        }
      }
    }
  }

  /**
   * The way of a cross with the other cross of least kinship.
   *
   * @param isEnd whether the seedlings it gives have to be as related as they may
   */
  private Optional<CrossPath> beside(Pair pair, Joined joined, boolean isEnd) {
    CrossPath first = new CrossPath(pair.seed(), pair.pollen(), List.of());
    Optional<CrossPath> found = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Pair other : joined.other().pairs()) {
      double kin = relations.between(pair.seed(), pair.pollen(), other.seed(), other.pollen());
      if (kin >= least - NOTHING || other.equals(pair)) {
        continue;
      }
      Mate mate =
          new Mate.OtherCross(
              other.seed(), other.pollen(), joined.other().kept().appearance(), joined.asSeed());
      CrossPath path = first.then(joined.one().kept().appearance(), mate);
      if (!isEnd || goal.allows(relations, path)) {
        found = Optional.of(path);
        least = kin;
      }
    }
    return found;
  }

  /** One more cross of what two kept seedlings of different crosses give. */
  private void threeOfTwo(List<Half> halves, Map<Pair, BestWay> all) {
    int begun = 0;
    for (Joined joined : new DoubleCrosses(genes, cost.ofTwoAndTwo(), halves, later()).joined()) {
      Kept one = joined.one().kept();
      Kept other = joined.other().kept();
      int failing = cost.failing(one.share()) + cost.failing(other.share());
      double spent = cost.kept(one.share(), 1, 4) + cost.kept(other.share(), 1, 4);
      List<Kept> seconds =
          Kept.of(
              genes,
              joined.asSeed()
                  ? genes.seeds(other.eggs(), one.grains())
                  : genes.seeds(one.eggs(), other.grains()));
      for (Pair pair : joined.one().pairs().subList(0, few(joined.one().pairs()))) {
        Optional<CrossPath> path = beside(pair, joined, false);
        if (path.isPresent()) {
          Mate.OtherCross with = path.get().beside().orElseThrow();
          boolean selfs =
              seedlingsSelf(pair) || seedlingsSelf(new Pair(with.seed(), with.pollen()));
          BestWay best = all.computeIfAbsent(pair, any -> best());
          for (Kept second : seconds) {
            int of = 1 + failing + cost.failing(second.share());
            last(best, path.get(), second, spent, of, selfs);
          }
        }
        begun++;
      }
      if (begun >= BEAM) {
        return;
      }
    }
  }

  private static int few(List<Pair> pairs) {
    return Math.min(OF_ONE_KIND, pairs.size());
  }

  /** By genotype, how likely one more cross of it, the best there is, gives a wanted one. */
  private double[] later() {
    double[] later = new double[genes.size()];
    for (int n = 0; n < later.length; n++) {
      later[n] = types.wantedOfSelfed()[n];
      for (int t = 0; t < types.size(); t++) {
        later[n] = Math.max(later[n], PlanGenes.dot(genes.eggs(n), types.wantedByEgg(t)));
        if (genes.isDirected()) {
          later[n] = Math.max(later[n], PlanGenes.dot(genes.grains(n), types.wantedByGrain(t)));
        }
      }
      later[n] *= genes.lives(n);
    }
    return later;
  }

  private record Started(Pair pair, Kept kept, double score) {}

  private void three(List<Pair> pairs, Map<Pair, BestWay> best) {
    List<Started> started = new ArrayList<>();
    Map<Kept, Double> scores = new HashMap<>();
    for (Pair pair : pairs) {
      for (Kept kept : firsts(pair)) {
        started.add(new Started(pair, kept, scores.computeIfAbsent(kept, this::score)));
      }
    }
    started.removeIf(one -> one.score() == Double.POSITIVE_INFINITY);
    started.sort(Comparator.comparingDouble(Started::score));
    Map<Kept, Map<Object, List<Kept>>> seconds = new HashMap<>();
    for (Started one : started.subList(0, Math.min(BEAM, started.size()))) {
      BestWay its = best.computeIfAbsent(one.pair(), any -> best());
      further(its, one, seconds.computeIfAbsent(one.kept(), any -> new HashMap<>()));
    }
  }

  /** By what one more cross of it gives, or two. */
  private double score(Kept kept) {
    double once = PlanGenes.dot(kept.odds(), types.wantedOfSelfed());
    double twice = PlanGenes.dot(kept.odds(), types.laterOfSelfed());
    for (int t = 0; t < types.size(); t++) {
      once = Math.max(once, PlanGenes.dot(kept.eggs(), types.wantedByEgg(t)));
      twice = Math.max(twice, PlanGenes.dot(kept.eggs(), types.laterByEgg(t)));
      if (genes.isDirected()) {
        once = Math.max(once, PlanGenes.dot(kept.grains(), types.wantedByGrain(t)));
        twice = Math.max(twice, PlanGenes.dot(kept.grains(), types.laterByGrain(t)));
      }
    }
    return cost.kept(kept.share(), 1, 3) + Math.min(cost.kept(once, 1, 3), cost.kept(twice, 1, 3));
  }

  private void further(BestWay best, Started from, Map<Object, List<Kept>> seconds) {
    CrossPath first = new CrossPath(from.pair().seed(), from.pair().pollen(), List.of());
    Kept kept = from.kept();
    double spent = cost.kept(kept.share(), 1, 3);
    boolean selfs = seedlingsSelf(from.pair());
    if (selfs) {
      onwards(
          best,
          first,
          kept,
          new Mate.Itself(),
          spent,
          seconds.computeIfAbsent("itself", any -> Kept.of(genes, genes.selfed(kept.odds()))),
          true);
    }
    onwards(
        best,
        first,
        kept,
        new Mate.Sib(),
        cost.kept(kept.share(), 2, 3),
        seconds.computeIfAbsent(
            "sib", any -> Kept.of(genes, genes.seeds(kept.eggs(), kept.grains()))),
        selfs);
    for (int c = 0; c < candidates.size(); c++) {
      int other = types.of(c);
      onwards(
          best,
          first,
          kept,
          new Mate.Plant(c, false),
          spent,
          seconds.computeIfAbsent(
              other, any -> Kept.of(genes, genes.seeds(kept.eggs(), types.grains(other)))),
          selfs || candidates.get(c).selfs());
      if (genes.isDirected()) {
        onwards(
            best,
            first,
            kept,
            new Mate.Plant(c, true),
            spent,
            seconds.computeIfAbsent(
                -1 - other, any -> Kept.of(genes, genes.seeds(types.eggs(other), kept.grains()))),
            selfs || candidates.get(c).selfs());
      }
    }
  }

  private void onwards(
      BestWay best,
      CrossPath first,
      Kept kept,
      Mate mate,
      double spent,
      List<Kept> seconds,
      boolean selfs) {
    CrossPath path = first.then(kept.appearance(), mate);
    for (Kept second : seconds) {
      int of = 1 + cost.failing(kept.share()) + cost.failing(second.share());
      last(best, path, second, spent, of, selfs);
    }
  }
}

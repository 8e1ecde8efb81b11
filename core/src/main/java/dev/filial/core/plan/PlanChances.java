package dev.filial.core.plan;

import dev.filial.core.plan.Chances.Branch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The chances of one way to the wanted seedling, with what is uncertain of its parents kept
 * together: the first cross's parents by their joint odds, a later mate that is one of them being
 * the same plant, other mates by odds of their own. A kept seedling is of each genotype as likely
 * as its parents and what it shows make it.
 */
public final class PlanChances {

  private static final double NOTHING = 1e-12;

  private final List<Double> seasonChances;
  private final Chances root;

  private PlanChances(List<Double> seasonChances, Chances root) {
    this.seasonChances = List.copyOf(seasonChances);
    this.root = root;
  }

  /**
   * Both parents of the first cross.
   *
   * @param seed the number of the seed parent's genotype
   * @param pollen that of the pollen parent's; the same for a selfing
   * @param chance how likely both are so
   */
  public record Both(int seed, int pollen, double chance) {}

  /**
   * Of that way.
   *
   * @param parents what the first cross's parents are together; chances sum to 1
   * @param candidates all candidates, as the way numbers them
   */
  public static PlanChances of(
      PlanGenes genes, CrossPath path, List<Both> parents, List<Candidate> candidates) {
    Making making = new Making(genes, path);
    List<Branch> branches = new ArrayList<>();
    for (Both both : parents) {
      Map<Integer, Integer> known = new LinkedHashMap<>();
      known.put(path.seed(), both.seed());
      known.put(path.pollen(), both.pollen());
      List<Integer> others = new ArrayList<>();
      for (CrossPath.Later later : path.later()) {
        if (later.mate() instanceof Mate.Plant plant
            && !known.containsKey(plant.candidate())
            && !others.contains(plant.candidate())) {
          others.add(plant.candidate());
        }
      }
      making.eachOther(candidates, others, 0, known, both.chance(), both, branches);
    }
    Chances root = Chances.of(branches, making.each(0));
    return new PlanChances(means(root, path.seasons()), root);
  }

  /** Makes the tree, each part once. */
  private static final class Making {
    private final PlanGenes genes;
    private final CrossPath path;
    private final Map<List<Integer>, Branch> made = new HashMap<>();

    Making(PlanGenes genes, CrossPath path) {
      this.genes = genes;
      this.path = path;
    }

    /** How many kept plants of that season one cross of the next takes. */
    int each(int season) {
      return season >= path.later().size()
          ? 0
          : path.later().get(season).mate() instanceof Mate.Sib ? 2 : 1;
    }

    void eachOther(
        List<Candidate> candidates,
        List<Integer> others,
        int from,
        Map<Integer, Integer> known,
        double weight,
        PlanChances.Both both,
        List<Branch> branches) {
      if (from == others.size()) {
        Branch one = season(0, both.seed(), both.pollen(), known);
        branches.add(new Branch(weight, one.living(), one.share(), one.next()));
        return;
      }
      double[] odds = candidates.get(others.get(from)).odds();
      for (int n = 0; n < odds.length; n++) {
        if (odds[n] > NOTHING) {
          Map<Integer, Integer> more = new LinkedHashMap<>(known);
          more.put(others.get(from), n);
          eachOther(candidates, others, from + 1, more, weight * odds[n], both, branches);
        }
      }
    }

    /** A season's seeds of parents of known genotype. */
    private Branch season(int season, int seed, int pollen, Map<Integer, Integer> known) {
      List<Integer> key = new ArrayList<>(List.of(season, seed, pollen));
      for (CrossPath.Later later : path.later().subList(season, path.later().size())) {
        if (later.mate() instanceof Mate.Plant plant) {
          key.add(known.getOrDefault(plant.candidate(), -1));
        }
      }
      Branch found = made.get(key);
      if (found == null) {
        found = make(season, seed, pollen, known);
        made.put(key, found);
      }
      return found;
    }

    private Branch make(int season, int seed, int pollen, Map<Integer, Integer> known) {
      double[] seeds = genes.seeds(seed, pollen);
      double living = genes.living(seeds);
      if (season == path.later().size()) {
        return new Branch(1, living, genes.wanted(seeds), Chances.DONE);
      }
      CrossPath.Later later = path.later().get(season);
      double share = genes.showing(seeds, later.keep());
      if (share < NOTHING) {
        return new Branch(1, living, 0, Chances.DONE);
      }
      double[] kept = genes.kept(seeds, later.keep(), share);
      List<Branch> next = new ArrayList<>();
      for (int n = 0; n < kept.length; n++) {
        if (kept[n] > NOTHING) {
          mated(season + 1, n, kept, later.mate(), known, next);
        }
      }
      return new Branch(1, living, share, Chances.of(next, each(season + 1)));
    }

    private void mated(
        int season,
        int plant,
        double[] kept,
        Mate mate,
        Map<Integer, Integer> known,
        List<Branch> next) {
      if (mate instanceof Mate.Itself) {
        add(next, kept[plant], season(season, plant, plant, known));
      } else if (mate instanceof Mate.Sib) {
        for (int sib = 0; sib < kept.length; sib++) {
          if (kept[sib] > NOTHING) {
            add(next, kept[plant] * kept[sib], season(season, plant, sib, known));
          }
        }
      } else if (mate instanceof Mate.Plant other) {
        int its = Objects.requireNonNull(known.get(other.candidate()));
        add(
            next,
            kept[plant],
            other.asSeed() ? season(season, its, plant, known) : season(season, plant, its, known));
      }
    }

    private static void add(List<Branch> next, double weight, Branch one) {
      next.add(new Branch(weight, one.living(), one.share(), one.next()));
    }
  }

  /** Going on only from what was kept, the mean share of each season's living. */
  private static List<Double> means(Chances root, int seasons) {
    List<Double> means = new ArrayList<>();
    Map<Chances, Double> now = Map.of(root, 1.0);
    for (int season = 0; season < seasons; season++) {
      Map<Chances, Double> after = new LinkedHashMap<>();
      double living = 0;
      double share = 0;
      for (Map.Entry<Chances, Double> one : now.entrySet()) {
        for (Branch branch : one.getKey().branches()) {
          double weight = one.getValue() * branch.weight();
          living += weight * branch.living();
          share += weight * branch.share();
          after.merge(branch.next(), weight * branch.share(), Double::sum);
        }
      }
      means.add(living == 0 ? 0 : share / living);
      double sum = share;
      if (sum > 0) {
        after.replaceAll((next, weight) -> weight / sum);
      }
      now = after;
    }
    return means;
  }

  /**
   * Of each season, how likely a seedling that lives is one to keep, in the last season the wanted
   * one, all before having gone as planned.
   */
  public List<Double> seasonChances() {
    return seasonChances;
  }

  Chances root() {
    return root;
  }
}

package dev.filial.core.plan;

import dev.filial.core.plan.Chances.Branch;
import dev.filial.core.plan.Chances.Seeds;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The chances of one way to the wanted seedling, with what is uncertain of its parents kept
 * together: the parents of each cross of the first season by their joint odds, a plant that comes
 * back being the same plant, other mates by odds of their own. A kept seedling is of each genotype
 * as likely as its parents and what it shows make it.
 */
public final class PlanChances {

  private static final double NOTHING = 1e-12;

  private final List<Double> seasonChances;
  private final Optional<Double> chanceBeside;
  private final List<Optional<Setting>> settings;
  private final Chances root;

  private PlanChances(
      List<Double> seasonChances,
      Optional<Double> chanceBeside,
      List<Optional<Setting>> settings,
      Chances root) {
    this.seasonChances = List.copyOf(seasonChances);
    this.chanceBeside = chanceBeside;
    this.settings = List.copyOf(settings);
    this.root = root;
  }

  /**
   * Both parents of a cross of the first season.
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
    return of(genes, path, parents, List.of(), candidates);
  }

  /**
   * Of that way, the parents of the cross that is made beside the first one by their joint odds
   * too. One of them that is a parent of the first cross is the same plant: the other then is what
   * it is beside such a one.
   *
   * @param parents what the first cross's parents are together; chances sum to 1
   * @param beside the same of the cross beside it; where it is empty, its parents have the odds of
   *     their own
   * @param candidates all candidates, as the way numbers them
   */
  public static PlanChances of(
      PlanGenes genes,
      CrossPath path,
      List<Both> parents,
      List<Both> beside,
      List<Candidate> candidates) {
    Making making = new Making(genes, path, candidates);
    List<Branch> branches = new ArrayList<>();
    for (Both both : parents) {
      Map<Integer, Integer> known = new LinkedHashMap<>();
      known.put(path.seed(), both.seed());
      known.put(path.pollen(), both.pollen());
      making.eachBeside(known, beside, both, branches);
    }
    Chances root = Chances.of(branches, making.each(0));
    return new PlanChances(
        means(root, path.seasons()),
        path.beside().map(any -> meanBeside(root)),
        new KeptAlleles(candidates).along(path),
        root);
  }

  private static double meanBeside(Chances root) {
    double living = 0;
    double share = 0;
    for (Branch branch : root.branches()) {
      living += branch.weight() * branch.beside().living();
      share += branch.weight() * branch.beside().share();
    }
    return living == 0 ? 0 : share / living;
  }

  /** Makes the tree, each part once. */
  private static final class Making {
    private final PlanGenes genes;
    private final CrossPath path;
    private final List<Candidate> candidates;
    private final Map<List<Integer>, Branch> made = new HashMap<>();
    private final Map<List<Branch>, Chances> same = new HashMap<>();
    private final Map<List<Integer>, double[]> seeds = new HashMap<>();

    Making(PlanGenes genes, CrossPath path, List<Candidate> candidates) {
      this.genes = genes;
      this.path = path;
      this.candidates = candidates;
    }

    /** How many kept plants of that season one cross of the next takes. */
    int each(int season) {
      return season >= path.later().size()
          ? 0
          : path.later().get(season).mate() instanceof Mate.Sib ? 2 : 1;
    }

    /** The parents of the cross beside the first one, if there is one, and then the others. */
    void eachBeside(
        Map<Integer, Integer> known, List<Both> beside, Both both, List<Branch> branches) {
      Optional<Mate.OtherCross> other = path.beside();
      if (other.isEmpty()) {
        eachOther(others(known), 0, known, both.chance(), both, branches);
        return;
      }
      int seed = other.get().seed();
      int pollen = other.get().pollen();
      double sum = 0;
      List<Both> fitting = new ArrayList<>();
      for (Both its : beside) {
        if (known.getOrDefault(seed, its.seed()) == its.seed()
            && known.getOrDefault(pollen, its.pollen()) == its.pollen()
            && its.chance() > NOTHING) {
          fitting.add(its);
          sum += its.chance();
        }
      }
      if (sum < NOTHING) {
        List<Integer> others = others(known);
        for (int plant : List.of(pollen, seed)) {
          if (!known.containsKey(plant) && !others.contains(plant)) {
            others.add(0, plant);
          }
        }
        eachOther(others, 0, known, both.chance(), both, branches);
        return;
      }
      for (Both its : fitting) {
        Map<Integer, Integer> more = new LinkedHashMap<>(known);
        more.put(seed, its.seed());
        more.put(pollen, its.pollen());
        eachOther(others(more), 0, more, both.chance() * its.chance() / sum, both, branches);
      }
    }

    /** Later mates of which it is not known yet what they are. */
    private List<Integer> others(Map<Integer, Integer> known) {
      List<Integer> others = new ArrayList<>();
      for (CrossPath.Later later : path.later()) {
        if (later.mate() instanceof Mate.Plant plant
            && !known.containsKey(plant.candidate())
            && !others.contains(plant.candidate())) {
          others.add(plant.candidate());
        }
      }
      return others;
    }

    private void eachOther(
        List<Integer> others,
        int from,
        Map<Integer, Integer> known,
        double weight,
        PlanChances.Both both,
        List<Branch> branches) {
      if (from == others.size()) {
        branches.add(season(0, both.seed(), both.pollen(), known).weighing(weight));
        return;
      }
      double[] odds = candidates.get(others.get(from)).odds();
      for (int n = 0; n < odds.length; n++) {
        if (odds[n] > NOTHING) {
          Map<Integer, Integer> more = new LinkedHashMap<>(known);
          more.put(others.get(from), n);
          eachOther(others, from + 1, more, weight * odds[n], both, branches);
        }
      }
    }

    /** A season's seeds of parents of known genotype. */
    private Branch season(int season, int seed, int pollen, Map<Integer, Integer> known) {
      List<Integer> key = new ArrayList<>(List.of(season, seed, pollen));
      for (CrossPath.Later later : path.later().subList(season, path.later().size())) {
        if (later.mate() instanceof Mate.Plant plant) {
          key.add(known.getOrDefault(plant.candidate(), -1));
        } else if (later.mate() instanceof Mate.OtherCross other) {
          key.add(known.getOrDefault(other.seed(), -1));
          key.add(known.getOrDefault(other.pollen(), -1));
        }
      }
      Branch found = made.get(key);
      if (found == null) {
        found = make(season, seed, pollen, known);
        made.put(key, found);
      }
      return found;
    }

    private double[] seeds(int seed, int pollen) {
      return seeds.computeIfAbsent(List.of(seed, pollen), any -> genes.seeds(seed, pollen));
    }

    private Branch make(int season, int seed, int pollen, Map<Integer, Integer> known) {
      double[] seeds = seeds(seed, pollen);
      double living = genes.living(seeds);
      if (season == path.later().size()) {
        return new Branch(1, new Seeds(living, genes.wanted(seeds)), Seeds.NONE, Chances.DONE);
      }
      CrossPath.Later later = path.later().get(season);
      double share = genes.showing(seeds, later.keep());
      Seeds main = new Seeds(living, share < NOTHING ? 0 : share);
      if (later.mate() instanceof Mate.OtherCross other) {
        return joined(season, seeds, main, later.keep(), other, known);
      }
      if (share < NOTHING) {
        return new Branch(1, main, Seeds.NONE, Chances.DONE);
      }
      double[] kept = genes.kept(seeds, later.keep(), share);
      List<Branch> next = new ArrayList<>();
      for (int n = 0; n < kept.length; n++) {
        if (kept[n] > NOTHING) {
          mated(season + 1, n, kept, later.mate(), known, next);
        }
      }
      return new Branch(1, main, Seeds.NONE, shared(next, each(season + 1)));
    }

    /** A seedling kept of each of two crosses. */
    private Branch joined(
        int season,
        double[] seeds,
        Seeds main,
        int keep,
        Mate.OtherCross other,
        Map<Integer, Integer> known) {
      double[] its =
          seeds(
              Objects.requireNonNull(known.get(other.seed())),
              Objects.requireNonNull(known.get(other.pollen())));
      double share = genes.showing(its, other.keep());
      Seeds beside = new Seeds(genes.living(its), share < NOTHING ? 0 : share);
      if (main.share() == 0 || beside.share() == 0) {
        return new Branch(1, main, beside, Chances.DONE);
      }
      double[] one = genes.kept(seeds, keep, main.share());
      double[] two = genes.kept(its, other.keep(), beside.share());
      List<Branch> next = new ArrayList<>();
      for (int n = 0; n < one.length; n++) {
        for (int m = 0; one[n] > NOTHING && m < two.length; m++) {
          if (two[m] > NOTHING) {
            Branch after =
                other.asSeed() ? season(season + 1, m, n, known) : season(season + 1, n, m, known);
            next.add(after.weighing(one[n] * two[m]));
          }
        }
      }
      return new Branch(1, main, beside, shared(next, each(season + 1)));
    }

    /** What goes on alike is one thing. */
    private Chances shared(List<Branch> next, int each) {
      List<Branch> together = Chances.together(next);
      return same.computeIfAbsent(together, any -> Chances.of(together, each));
    }

    private void mated(
        int season,
        int plant,
        double[] kept,
        Mate mate,
        Map<Integer, Integer> known,
        List<Branch> next) {
      if (mate instanceof Mate.Itself) {
        next.add(season(season, plant, plant, known).weighing(kept[plant]));
      } else if (mate instanceof Mate.Sib) {
        for (int sib = 0; sib < kept.length; sib++) {
          if (kept[sib] > NOTHING) {
            next.add(season(season, plant, sib, known).weighing(kept[plant] * kept[sib]));
          }
        }
      } else if (mate instanceof Mate.Plant other) {
        int its = Objects.requireNonNull(known.get(other.candidate()));
        Branch after =
            other.asSeed() ? season(season, its, plant, known) : season(season, plant, its, known);
        next.add(after.weighing(kept[plant]));
      }
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
          living += weight * branch.main().living();
          share += weight * branch.main().share();
          after.merge(branch.next(), weight * branch.share(), Double::sum);
        }
      }
      means.add(living == 0 ? 0 : share / living);
      double sum = after.values().stream().mapToDouble(Double::doubleValue).sum();
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

  /**
   * How likely a seedling that lives of the cross made beside the first one is one to keep; empty
   * if there is none.
   */
  public Optional<Double> chanceBeside() {
    return chanceBeside;
  }

  /**
   * Of each season after the first, how likely a mating of what was kept sets seed, by the S
   * alleles of the candidates it comes of; empty where these are not known, and all are taken to.
   */
  public List<Optional<Setting>> settings() {
    return settings;
  }

  Chances root() {
    return root;
  }
}

package dev.filial.core.plan;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.GenomeStates.Form;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Outcome;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The genes of a plan as plain tables: all genotypes of a diploid, the gametes each makes, what two
 * gametes give, what each genotype shows, and how likely it is as wanted.
 *
 * <p>What a plant of uncertain genotype hands on is linear in its odds, and so is what comes of two
 * of them: an egg table times odds, and the outer product of two such.
 */
public final class PlanGenes {

  /** More genotypes make tables that take seconds. */
  private static final int MOST_GENOTYPES = 1500;

  private static final Form PLANT = Form.of(2);
  private static final Form GAMETE = Form.of(1);

  private final List<Genotype> genotypes = new ArrayList<>();
  private final Map<Genotype, Integer> numbers = new LinkedHashMap<>();
  private final double[][] eggs;
  private final double[][] grains;
  private final int[][] joined;
  private final double[] lives;
  private final double[] wanted;
  private final List<List<String>> appearances = new ArrayList<>();
  private final double[][] shows;
  private final boolean directed;
  private final double[] @Nullable [] selfed;

  private PlanGenes(
      GenomeStates states, List<TraitModel> looked, List<TraitModel> losses, Wish wish) {
    Genome genome = states.genome();
    int groups = genome.groups().size();
    int[] plants = new int[groups];
    int[] eggCounts = new int[groups];
    int[] grainCounts = new int[groups];
    boolean cytoplasm = false;
    long all = 1;
    for (int g = 0; g < groups; g++) {
      plants[g] = states.count(g, PLANT);
      eggCounts[g] = states.gametes(g, GAMETE, false);
      grainCounts[g] = states.gametes(g, GAMETE, true);
      cytoplasm |= states.isCytoplasm(g);
      all *= plants[g];
      if (all > MOST_GENOTYPES) {
        throw new IllegalArgumentException(
            "the genes "
                + String.join(", ", genome.loci().stream().map(Locus::name).toList())
                + " make more than "
                + MOST_GENOTYPES
                + " genotypes, which is past what plans are made for; ask for fewer traits at once");
      }
    }
    directed = cytoplasm || !genome.distortions().isEmpty();
    int size = (int) all;
    for (int n = 0; n < size; n++) {
      Genotype genotype = states.genotype(PLANT, digits(n, plants));
      genotypes.add(genotype);
      numbers.put(genotype, n);
    }
    eggs = handedOn(states, size, plants, eggCounts, false);
    grains = handedOn(states, size, plants, grainCounts, true);
    joined = new int[product(eggCounts)][product(grainCounts)];
    for (int i = 0; i < joined.length; i++) {
      int[] egg = digits(i, eggCounts);
      for (int j = 0; j < joined[i].length; j++) {
        int[] grain = digits(j, grainCounts);
        int number = 0;
        for (int g = 0; g < groups; g++) {
          number = number * plants[g] + states.joined(g, GAMETE, egg[g], GAMETE, grain[g]);
        }
        joined[i][j] = number;
      }
    }
    lives = new double[size];
    wanted = new double[size];
    List<TraitModel> deadly = new ArrayList<>(looked);
    deadly.addAll(losses);
    for (int n = 0; n < size; n++) {
      lives[n] = 1;
      for (TraitModel model : deadly) {
        lives[n] *= model.outcomeOf(genotypes.get(n)).lives().toDouble();
      }
      wanted[n] = lives[n] == 0 ? 0 : lives[n] * wish.chanceOf(genotypes.get(n)).toDouble();
    }
    shows = shown(looked);
    selfed = new double[size][];
  }

  /**
   * Of these genes.
   *
   * @param looked the traits that seedlings can be told apart by
   * @param losses models nobody looks at by which seedlings die
   * @param wish the seedling that is wanted
   * @throws IllegalArgumentException if a table leaves a genotype out, or there are too many
   */
  public static PlanGenes of(
      GenomeStates states, List<TraitModel> looked, List<TraitModel> losses, Wish wish) {
    looked.forEach(model -> model.requireComplete(2));
    losses.forEach(model -> model.requireComplete(2));
    return new PlanGenes(states, looked, losses, wish);
  }

  private double[][] shown(List<TraitModel> looked) {
    Map<List<String>, double[]> found = new LinkedHashMap<>();
    for (int n = 0; n < lives.length; n++) {
      Map<List<String>, Double> its = new LinkedHashMap<>(Map.of(List.of(), lives[n]));
      for (TraitModel model : looked) {
        Outcome outcome = model.outcomeOf(genotypes.get(n));
        Map<List<String>, Double> next = new LinkedHashMap<>();
        its.forEach(
            (soFar, chance) ->
                outcome
                    .shows()
                    .forEach(
                        (state, share) -> {
                          List<String> more = new ArrayList<>(soFar);
                          more.add(state);
                          next.put(more, chance * share.toDouble());
                        }));
        its = next;
      }
      for (Map.Entry<List<String>, Double> one : its.entrySet()) {
        if (one.getValue() > 0) {
          found.computeIfAbsent(one.getKey(), any -> new double[lives.length])[n] = one.getValue();
        }
      }
    }
    appearances.addAll(found.keySet());
    return found.values().toArray(double[][]::new);
  }

  private static double[][] handedOn(
      GenomeStates states, int size, int[] plants, int[] counts, boolean pollen) {
    double[][][] tables = new double[plants.length][][];
    for (int g = 0; g < plants.length; g++) {
      tables[g] = states.gametes(g, PLANT, Meiosis.REDUCED, pollen);
    }
    double[][] handed = new double[size][product(counts)];
    for (int n = 0; n < size; n++) {
      int[] plant = digits(n, plants);
      for (int i = 0; i < handed[n].length; i++) {
        int[] gamete = digits(i, counts);
        double chance = 1;
        for (int g = 0; g < plants.length && chance > 0; g++) {
          chance *= tables[g][plant[g]][gamete[g]];
        }
        handed[n][i] = chance;
      }
    }
    return handed;
  }

  private static int product(int[] counts) {
    int product = 1;
    for (int count : counts) {
      product *= count;
    }
    return product;
  }

  private static int[] digits(int number, int[] counts) {
    int[] digits = new int[counts.length];
    int rest = number;
    for (int g = counts.length - 1; g >= 0; g--) {
      digits[g] = rest % counts[g];
      rest /= counts[g];
    }
    return digits;
  }

  /** All genotypes of a diploid, by number. */
  public List<Genotype> genotypes() {
    return List.copyOf(genotypes);
  }

  /** The number of a genotype; empty if it is none of these. */
  public Optional<Integer> number(Genotype genotype) {
    return Optional.ofNullable(numbers.get(genotype));
  }

  /**
   * The odds of whole genotypes where those at each linkage group are known by themselves and taken
   * as independent.
   *
   * @param groups by linkage group, then by genotype there
   */
  public double[] together(double[][] groups) {
    int[] counts = new int[groups.length];
    for (int g = 0; g < groups.length; g++) {
      counts[g] = groups[g].length;
    }
    double[] odds = new double[genotypes.size()];
    for (int n = 0; n < odds.length; n++) {
      int[] digits = digits(n, counts);
      odds[n] = 1;
      for (int g = 0; g < groups.length; g++) {
        odds[n] *= groups[g][digits[g]];
      }
    }
    return odds;
  }

  /** What can be told apart by looking: the state of each trait looked at. */
  public List<List<String>> appearances() {
    return List.copyOf(appearances);
  }

  /** Whether it matters which parent bears the seed. */
  public boolean isDirected() {
    return directed;
  }

  /** How likely a plant of that genotype, if it lives, is as wanted. */
  public double chanceOf(int genotype) {
    return lives[genotype] == 0 ? 0 : wanted[genotype] / lives[genotype];
  }

  int size() {
    return lives.length;
  }

  double[] eggs(double[] odds) {
    return times(odds, eggs);
  }

  double[] grains(double[] odds) {
    return times(odds, grains);
  }

  private static double[] times(double[] odds, double[][] rows) {
    double[] sum = new double[rows[0].length];
    for (int n = 0; n < odds.length; n++) {
      if (odds[n] > 0) {
        for (int i = 0; i < sum.length; i++) {
          sum[i] += odds[n] * rows[n][i];
        }
      }
    }
    return sum;
  }

  /** The genotypes of the seeds, before any die. */
  double[] seeds(double[] egg, double[] grain) {
    double[] seeds = new double[lives.length];
    for (int i = 0; i < egg.length; i++) {
      if (egg[i] > 0) {
        for (int j = 0; j < grain.length; j++) {
          seeds[joined[i][j]] += egg[i] * grain[j];
        }
      }
    }
    return seeds;
  }

  /** The seeds of two plants of known genotype. */
  double[] seeds(int seed, int pollen) {
    return seed == pollen ? selfed(seed) : seeds(eggs[seed], grains[pollen]);
  }

  private double[] selfed(int plant) {
    double[] found = selfed[plant];
    if (found == null) {
      found = seeds(eggs[plant], grains[plant]);
      selfed[plant] = found;
    }
    return found;
  }

  /** The seeds of a plant of uncertain genotype that is selfed. */
  double[] selfed(double[] odds) {
    double[] seeds = new double[lives.length];
    for (int n = 0; n < odds.length; n++) {
      if (odds[n] > 0) {
        double[] its = selfed(n);
        for (int k = 0; k < seeds.length; k++) {
          seeds[k] += odds[n] * its[k];
        }
      }
    }
    return seeds;
  }

  /** The share of the seeds that live. */
  double living(double[] seeds) {
    return dot(seeds, lives);
  }

  /** The share of the seeds that live and are as wanted. */
  double wanted(double[] seeds) {
    return dot(seeds, wanted);
  }

  /** The share of the seeds that live and look so. */
  double showing(double[] seeds, int appearance) {
    return dot(seeds, shows[appearance]);
  }

  /** What a seedling that lives and looks so is, if {@code share} of the seeds do; sums to 1. */
  double[] kept(double[] seeds, int appearance, double share) {
    double[] kept = new double[seeds.length];
    for (int n = 0; n < kept.length; n++) {
      kept[n] = seeds[n] * shows[appearance][n] / share;
    }
    return kept;
  }

  /** The share of wanted seeds that eggs find in that pollen: by egg. */
  double[] wantedByEgg(double[] grain, double[] of) {
    double[] by = new double[joined.length];
    for (int i = 0; i < by.length; i++) {
      for (int j = 0; j < grain.length; j++) {
        by[i] += of[joined[i][j]] * grain[j];
      }
    }
    return by;
  }

  /** The same of pollen on those eggs: by grain. */
  double[] wantedByGrain(double[] egg, double[] of) {
    double[] by = new double[joined[0].length];
    for (int i = 0; i < joined.length; i++) {
      for (int j = 0; j < by.length; j++) {
        by[j] += of[joined[i][j]] * egg[i];
      }
    }
    return by;
  }

  /** By egg, the most that it gives with any of those grains. */
  double[] bestByEgg(double[] of, boolean[] grains) {
    double[] best = new double[joined.length];
    for (int i = 0; i < joined.length; i++) {
      for (int j = 0; j < grains.length; j++) {
        best[i] = grains[j] ? Math.max(best[i], of[joined[i][j]]) : best[i];
      }
    }
    return best;
  }

  /** The same by grain, with any of those eggs. */
  double[] bestByGrain(double[] of, boolean[] eggsThere) {
    double[] best = new double[joined[0].length];
    for (int i = 0; i < joined.length; i++) {
      for (int j = 0; j < best.length; j++) {
        best[j] = eggsThere[i] ? Math.max(best[j], of[joined[i][j]]) : best[j];
      }
    }
    return best;
  }

  /** The eggs of a plant of that genotype. */
  double[] eggs(int genotype) {
    return eggs[genotype];
  }

  /** Its pollen. */
  double[] grains(int genotype) {
    return grains[genotype];
  }

  double[] wantedSeeds() {
    return wanted;
  }

  /** By genotype, the share of its selfed seeds that live and are as wanted. */
  double[] wantedOfSelfed() {
    double[] of = new double[lives.length];
    for (int n = 0; n < of.length; n++) {
      of[n] = lives[n] == 0 ? 0 : wanted(selfed(n));
    }
    return of;
  }

  double lives(int genotype) {
    return lives[genotype];
  }

  static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}

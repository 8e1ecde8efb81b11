package dev.filial.core.heredity;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * What each pair of some genotypes throws at one linkage group: the sets of rows that tables leave
 * open, by number, and their chances as doubles.
 *
 * <p>The gametes of each genotype are worked out once, and what an egg and a grain leave open once
 * for each two that are met. Cost: for each pair of genotypes the number of their gametes
 * multiplied.
 */
final class PairOutcomes {

  /** Past so many pairs of different genotypes memory ends. */
  private static final int MOST_PAIRS = 1 << 22;

  private final Genome genome;
  private final Tables tables;
  private final int group;
  private final ToIntFunction<BigInteger> numbering;
  private final Map<Long, Integer> numbers = new HashMap<>();
  private final List<Long> gametes = new ArrayList<>();
  private final List<int[]> setsOfEggs = new ArrayList<>();
  private final int[][] open;
  private final double[][] chances;
  private double[] sums = new double[16];

  /** Gametes by number, and their chances. */
  @SuppressWarnings("ArrayRecordComponent") // never compared, and never leaves this class
  private record Thrown(int[] gametes, double[] chances) {}

  /**
   * Of these genotypes.
   *
   * @param numbering the number of a set of rows
   * @throws IllegalArgumentException if there are too many
   */
  PairOutcomes(
      Genome genome,
      Tables tables,
      int group,
      List<Genotype> genotypes,
      ToIntFunction<BigInteger> numbering) {
    this.genome = genome;
    this.tables = tables;
    this.group = group;
    this.numbering = numbering;
    int number = genotypes.size();
    if ((long) number * number > MOST_PAIRS) {
      throw new IllegalArgumentException(
          "the plants have "
              + number
              + " different genotypes at one linkage group, too many to score all pairs; ask for"
              + " fewer linked genes or fewer plants at once");
    }
    this.open = new int[number * number][];
    this.chances = new double[number * number][];
    List<Thrown> eggs = new ArrayList<>();
    List<Masses<Long>> grains = new ArrayList<>();
    List<Thrown> anyStyle = new ArrayList<>();
    for (Genotype genotype : genotypes) {
      eggs.add(thrown(Gametes.of(genome, group, Parent.of(genotype), false)));
      grains.add(Gametes.of(genome, group, Parent.of(genotype), true));
      anyStyle.add(thrown(grains.get(grains.size() - 1)));
    }
    boolean styled = genome.hasSLocusIn(group);
    for (int seed = 0; seed < number; seed++) {
      for (int pollen = 0; pollen < number; pollen++) {
        pair(
            seed * number + pollen,
            eggs.get(seed),
            styled
                ? styled(genotypes.get(seed), genotypes.get(pollen), grains.get(pollen))
                : anyStyle.get(pollen));
      }
    }
  }

  private Thrown styled(Genotype seed, Genotype pollen, Masses<Long> grains) {
    return Compatibility.of(seed, pollen).effective().isZero()
        ? thrown(new Masses<>())
        : thrown(Gametes.styled(genome, group, grains, seed.homologs(group), seed.ploidy()));
  }

  private Thrown thrown(Masses<Long> masses) {
    int[] its = new int[masses.size()];
    double[] chance = new double[its.length];
    int i = 0;
    for (Long gamete : masses.masses().keySet()) {
      Integer known = numbers.get(gamete);
      if (known == null) {
        known = gametes.size();
        numbers.put(gamete, known);
        gametes.add(gamete);
        setsOfEggs.add(new int[0]);
      }
      its[i] = known;
      chance[i++] = masses.share(gamete).toDouble();
    }
    return new Thrown(its, chance);
  }

  private void pair(int pair, Thrown eggs, Thrown grains) {
    int[] met = new int[eggs.gametes().length * grains.gametes().length];
    int different = 0;
    for (int e = 0; e < eggs.gametes().length; e++) {
      int[] sets = setsOf(eggs.gametes()[e]);
      for (int g = 0; g < grains.gametes().length; g++) {
        int set = sets[grains.gametes()[g]];
        if (set < 0) {
          set = set(eggs.gametes()[e], grains.gametes()[g]);
          sets[grains.gametes()[g]] = set;
        }
        if (set >= sums.length) {
          sums = Arrays.copyOf(sums, 2 * set);
        }
        if (sums[set] == 0) {
          met[different++] = set;
        }
        sums[set] += eggs.chances()[e] * grains.chances()[g];
      }
    }
    open[pair] = Arrays.copyOf(met, different);
    chances[pair] = new double[different];
    for (int i = 0; i < different; i++) {
      chances[pair][i] = sums[met[i]];
      sums[met[i]] = 0;
    }
  }

  /** By the number of the grain; −1 where the two were not met before. */
  private int[] setsOf(int egg) {
    int[] sets = setsOfEggs.get(egg);
    if (sets.length < gametes.size()) {
      int known = sets.length;
      sets = Arrays.copyOf(sets, gametes.size());
      Arrays.fill(sets, known, sets.length, -1);
      setsOfEggs.set(egg, sets);
    }
    return sets;
  }

  private int set(int egg, int grain) {
    return numbering.applyAsInt(
        tables.open(group, Homologs.join(gametes.get(egg), gametes.get(grain))));
  }

  /** By pair (seed parent times their number, plus pollen parent) the numbers of the sets. */
  int[][] open() {
    return open;
  }

  /** By pair the chances of these sets. */
  double[][] chances() {
    return chances;
  }
}

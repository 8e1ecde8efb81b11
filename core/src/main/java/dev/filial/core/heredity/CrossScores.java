package dev.filial.core.heredity;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The chance of a wished seedling from any pair out of many plants, as a double: for looking
 * through very many crosses. A {@link Cross} gives the exact one.
 *
 * <p>What each pair of different genotypes throws at a linkage group is worked out once; of a pair
 * of plants there is then, for each trait that stands alone on its group, one number to look up and
 * multiply, and for tables over several groups a short sum over the kinds they tell apart.
 */
public final class CrossScores {

  /** Tables that are read together. */
  private interface Lot {
    double chance(int seed, int pollen);
  }

  /** Tables of one linkage group: a number for each pair of different genotypes there. */
  @SuppressWarnings("ArrayRecordComponent") // never compared, and never leaves this class
  private record LookedUp(int[] kinds, int different, double[] chances) implements Lot {
    @Override
    public double chance(int seed, int pollen) {
      return chances[kinds[seed] * different + kinds[pollen]];
    }
  }

  /**
   * Tables of several groups: for each group and pair of genotypes the numbers of the sets of rows
   * that are left open, and their chances.
   *
   * @param kinds by group, which of the different genotypes there each plant has
   * @param different by group, how many there are
   * @param open by group and pair, the numbers of the sets
   * @param chances by group and pair, their chances
   * @param meet the number of the intersection of two sets; set 0 has all rows
   * @param wanted by set, how likely a plant of it lives and is as wished
   * @param living by set, how likely it lives
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, and never leaves this class
  private record Summed(
      int[][] kinds,
      int[] different,
      int[][][] open,
      double[][][] chances,
      int[][] meet,
      double[] wanted,
      double[] living)
      implements Lot {

    @Override
    public double chance(int seed, int pollen) {
      double[] now = new double[wanted.length];
      now[0] = 1;
      for (int g = 0; g < kinds.length; g++) {
        int pair = kinds[g][seed] * different[g] + kinds[g][pollen];
        int[] sets = open[g][pair];
        double[] mass = chances[g][pair];
        double[] next = new double[wanted.length];
        for (int before = 0; before < now.length; before++) {
          if (now[before] != 0) {
            for (int i = 0; i < sets.length; i++) {
              next[meet[before][sets[i]]] += now[before] * mass[i];
            }
          }
        }
        now = next;
      }
      double fits = 0;
      double lives = 0;
      for (int set = 0; set < now.length; set++) {
        fits += now[set] * wanted[set];
        lives += now[set] * living[set];
      }
      return lives == 0 ? 0 : fits / lives;
    }

    /** Of one group all pairs can be gone through beforehand. */
    LookedUp lookedUp() {
      int number = different[0];
      int[] themselves = new int[number];
      for (int i = 0; i < number; i++) {
        themselves[i] = i;
      }
      Summed ofKinds =
          new Summed(new int[][] {themselves}, different, open, chances, meet, wanted, living);
      double[] all = new double[number * number];
      for (int pair = 0; pair < all.length; pair++) {
        all[pair] = ofKinds.chance(pair / number, pair % number);
      }
      return new LookedUp(kinds[0], number, all);
    }
  }

  /** Past so many sets of rows the table of their intersections takes too much memory. */
  private static final int MOST_SETS = 4096;

  private final int plants;
  private final List<Lot> lots;

  private CrossScores(int plants, List<Lot> lots) {
    this.plants = plants;
    this.lots = lots;
  }

  /**
   * For these plants, all of one genome and forming reduced gametes.
   *
   * @throws IllegalArgumentException if there are none, they are no diploids of one genome, the
   *     wish is to breed true, or a table does not cover diploids
   */
  public static CrossScores of(Wish wish, List<Genotype> plants) {
    return of(wish, plants, List.of());
  }

  /**
   * The same with seedlings dying as these tables say, though nobody asks what else they say.
   *
   * @throws IllegalArgumentException as {@link #of(Wish, List)}
   */
  public static CrossScores of(Wish wish, List<Genotype> plants, List<TraitModel> losses) {
    if (plants.isEmpty()) {
      throw new IllegalArgumentException("there are no plants to cross; name some");
    }
    if (!wish.breedingTrue().isEmpty()) {
      throw new IllegalArgumentException(
          "whether seedlings breed true is not scored in bulk; ask a cross at a time");
    }
    Set<TraitModel> models = new LinkedHashSet<>(wish.models());
    models.addAll(losses);
    models.forEach(model -> model.requireComplete(2));
    Genome genome = plants.get(0).genome();
    for (Genotype plant : plants) {
      if (plant.genome() != genome || plant.ploidy() != 2) {
        throw new IllegalArgumentException(
            plant.text() + " is no diploid of the same genes as the others");
      }
    }
    List<Lot> lots = new ArrayList<>();
    genome.selfIncompatibility().ifPresent(refusing -> lots.add(setting(genome, refusing, plants)));
    for (Tables tables : Tables.parted(genome, models)) {
      lots.add(lot(genome, tables, wish, plants));
    }
    return new CrossScores(plants.size(), List.copyOf(lots));
  }

  /** Which of the different genotypes at a linkage group each plant has, and a plant of each. */
  @SuppressWarnings("ArrayRecordComponent") // never compared, and never leaves this class
  private record Kinds(int[] ofPlants, List<Genotype> examples) {

    static Kinds at(int group, List<Genotype> plants) {
      Map<Long, Integer> numbers = new HashMap<>();
      List<Genotype> examples = new ArrayList<>();
      int[] kinds = new int[plants.size()];
      for (int p = 0; p < kinds.length; p++) {
        long homologs = plants.get(p).homologs(group);
        Integer known = numbers.get(homologs);
        if (known == null) {
          known = examples.size();
          numbers.put(homologs, known);
          examples.add(plants.get(p));
        }
        kinds[p] = known;
      }
      return new Kinds(kinds, examples);
    }
  }

  /** 1 where seed can be set and 0 where no pollen comes through at all. */
  private static Lot setting(Genome genome, SelfIncompatibility refusing, List<Genotype> plants) {
    Kinds kinds = Kinds.at(genome.place(refusing.locus()).group(), plants);
    int number = kinds.examples().size();
    double[] chances = new double[number * number];
    for (int pair = 0; pair < chances.length; pair++) {
      chances[pair] =
          setsSeed(kinds.examples().get(pair / number), kinds.examples().get(pair % number))
              ? 1
              : 0;
    }
    return new LookedUp(kinds.ofPlants(), number, chances);
  }

  private static boolean setsSeed(Genotype seed, Genotype pollen) {
    return !Compatibility.of(seed, pollen).effective().isZero();
  }

  private static Lot lot(Genome genome, Tables tables, Wish wish, List<Genotype> plants) {
    int groups = tables.groups().size();
    int[][] kinds = new int[groups][];
    int[] different = new int[groups];
    List<List<Genotype>> examples = new ArrayList<>();
    for (int g = 0; g < groups; g++) {
      Kinds here = Kinds.at(tables.groups().get(g), plants);
      kinds[g] = here.ofPlants();
      different[g] = here.examples().size();
      examples.add(here.examples());
    }
    Map<BigInteger, Integer> sets = new LinkedHashMap<>();
    sets.put(tables.open(), 0);
    int[][][] open = new int[groups][][];
    double[][][] chances = new double[groups][][];
    for (int g = 0; g < groups; g++) {
      int group = tables.groups().get(g);
      PairOutcomes pairs =
          new PairOutcomes(genome, tables, group, examples.get(g), rows -> number(sets, rows));
      open[g] = pairs.open();
      chances[g] = pairs.chances();
    }
    int[][] meet = closed(sets);
    double[] wanted = new double[sets.size()];
    double[] living = new double[sets.size()];
    sets.forEach(
        (rows, number) -> {
          if (covers(tables, rows)) {
            living[number] = Seedlings.lives(tables, rows).toDouble();
            wanted[number] = living[number] * Seedlings.fits(tables, rows, wish).toDouble();
          }
        });
    Summed summed = new Summed(kinds, different, open, chances, meet, wanted, living);
    return groups == 1 ? summed.lookedUp() : summed;
  }

  private static boolean covers(Tables tables, BigInteger rows) {
    for (int m = 0; m < tables.models().size(); m++) {
      if (!tables.covers(m, rows)) {
        return false; // an intersection that no plant has
      }
    }
    return true;
  }

  private static int number(Map<BigInteger, Integer> sets, BigInteger rows) {
    Integer known = sets.get(rows);
    if (known == null) {
      known = sets.size();
      if (known >= MOST_SETS) {
        throw new IllegalArgumentException(
            "the tables tell more than "
                + MOST_SETS
                + " kinds apart; ask for fewer genes or traits at once");
      }
      sets.put(rows, known);
    }
    return known;
  }

  /** Numbers every intersection, until no new one turns up. */
  private static int[][] closed(Map<BigInteger, Integer> sets) {
    List<BigInteger> all = new ArrayList<>(sets.keySet());
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        BigInteger both = all.get(i).and(all.get(j));
        if (!sets.containsKey(both)) {
          number(sets, both);
          all.add(both);
        }
      }
    }
    int[][] meet = new int[all.size()][all.size()];
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < all.size(); j++) {
        meet[i][j] = sets.getOrDefault(all.get(i).and(all.get(j)), 0);
      }
    }
    return meet;
  }

  /**
   * The chance that a seedling of two of the plants is as wished, 0 to 1; 0 also where none lives,
   * or where no seed is set because all pollen is refused and none leaks.
   *
   * @param seed the place of the seed parent in the list of plants
   * @param pollen the place of the pollen parent
   * @throws IndexOutOfBoundsException if there is no such plant
   */
  public double chance(int seed, int pollen) {
    double chance = 1;
    for (Lot lot : lots) {
      chance *= lot.chance(seed, pollen);
    }
    return chance;
  }

  /** How many plants there are. */
  public int plants() {
    return plants;
  }
}

package dev.filial.core.benchmark;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Interaction;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.FounderPriors;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The register of one grower's bench: twenty generations of six lines each, and what some of the
 * plants showed of a trait of two loci (9:3:4).
 *
 * <p>A line begins with the F1 of two acquired plants of two species. From each generation of it
 * two seedlings are kept, and the next one is, by a throw of dice, the selfings of both (two of
 * nine), the cross of the two sibs (four) or the backcross of both to one of the plants that the
 * line began with (three). Every fourth generation one line is crossed with a plant kept of another.
 * So a generation has at most 18 parents, the acquired plants among them, and no other plants have
 * offspring. Genotypes are dropped through the pedigree, so that what was seen is possible.
 */
final class GrowersBench {

  static final int GENERATIONS = 20;
  static final int LINES = 6;

  private static final int SPECIES = 8;
  private static final int INTERCROSSED_EVERY = 4;
  private static final long SEED = 20_261_201;

  private static final Locus FIRST = Locus.of("colour", "C", "c");
  private static final Locus SECOND = Locus.of("bloom", "B", "b");
  private static final TraitModel TRAIT =
      TraitModel.interaction(
          "leaf",
          Interaction.RECESSIVE_EPISTASIS,
          FIRST,
          SECOND,
          List.of("frosted", "red", "green"));

  private final Random random = new Random(SEED);
  private final List<String> codes = new ArrayList<>();
  private final List<@Nullable String> seed = new ArrayList<>();
  private final List<@Nullable String> pollen = new ArrayList<>();
  private final List<@Nullable String> taxa = new ArrayList<>();

  /** Two homologs of each plant; of each, whether it has the dominant allele of either locus. */
  private final List<int[]> truth = new ArrayList<>();

  private final double recombination;

  private GrowersBench(double recombination) {
    this.recombination = recombination;
  }

  /**
   * The odds over such a register.
   *
   * @param plants how many there are, but for what generations and lines leave over
   * @param observations how many of them were looked at
   * @param linked whether the loci recombine in one of ten gametes, and not in half
   * @param known whether the frequencies in each species are stated; else they are unknowns
   */
  static PedigreeOdds of(int plants, int observations, boolean linked, boolean known) {
    GrowersBench bench = new GrowersBench(linked ? 0.1 : 0.5);
    bench.grow(plants);
    Genome genome =
        linked
            ? Genome.of(LinkageGroup.of(FIRST, Fraction.of(1, 10), SECOND))
            : Genome.unlinked(FIRST, SECOND);
    FounderPriors priors = FounderPriors.none();
    for (int i = 0; known && i < SPECIES; i++) {
      priors =
          priors
              .withFrequencies(species(i), "colour", Map.of("C", Fraction.HALF, "c", Fraction.HALF))
              .withFrequencies(species(i), "bloom", Map.of("B", Fraction.HALF, "b", Fraction.HALF));
    }
    return PedigreeOdds.of(bench.pedigree(), genome, List.of(TRAIT))
        .withPriors(priors)
        .withEvidence(bench.seen(observations));
  }

  /** The code of a plant of the last generation of the first line, which others were crossed to. */
  static String plant(int plants) {
    int acquired = 2 * LINES;
    int family = (plants - acquired) / (GENERATIONS * LINES);
    return "S" + (acquired + family * LINES * (GENERATIONS - 1));
  }

  private static String species(int number) {
    return "Echeveria sp. " + (number + 1);
  }

  private Pedigree pedigree() {
    return Pedigree.ofParents(
        codes.toArray(new String[0]),
        seed.toArray(new @Nullable String[0]),
        pollen.toArray(new @Nullable String[0]),
        taxa.toArray(new @Nullable String[0]));
  }

  private void grow(int plants) {
    int[][] acquired = new int[LINES][2];
    int[][] kept = new int[LINES][];
    for (int line = 0; line < LINES; line++) {
      for (int i = 0; i < 2; i++) {
        acquired[line][i] = acquire((2 * line + i) % SPECIES);
      }
    }
    int family = (plants - codes.size()) / (GENERATIONS * LINES);
    int left = plants - codes.size() - family * GENERATIONS * LINES;
    for (int generation = 0; generation < GENERATIONS; generation++) {
      int[][] next = new int[LINES][];
      for (int line = 0; line < LINES; line++) {
        boolean more = generation == GENERATIONS - 1 && line == LINES - 1;
        int size = more ? family + left : family;
        next[line] = raise(generation, line, size, acquired[line], kept);
      }
      for (int line = 0; line < LINES; line++) {
        int one = random.nextInt(next[line].length);
        int other = (one + 1 + random.nextInt(next[line].length - 1)) % next[line].length;
        kept[line] = new int[] {next[line][one], next[line][other]};
      }
    }
  }

  /** The next generation of a line. */
  private int[] raise(int generation, int line, int size, int[] acquired, int[][] kept) {
    int[] raised = new int[size];
    int dice = random.nextInt(9);
    int recurrent = acquired[random.nextInt(2)];
    boolean intercrossed =
        generation % INTERCROSSED_EVERY == 0 && line == generation / INTERCROSSED_EVERY;
    int guest = (line + 1 + random.nextInt(LINES - 1)) % LINES;
    for (int i = 0; i < size; i++) {
      int mother = generation == 0 ? acquired[0] : kept[line][i % 2];
      int father;
      if (generation == 0) {
        father = acquired[1];
      } else if (intercrossed) {
        father = kept[guest][0];
      } else if (dice < 2) {
        father = mother;
      } else if (dice < 6) {
        mother = kept[line][0];
        father = kept[line][1];
      } else {
        father = recurrent;
      }
      raised[i] = sow(mother, father);
    }
    return raised;
  }

  private int acquire(int number) {
    codes.add("A" + codes.size());
    seed.add(null);
    pollen.add(null);
    taxa.add(species(number));
    truth.add(new int[] {random.nextInt(4), random.nextInt(4)});
    return codes.size() - 1;
  }

  private int sow(int mother, int father) {
    codes.add("S" + codes.size());
    seed.add(codes.get(mother));
    pollen.add(codes.get(father));
    taxa.add(null);
    truth.add(new int[] {gamete(truth.get(mother)), gamete(truth.get(father))});
    return codes.size() - 1;
  }

  private int gamete(int[] homologs) {
    int first = random.nextInt(2);
    int second = random.nextDouble() < recombination ? 1 - first : first;
    return (homologs[first] & 1) | (homologs[second] & 2);
  }

  private List<Evidence> seen(int observations) {
    Set<Integer> chosen = new LinkedHashSet<>();
    while (chosen.size() < observations) {
      chosen.add(random.nextInt(codes.size()));
    }
    List<Evidence> seen = new ArrayList<>();
    for (int plant : chosen) {
      int both = truth.get(plant)[0] | truth.get(plant)[1];
      String state = (both & 1) == 0 ? "green" : (both & 2) == 0 ? "red" : "frosted";
      seen.add(Evidence.Shown.of(codes.get(plant), "leaf", state, "note " + seen.size()));
    }
    return seen;
  }
}

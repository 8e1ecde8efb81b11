package dev.filial.core.heredity;

import dev.filial.core.heredity.TraitModel.Row;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/**
 * A genome of up to five genes, linked or not, a few plants, and tables: made of a list of small
 * numbers, each of them one choice, so that what fails shrinks to few genes and simple tables.
 *
 * <p>Beside the objects it keeps the bare numbers, from which {@link BruteForce} works.
 */
final class RandomCross {

  private static final List<Fraction> RECOMBINATIONS =
      List.of(Fraction.HALF, Fraction.of(1, 10), Fraction.ZERO, Fraction.of(1, 3));

  private static final List<String> STATES = List.of("red", "pink", "white");

  private final List<Integer> choices;
  private int used;

  /** How many genes each linkage group has, and how many alleles each gene. */
  final List<List<Locus>> groups = new ArrayList<>();

  final List<List<Fraction>> recombination = new ArrayList<>();

  /** By plant, group, chromosome and place the number of the allele. */
  final List<int[][][]> plants = new ArrayList<>();

  final List<TraitModel> models = new ArrayList<>();

  private RandomCross(List<Integer> choices, boolean deaths) {
    this.choices = choices;
    int loci = 1 + next(5);
    for (int i = 0; i < loci; i++) {
      List<Locus> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
      if (last.isEmpty() || last.size() == 3 || next(2) == 0) {
        groups.add(new ArrayList<>());
        recombination.add(new ArrayList<>());
      } else {
        recombination.get(groups.size() - 1).add(RECOMBINATIONS.get(next(4)));
      }
      groups.get(groups.size() - 1).add(locus(i, 2 + next(2)));
    }
    for (int plant = 0; plant < 4; plant++) {
      plants.add(plant());
    }
    int tables = 1 + next(2);
    for (int table = 0; table < tables; table++) {
      models.add(table("trait " + table, deaths));
    }
  }

  static Arbitrary<RandomCross> crosses() {
    return choices().map(choices -> new RandomCross(choices, false));
  }

  /** The same with genotypes that die, or live less often. */
  static Arbitrary<RandomCross> crossesWithLosses() {
    return choices().map(choices -> new RandomCross(choices, true));
  }

  private static Arbitrary<List<Integer>> choices() {
    return Arbitraries.integers().between(0, 59).list().ofSize(140);
  }

  private int next(int bound) {
    return choices.get(used++ % choices.size()) % bound;
  }

  private static Locus locus(int number, int alleles) {
    String letter = String.valueOf((char) ('A' + number));
    List<String> symbols = new ArrayList<>();
    for (int i = 0; i < alleles; i++) {
      symbols.add(letter + i);
    }
    return new Locus("gene " + letter, symbols, Locus.Seat.NUCLEUS);
  }

  private int[][][] plant() {
    int[][][] plant = new int[groups.size()][2][];
    for (int g = 0; g < groups.size(); g++) {
      for (int strand = 0; strand < 2; strand++) {
        plant[g][strand] = new int[groups.get(g).size()];
        for (int i = 0; i < plant[g][strand].length; i++) {
          plant[g][strand][i] = next(groups.get(g).get(i).alleles().size());
        }
      }
    }
    return plant;
  }

  private TraitModel table(String trait, boolean deaths) {
    List<Row> rows = new ArrayList<>();
    int number = next(5);
    for (int row = 0; row < number; row++) {
      List<Pattern> patterns = new ArrayList<>();
      for (Locus locus : loci()) {
        if (next(2) == 1) {
          patterns.add(pattern(locus));
        }
      }
      rows.add(new Row(patterns, outcome(deaths)));
    }
    rows.add(new Row(List.of(), Outcome.of(STATES.get(next(3)))));
    return new TraitModel(trait, STATES, rows);
  }

  private Pattern pattern(Locus locus) {
    List<String> alleles = new ArrayList<>();
    boolean open = next(2) == 0;
    alleles.add(locus.alleles().get(next(locus.alleles().size())));
    if (!open || next(3) == 2) {
      alleles.add(locus.alleles().get(next(locus.alleles().size())));
    }
    return new Pattern(locus, alleles, open);
  }

  private Outcome outcome(boolean deaths) {
    int kind = next(deaths ? 7 : 4);
    String state = STATES.get(next(3));
    return switch (kind) {
      case 3 ->
          new Outcome(Map.of("red", Fraction.of(2, 5), "white", Fraction.of(3, 5)), Fraction.ONE);
      case 4 -> Outcome.lethal();
      case 5, 6 -> Outcome.of(state).withLives(Fraction.of(1, 3));
      default -> Outcome.of(state);
    };
  }

  List<Locus> loci() {
    return groups.stream().flatMap(List::stream).toList();
  }

  Genome genome() {
    List<LinkageGroup> all = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      all.add(new LinkageGroup(groups.get(g), recombination.get(g), true));
    }
    return Genome.of(all);
  }

  /** As it is written by chromosome: {@code A0.B1/A1.B0 C0/C1}. */
  String text(int plant) {
    List<String> parts = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      parts.add(
          haplotype(g, plants.get(plant)[g][0]) + "/" + haplotype(g, plants.get(plant)[g][1]));
    }
    return String.join(" ", parts);
  }

  private String haplotype(int group, int[] alleles) {
    List<String> symbols = new ArrayList<>();
    for (int i = 0; i < alleles.length; i++) {
      symbols.add(groups.get(group).get(i).alleles().get(alleles[i]));
    }
    return String.join(".", symbols);
  }

  Cross cross(Genome genome, int seed, int pollen) {
    return Cross.of(genome.genotype(text(seed)), genome.genotype(text(pollen)));
  }

  Cross cross() {
    return cross(genome(), 0, 1);
  }

  /** What reports of failing properties show. */
  @Override
  public String toString() {
    return recombination
        + " "
        + text(0)
        + " x "
        + text(1)
        + " "
        + models.stream()
            .map(
                model ->
                    model.rows().stream()
                        .map(row -> row.text() + " -> " + row.outcome())
                        .toList()
                        .toString())
            .toList();
  }
}

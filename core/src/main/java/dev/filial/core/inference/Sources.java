package dev.filial.core.inference;

import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.GenomeStates.Form;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.inference.factor.FactorGraph;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The variables of a network: the genotypes of the plants and the unknown frequencies of the taxa,
 * each entered when it is first asked for, and what gametes come of them.
 */
final class Sources {

  /** So many numbers in the tables that are written down, before anything is worked out. */
  private static final int MOST_NUMBERS = 50_000_000;

  private final GenomeStates states;
  private final FounderPriors priors;
  private final FactorGraph.Builder builder;
  private final int draws;
  private final int unnumbered;
  private final Map<PlantAt, Integer> plants = new HashMap<>();
  private final Map<String, Frequency> frequencies = new HashMap<>();
  private final List<Integer> sizes = new ArrayList<>();
  private final Map<String, Integer> unknowns = new LinkedHashMap<>();
  private final List<String> flat = new ArrayList<>();
  private double numbers;

  private record PlantAt(int plant, int group) {}

  /**
   * The frequency of the alleles of a locus in a taxon: at each point of a grid that of each, and
   * the variable of the points, which is below 0 if it is known.
   */
  private static final class Frequency {
    private final int variable;
    private final double[][] points;

    Frequency(int variable, double[][] points) {
      this.variable = variable;
      this.points = points;
    }

    int variable() {
      return variable;
    }

    double[][] points() {
      return points;
    }
  }

  /**
   * What gametes come from somewhere: the variables that it depends on, and by their states, the
   * last fastest, the chance of each gamete.
   */
  static final class Source {
    private final int[] variables;
    private final double[][] rows;

    Source(int[] variables, double[][] rows) {
      this.variables = variables;
      this.rows = rows;
    }

    int[] variables() {
      return variables;
    }

    double[][] rows() {
      return rows;
    }
  }

  Sources(
      GenomeStates states,
      FounderPriors priors,
      FactorGraph.Builder builder,
      int draws,
      int unnumbered) {
    this.states = states;
    this.priors = priors;
    this.builder = builder;
    this.draws = draws;
    this.unnumbered = unnumbered;
  }

  /** A new variable. */
  int variable(int size) {
    sizes.add(size);
    return builder.variable(size);
  }

  /**
   * A new table.
   *
   * @throws IllegalArgumentException if all tables together become too large to hold
   */
  void factor(int[] variables, double[] table) {
    requireRoom(table.length);
    numbers += table.length;
    builder.factor(variables, table);
  }

  /** Checks that a table of so many numbers can be held beside those that are there. */
  void requireRoom(double more) {
    if (numbers + more > MOST_NUMBERS) {
      throw new IllegalArgumentException(
          "what these plants can hand on takes tables of more than "
              + MOST_NUMBERS
              + " numbers to write down; ask for fewer linked genes at once");
    }
  }

  int size(int variable) {
    return sizes.get(variable);
  }

  /** The variable of a plant's genotype at a group. */
  int plant(int plant, int group) {
    Integer found = plants.get(new PlantAt(plant, group));
    if (found == null) {
      throw new IllegalStateException("plant " + plant + " is not in the network");
    }
    return found;
  }

  int addPlant(int plant, int group, Form form) {
    int variable = variable(states.count(group, form));
    plants.put(new PlantAt(plant, group), variable);
    return variable;
  }

  /**
   * Taxa and loci whose frequencies were unknown, in words.
   *
   * @param bearing the variables that bear on what was asked
   */
  List<String> leanedOn(BitSet bearing) {
    List<String> words = new ArrayList<>(flat);
    unknowns.forEach(
        (word, variable) -> {
          if (bearing.get(variable)) {
            words.add(word);
          }
        });
    return words;
  }

  Source of(Gift gift, int group, boolean pollen) {
    if (gift instanceof Gift.Of parent) {
      int variable = plant(parent.plant(), group);
      return new Source(
          new int[] {variable}, states.gametes(group, parent.from(), parent.meiosis(), pollen));
    }
    return drawn((Gift.Drawn) gift, group, pollen);
  }

  private Source drawn(Gift.Drawn gift, int group, boolean pollen) {
    if (states.isCytoplasm(group) && pollen) {
      return new Source(new int[0], new double[][] {{1}});
    }
    LinkageGroup linked = states.genome().groups().get(group);
    List<Frequency> each = new ArrayList<>();
    List<Integer> variables = new ArrayList<>();
    int rows = 1;
    for (Locus locus : linked.loci()) {
      Frequency frequency = frequency(gift.taxon(), locus, linked.loci().size());
      each.add(frequency);
      if (frequency.variable() >= 0) {
        variables.add(frequency.variable());
        rows *= frequency.points().length;
      }
    }
    double[][] table = new double[rows][];
    for (int row = 0; row < rows; row++) {
      double[][] at = new double[each.size()][];
      int rest = row;
      for (int i = each.size() - 1; i >= 0; i--) {
        double[][] points = each.get(i).points();
        at[i] = points[rest % points.length];
        rest /= points.length;
      }
      table[row] = states.drawn(group, gift.form(), at);
    }
    return new Source(variables.stream().mapToInt(Integer::intValue).toArray(), table);
  }

  private Frequency frequency(String taxon, Locus locus, int linkedLoci) {
    String key = taxon + "\n" + locus.name();
    Frequency known = frequencies.get(key);
    if (known == null) {
      known =
          priors
              .frequencies(taxon, locus.name())
              .map(stated -> new Frequency(-1, new double[][] {stated(locus, stated)}))
              .orElseGet(() -> unknown(taxon, locus, linkedLoci));
      frequencies.put(key, known);
    }
    return known;
  }

  private static double[] stated(Locus locus, Map<String, Fraction> alleles) {
    double[] each = new double[locus.alleles().size()];
    alleles.forEach((allele, share) -> each[locus.alleles().indexOf(allele)] = share.toDouble());
    return each;
  }

  private Frequency unknown(String taxon, Locus locus, int linkedLoci) {
    // Several unknown frequencies of one linkage group are gone through together. Many counted
    // seedlings narrow a frequency to less than lies between the points of a coarse grid.
    int most = linkedLoci == 1 ? (unnumbered > 0 ? 200 : 32) : linkedLoci == 2 ? 12 : 6;
    FrequencyGrid grid = FrequencyGrid.of(locus.alleles().size(), draws + unnumbered, most);
    String word =
        locus.name()
            + (taxon.equals(FounderPriors.UNKNOWN) || taxon.equals(FounderPriors.DOUBTED)
                ? " in plants of unknown taxa"
                : " in " + taxon);
    if (grid.weights().length == 1) {
      flat.add(word + " (all alleles alike, there being so many)");
      return new Frequency(-1, grid.frequencies());
    }
    int variable = variable(grid.weights().length);
    factor(new int[] {variable}, grid.weights());
    boolean coarse =
        grid.weights().length < FrequencyGrid.fine(locus.alleles().size(), draws + unnumbered);
    unknowns.put(
        coarse ? word + " (reckoned at " + grid.weights().length + " frequencies only)" : word,
        variable);
    return new Frequency(variable, grid.frequencies());
  }
}

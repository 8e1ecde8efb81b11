package dev.filial.core.benchmark;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.EveryPlant;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.FounderPriors;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import weka.classifiers.bayes.net.EditableBayesNet;
import weka.classifiers.bayes.net.MarginCalculator;

/**
 * A half-diallel: each pair of some parents crossed once, and the seedlings of each cross looked at
 * for a dominant trait of one locus. All parents are tied to each other, so that a junction tree
 * has a clique of them all. The same network is made for Weka.
 */
final class Diallel {

  /** Of the dominant allele among the parents' species. */
  private static final Fraction FREQUENCY = Fraction.of(4, 5);

  private static final int STATES = 3;
  private static final double[][] HANDED = {{1, 0}, {0.5, 0.5}, {0, 1}};
  private static final Locus LOCUS = Locus.of("tips", "T", "t");
  private static final Genome GENOME = Genome.unlinked(LOCUS);

  private final int parents;

  /** Of each seedling, its parents. */
  private final List<int[]> crosses = new ArrayList<>();

  /** Of each seedling, whether it shows the dominant state. */
  private final List<Boolean> dominant = new ArrayList<>();

  /** Draws genotypes, and what shows of them. */
  Diallel(int parents, int seedlings) {
    this.parents = parents;
    Random random = new Random(1 + parents);
    int[][] genotypes = new int[parents][2];
    for (int[] genotype : genotypes) {
      for (int i = 0; i < 2; i++) {
        genotype[i] = random.nextDouble() < FREQUENCY.toDouble() ? 0 : 1;
      }
    }
    for (int one = 0; one < parents; one++) {
      for (int other = one + 1; other < parents; other++) {
        for (int i = 0; i < seedlings; i++) {
          crosses.add(new int[] {one, other});
          dominant.add(
              genotypes[one][random.nextInt(2)] + genotypes[other][random.nextInt(2)] < 2);
        }
      }
    }
  }

  /** How many plants there are. */
  int plants() {
    return parents + crosses.size();
  }

  private static String code(int plant) {
    return "P" + plant;
  }

  /** The same as Filial has it, with no more known than Weka is told. */
  PedigreeOdds odds() {
    List<PlantRecord> plants = new ArrayList<>();
    List<Evidence> seen = new ArrayList<>();
    for (int i = 0; i < parents; i++) {
      plants.add(PlantRecord.pure(code(i), "Echeveria laui"));
    }
    for (int[] cross : crosses) {
      String code = code(plants.size());
      plants.add(PlantRecord.cross(code, code(cross[0]), code(cross[1])));
      String state = dominant.get(seen.size()) ? "red" : "plain";
      seen.add(Evidence.Shown.of(code, "tips", state, code));
    }
    return PedigreeOdds.of(
            Pedigree.of(plants),
            GENOME,
            List.of(TraitModel.dominant("tips", LOCUS, List.of("red", "plain"))))
        .withPriors(
            FounderPriors.none()
                .withFrequencies(
                    "Echeveria laui",
                    "tips",
                    Map.of("T", FREQUENCY, "t", Fraction.ONE.minus(FREQUENCY))))
        .withEvidence(seen);
  }

  /** The chance of each plant to carry the recessive allele once, and to carry it twice. */
  double[] answers(EveryPlant every) {
    double[] answers = new double[2 * plants()];
    for (int plant = 0; plant < plants(); plant++) {
      answers[2 * plant] = every.copies(code(plant), LOCUS, "t", 1);
      answers[2 * plant + 1] = every.copies(code(plant), LOCUS, "t", 2);
    }
    return answers;
  }

  /** The same as Weka has it: plants, and for each seedling what it shows. */
  EditableBayesNet net() throws Exception {
    EditableBayesNet net = new EditableBayesNet(true);
    double p = FREQUENCY.toDouble();
    for (int i = 0; i < plants(); i++) {
      net.addNode(code(i), STATES);
    }
    for (int i = 0; i < parents; i++) {
      net.setDistribution(i, new double[][] {{p * p, 2 * p * (1 - p), (1 - p) * (1 - p)}});
    }
    double[][] child = new double[STATES * STATES][];
    for (int one = 0; one < STATES; one++) {
      for (int other = 0; other < STATES; other++) {
        double[] egg = HANDED[one];
        double[] grain = HANDED[other];
        child[one * STATES + other] =
            new double[] {
              egg[0] * grain[0], egg[0] * grain[1] + egg[1] * grain[0], egg[1] * grain[1]
            };
      }
    }
    for (int i = 0; i < crosses.size(); i++) {
      net.addArc(crosses.get(i)[0], parents + i);
      net.addArc(crosses.get(i)[1], parents + i);
      net.setDistribution(parents + i, child);
    }
    for (int i = 0; i < crosses.size(); i++) {
      net.addNode("shows" + i, 2);
      net.addArc(parents + i, plants() + i);
      net.setDistribution(plants() + i, new double[][] {{1, 0}, {1, 0}, {0, 1}});
    }
    return net;
  }

  /** What Weka finds, as {@link #answers} has it. */
  double[] wekaAnswers(EditableBayesNet net) throws Exception {
    MarginCalculator calculator = new MarginCalculator();
    calculator.calcMargins(net);
    for (int i = 0; i < crosses.size(); i++) {
      calculator.setEvidence(plants() + i, dominant.get(i) ? 0 : 1);
    }
    double[] answers = new double[2 * plants()];
    for (int plant = 0; plant < plants(); plant++) {
      double[] margin = calculator.getMargin(plant);
      answers[2 * plant] = margin[1] + margin[2];
      answers[2 * plant + 1] = margin[2];
    }
    return answers;
  }
}

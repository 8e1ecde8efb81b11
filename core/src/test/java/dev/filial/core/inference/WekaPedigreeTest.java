package dev.filial.core.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.assertj.core.data.Offset;
import weka.classifiers.bayes.net.EditableBayesNet;
import weka.classifiers.bayes.net.MarginCalculator;

/**
 * Odds over pedigrees of 15 to 30 plants are those of a Bayesian network drawn by hand in Weka
 * 3.8.6: a node for what each plant carries and one for what each was seen to show.
 */
class WekaPedigreeTest {

  private static final Offset<Double> NEAR = within(1e-9);
  private static final Locus A = Locus.of("tips", "T", "t");
  private static final Genome GENOME = Genome.unlinked(A);
  private static final String[] GENOTYPES = {"TT", "Tt", "tt"};
  private static final List<String> STATES = List.of("red", "plain");
  private static final double MISREAD = 1 / 64.0;

  /** A pedigree; founders have no parents. */
  private static final class Drawn {
    final List<int[]> parents = new ArrayList<>();
    final List<Integer> seen = new ArrayList<>();
    final Fraction frequency;
    final Fraction penetrance;

    Drawn(SplittableRandom random) {
      frequency = Fraction.of(1 + random.nextInt(9), 10);
      penetrance = Fraction.of(5 + random.nextInt(6), 10);
      int n = 15 + random.nextInt(16);
      for (int v = 0; v < n; v++) {
        // Parents of the last few generations, so that these overlap and close into loops.
        int from = Math.max(0, v - 9);
        parents.add(
            v < 4 || random.nextInt(7) == 0
                ? new int[0]
                : new int[] {from + random.nextInt(v - from), from + random.nextInt(v - from)});
        seen.add(random.nextInt(3) == 0 ? -1 : random.nextInt(2));
      }
    }

    int size() {
      return parents.size();
    }
  }

  private static PedigreeOdds odds(Drawn drawn) {
    List<PlantRecord> plants = new ArrayList<>();
    List<Evidence> seen = new ArrayList<>();
    for (int v = 0; v < drawn.size(); v++) {
      int[] parents = drawn.parents.get(v);
      plants.add(
          parents.length == 0
              ? PlantRecord.pure("p" + v, "Echeveria laui")
              : PlantRecord.cross("p" + v, "p" + parents[0], "p" + parents[1]));
      if (drawn.seen.get(v) >= 0) {
        seen.add(Evidence.Shown.of("p" + v, "tips", STATES.get(drawn.seen.get(v)), "look " + v));
      }
    }
    return PedigreeOdds.of(
            Pedigree.of(plants),
            GENOME,
            List.of(
                TraitModel.dominant("tips", A, STATES)
                    .withPenetrance("red", drawn.penetrance, "plain")))
        .withPriors(
            FounderPriors.none()
                .withFrequencies(
                    "Echeveria laui",
                    "tips",
                    Map.of("T", drawn.frequency, "t", Fraction.ONE.minus(drawn.frequency))))
        .withMisreading(MISREAD)
        .withEvidence(seen);
  }

  private static MarginCalculator weka(Drawn drawn) throws Exception {
    EditableBayesNet net = new EditableBayesNet(true);
    int n = drawn.size();
    for (int v = 0; v < n; v++) {
      net.addNode("plant" + v, 3);
    }
    for (int v = 0; v < n; v++) {
      net.addNode("look" + v, 2);
    }
    double t = 1 - drawn.frequency.toDouble();
    double shows = drawn.penetrance.toDouble();
    double red = shows * (1 - MISREAD) + (1 - shows) * MISREAD;
    for (int v = 0; v < n; v++) {
      int[] parents = drawn.parents.get(v);
      if (parents.length == 0) {
        net.setDistribution(v, new double[][] {{(1 - t) * (1 - t), 2 * t * (1 - t), t * t}});
      } else if (parents[0] == parents[1]) {
        net.addArc(parents[0], v);
        net.setDistribution(v, new double[][] {{1, 0, 0}, {0.25, 0.5, 0.25}, {0, 0, 1}});
      } else {
        net.addArc(parents[0], v);
        net.addArc(parents[1], v);
        // Mendel's nine crosses, the second parent the faster.
        net.setDistribution(
            v,
            new double[][] {
              {1, 0, 0}, {0.5, 0.5, 0}, {0, 1, 0},
              {0.5, 0.5, 0}, {0.25, 0.5, 0.25}, {0, 0.5, 0.5},
              {0, 1, 0}, {0, 0.5, 0.5}, {0, 0, 1}
            });
      }
      net.addArc(v, n + v);
      net.setDistribution(
          n + v, new double[][] {{red, 1 - red}, {red, 1 - red}, {MISREAD, 1 - MISREAD}});
    }
    MarginCalculator calculator = new MarginCalculator();
    calculator.calcMargins(net);
    for (int v = 0; v < n; v++) {
      if (drawn.seen.get(v) >= 0) {
        calculator.setEvidence(n + v, drawn.seen.get(v));
      }
    }
    return calculator;
  }

  @Property(tries = 20)
  void everyPlantIsAsLikelyToCarryAnAlleleAsWekaFinds(@ForAll long seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    Drawn drawn = new Drawn(random);
    PedigreeOdds odds = odds(drawn);
    MarginCalculator weka = weka(drawn);
    EveryPlant every = odds.everyPlant();
    for (int v = 0; v < drawn.size(); v++) {
      double[] margin = weka.getMargin(v);
      assertThat(every.copies("p" + v, A, "t", 2)).as("p%d", v).isCloseTo(margin[2], NEAR);
      assertThat(every.carries("p" + v, A, "t")).as("p%d", v).isCloseTo(1 - margin[0], NEAR);
    }
    int one = random.nextInt(drawn.size());
    GenotypeOdds asked = odds.genotype("p" + one);
    for (int g = 0; g < 3; g++) {
      assertThat(asked.of(GENOTYPES[g])).as("p%d", one).isCloseTo(weka.getMargin(one)[g], NEAR);
    }
  }
}

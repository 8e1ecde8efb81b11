package dev.filial.core.inference.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import weka.classifiers.bayes.net.EditableBayesNet;
import weka.classifiers.bayes.net.MarginCalculator;

/**
 * Marginals are those of another junction tree: Weka 3.8.6, {@code MarginCalculator} over an {@code
 * EditableBayesNet}. The networks have the shape of pedigrees, with distributions at random.
 */
class WekaAgreementTest {

  private static final int STATES = 3;

  /** A network, and what is seen of it: -1 where nothing is. */
  private static final class Network {
    final int[][] parents;
    final double[][][] given;
    final int[] seen;

    Network(int[][] parents, double[][][] given, int[] seen) {
      this.parents = parents;
      this.given = given;
      this.seen = seen;
    }
  }

  private static Network random(SplittableRandom random) {
    int n = 5 + random.nextInt(20);
    int[][] parents = new int[n][];
    double[][][] given = new double[n][][];
    int[] seen = new int[n];
    for (int v = 0; v < n; v++) {
      // The last few before it, so that generations overlap and close into loops.
      int from = Math.max(0, v - 8);
      if (v < 3 || random.nextInt(6) == 0) {
        parents[v] = new int[0];
      } else {
        int one = from + random.nextInt(v - from);
        int other = from + random.nextInt(v - from);
        parents[v] = one == other ? new int[] {one} : new int[] {one, other};
      }
      int rows = (int) Math.pow(STATES, parents[v].length);
      given[v] = new double[rows][STATES];
      for (double[] row : given[v]) {
        double sum = 0;
        for (int s = 0; s < STATES; s++) {
          row[s] = 0.02 + random.nextDouble();
          sum += row[s];
        }
        for (int s = 0; s < STATES; s++) {
          row[s] /= sum;
        }
      }
      seen[v] = random.nextInt(4) == 0 ? random.nextInt(STATES) : -1;
    }
    return new Network(parents, given, seen);
  }

  private static FactorGraph graph(Network network) {
    FactorGraph.Builder builder = FactorGraph.builder();
    for (int v = 0; v < network.parents.length; v++) {
      builder.variable(STATES);
      int[] scope = Arrays.copyOf(network.parents[v], network.parents[v].length + 1);
      scope[scope.length - 1] = v;
      builder.factor(
          scope, Arrays.stream(network.given[v]).flatMapToDouble(Arrays::stream).toArray());
      if (network.seen[v] >= 0) {
        double[] only = new double[STATES];
        only[network.seen[v]] = 1;
        builder.factor(new int[] {v}, only);
      }
    }
    return builder.build();
  }

  private static MarginCalculator weka(Network network) throws Exception {
    EditableBayesNet net = new EditableBayesNet(true);
    int n = network.parents.length;
    for (int v = 0; v < n; v++) {
      net.addNode("plant" + v, STATES);
    }
    for (int v = 0; v < n; v++) {
      for (int parent : network.parents[v]) {
        net.addArc(parent, v);
      }
      net.setDistribution(v, network.given[v]);
    }
    MarginCalculator calculator = new MarginCalculator();
    calculator.calcMargins(net);
    for (int v = 0; v < n; v++) {
      if (network.seen[v] >= 0) {
        calculator.setEvidence(v, network.seen[v]);
      }
    }
    return calculator;
  }

  @Property(tries = 200)
  void everyMarginalOfANetworkIsWhatWekaFinds(@ForAll long seed) throws Exception {
    Network network = random(new SplittableRandom(seed));
    Calibrated calibrated = Elimination.of(graph(network)).run(100_000_000);
    MarginCalculator weka = weka(network);
    for (int v = 0; v < network.parents.length; v++) {
      assertThat(calibrated.marginal(v))
          .as("plant %d", v)
          .containsExactly(weka.getMargin(v), within(1e-9));
    }
  }
}

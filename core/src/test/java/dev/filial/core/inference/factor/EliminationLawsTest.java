package dev.filial.core.inference.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What is computed over cliques is what adding up every assignment gives. */
class EliminationLawsTest {

  private static final double TOLERANCE = 1e-12;

  @Provide
  Arbitrary<FactorGraph> graphs() {
    return RandomGraph.graphs();
  }

  @Property(tries = 500)
  void everyMarginalIsTheSumOverAllAssignments(@ForAll("graphs") FactorGraph graph) {
    double weight = Enumeration.weight(graph);
    Calibrated calibrated = Elimination.of(graph).run(1_000_000);
    assertThat(calibrated.isPossible()).isEqualTo(weight > 0);
    if (weight > 0) {
      assertThat(calibrated.logWeight()).isCloseTo(Math.log(weight), within(1e-10));
      for (int v = 0; v < graph.variables(); v++) {
        assertThat(calibrated.marginal(v))
            .as("variable %d", v)
            .containsExactly(Enumeration.joint(graph, v), within(TOLERANCE));
      }
    } else {
      assertThat(calibrated.logWeight()).isEqualTo(Double.NEGATIVE_INFINITY);
    }
  }

  @Property(tries = 500)
  void theJointDistributionOfSomeIsTheSumOverTheOthers(
      @ForAll("graphs") FactorGraph graph, @ForAll long seed) {
    int[] asked = someOf(graph, new SplittableRandom(seed));
    double weight = Enumeration.weight(graph);
    Calibrated calibrated = Elimination.of(graph, asked).run(1_000_000);
    assertThat(calibrated.isPossible()).isEqualTo(weight > 0);
    if (weight > 0) {
      assertThat(calibrated.logWeight()).isCloseTo(Math.log(weight), within(1e-10));
      assertThat(calibrated.joint())
          .containsExactly(Enumeration.joint(graph, asked), within(TOLERANCE));
      for (int v : asked) {
        assertThat(calibrated.marginal(v))
            .containsExactly(Enumeration.joint(graph, v), within(TOLERANCE));
      }
    }
  }

  @Property(tries = 200)
  void theOrderOfTheTablesDoesNotMatter(@ForAll("graphs") FactorGraph graph, @ForAll long seed) {
    Factor[] shuffled = graph.factors().toArray(new Factor[0]);
    shuffle(shuffled, new SplittableRandom(seed));
    FactorGraph.Builder builder = FactorGraph.builder();
    for (int v = 0; v < graph.variables(); v++) {
      builder.variable(graph.states(v));
    }
    for (Factor factor : shuffled) {
      builder.factor(factor.variables(), factor.values());
    }
    Calibrated one = Elimination.of(graph).run(1_000_000);
    Calibrated other = Elimination.of(builder.build()).run(1_000_000);
    assertThat(other.isPossible()).isEqualTo(one.isPossible());
    for (int v = 0; one.isPossible() && v < graph.variables(); v++) {
      assertThat(other.marginal(v)).containsExactly(one.marginal(v), within(TOLERANCE));
    }
  }

  @Property(tries = 200)
  void renamingTheVariablesChangesNothing(@ForAll("graphs") FactorGraph graph, @ForAll long seed) {
    int n = graph.variables();
    Integer[] name = new Integer[n];
    Arrays.setAll(name, v -> v);
    shuffle(name, new SplittableRandom(seed));
    int[] states = new int[n];
    for (int v = 0; v < n; v++) {
      states[name[v]] = graph.states(v);
    }
    FactorGraph.Builder builder = FactorGraph.builder();
    for (int count : states) {
      builder.variable(count);
    }
    for (Factor factor : graph.factors()) {
      builder.factor(
          Arrays.stream(factor.variables()).map(v -> name[v]).toArray(), factor.values());
    }
    Calibrated one = Elimination.of(graph).run(1_000_000);
    Calibrated other = Elimination.of(builder.build()).run(1_000_000);
    assertThat(other.isPossible()).isEqualTo(one.isPossible());
    for (int v = 0; one.isPossible() && v < n; v++) {
      assertThat(other.marginal(name[v])).containsExactly(one.marginal(v), within(TOLERANCE));
    }
  }

  private static int[] someOf(FactorGraph graph, SplittableRandom random) {
    Integer[] all = new Integer[graph.variables()];
    Arrays.setAll(all, v -> v);
    shuffle(all, random);
    return Arrays.stream(all).limit(random.nextInt(4)).mapToInt(v -> v).toArray();
  }

  private static <T> void shuffle(T[] things, SplittableRandom random) {
    for (int i = things.length - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      T moved = things[i];
      things[i] = things[j];
      things[j] = moved;
    }
  }
}

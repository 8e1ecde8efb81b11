package dev.filial.core.inference.factor;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Small graphs of any shape, many with zeros in their tables, some of them impossible. */
final class RandomGraph {

  private RandomGraph() {}

  static Arbitrary<FactorGraph> graphs() {
    return Arbitraries.integers()
        .between(1, 7)
        .flatMap(
            variables ->
                Arbitraries.integers()
                    .between(1, 4)
                    .array(int[].class)
                    .ofSize(variables)
                    .flatMap(states -> withStates(states)));
  }

  private static Arbitrary<FactorGraph> withStates(int[] states) {
    return table(states)
        .list()
        .ofMaxSize(10)
        .map(
            tables -> {
              FactorGraph.Builder builder = FactorGraph.builder();
              for (int count : states) {
                builder.variable(count);
              }
              for (Factor table : tables) {
                builder.factor(table.variables(), table.values());
              }
              return builder.build();
            });
  }

  private static Arbitrary<Factor> table(int[] states) {
    return Arbitraries.integers()
        .between(0, states.length - 1)
        .set()
        .ofMaxSize(3)
        .flatMap(
            scope -> {
              int[] variables = scope.stream().mapToInt(v -> v).toArray();
              int size = 1;
              for (int v : variables) {
                size *= states[v];
              }
              Arbitrary<Double> weight =
                  Arbitraries.frequencyOf(
                      net.jqwik.api.Tuple.of(1, Arbitraries.just(0.0)),
                      net.jqwik.api.Tuple.of(3, Arbitraries.doubles().between(0.01, 10)));
              return weight
                  .array(Double[].class)
                  .ofSize(size)
                  .map(
                      values -> {
                        double[] table = new double[values.length];
                        for (int i = 0; i < table.length; i++) {
                          table[i] = values[i];
                        }
                        return new Factor(variables, table);
                      });
            });
  }
}

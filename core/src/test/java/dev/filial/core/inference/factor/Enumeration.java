package dev.filial.core.inference.factor;

import java.util.function.ObjDoubleConsumer;

/** Every assignment of a small graph, one after the other, with its weight: what needs no trust. */
final class Enumeration {

  private Enumeration() {}

  static void over(FactorGraph graph, ObjDoubleConsumer<int[]> use) {
    int n = graph.variables();
    int[] assignment = new int[n];
    while (true) {
      double weight = 1;
      for (Factor factor : graph.factors()) {
        int at = 0;
        for (int v : factor.variables()) {
          at = at * graph.states(v) + assignment[v];
        }
        weight *= factor.values()[at];
      }
      use.accept(assignment, weight);
      int v = n - 1;
      while (v >= 0 && ++assignment[v] == graph.states(v)) {
        assignment[v--] = 0;
      }
      if (v < 0) {
        return;
      }
    }
  }

  static double weight(FactorGraph graph) {
    double[] sum = new double[1];
    over(graph, (assignment, weight) -> sum[0] += weight);
    return sum[0];
  }

  /** The joint distribution of some variables, row-major; only where the weight is not zero. */
  static double[] joint(FactorGraph graph, int... asked) {
    int size = 1;
    for (int v : asked) {
      size *= graph.states(v);
    }
    double[] joint = new double[size];
    over(
        graph,
        (assignment, weight) -> {
          int at = 0;
          for (int v : asked) {
            at = at * graph.states(v) + assignment[v];
          }
          joint[at] += weight;
        });
    double sum = weight(graph);
    for (int i = 0; i < size; i++) {
      joint[i] /= sum;
    }
    return joint;
  }
}

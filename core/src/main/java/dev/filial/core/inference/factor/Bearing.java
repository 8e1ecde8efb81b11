package dev.filial.core.inference.factor;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;

/** Which variables of a graph can bear on some of them, once what is impossible is taken out. */
public final class Bearing {

  private Bearing() {}

  /**
   * The variables that are tied to the asked ones by factors, settled ones cutting the ties; the
   * asked ones are among them unless they are settled. Cost: linear in the tables.
   *
   * @throws IllegalArgumentException if a variable is unknown or named twice
   */
  public static BitSet on(FactorGraph graph, int... asked) {
    graph.requireDistinct(asked);
    Reduced reduced = Reduced.of(graph);
    BitSet bearing = new BitSet();
    if (!reduced.possible) {
      bearing.set(0, graph.variables());
      return bearing;
    }
    BitSet found = new BitSet();
    Deque<Integer> open = new ArrayDeque<>();
    for (int variable : asked) {
      if (reduced.remaining[variable] >= 0) {
        found.set(reduced.remaining[variable]);
        open.add(reduced.remaining[variable]);
      }
    }
    int[][] neighbours = GreedyOrder.neighbours(reduced.states.length, reduced.scopes);
    while (!open.isEmpty()) {
      for (int next : neighbours[open.remove()]) {
        if (!found.get(next)) {
          found.set(next);
          open.add(next);
        }
      }
    }
    for (int variable = 0; variable < graph.variables(); variable++) {
      int left = reduced.remaining[variable];
      if (left >= 0 && found.get(left)) {
        bearing.set(variable);
      }
    }
    return bearing;
  }
}

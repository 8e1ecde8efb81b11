package dev.filial.core.inference.factor;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * Variables that are drawn anew together, given what all others are: their tree of cliques is made
 * once, and each time their tables are cut out of the graph's where the others stand.
 */
final class Block {

  private final int[] variables;
  private final CliqueTree tree;
  private final int[] localStates;
  private final int[][] localScopes;

  /** For each table: the graph's, the steps in it of the local dimensions, and of the others. */
  private final double[][] whole;

  private final int[][] steps;
  private final int[][] fixed;
  private final int[][] fixedSteps;

  private Block(
      int[] variables,
      CliqueTree tree,
      int[] localStates,
      int[][] localScopes,
      double[][] whole,
      int[][] steps,
      int[][] fixed,
      int[][] fixedSteps) {
    this.variables = variables;
    this.tree = tree;
    this.localStates = localStates;
    this.localScopes = localScopes;
    this.whole = whole;
    this.steps = steps;
    this.fixed = fixed;
    this.fixedSteps = fixedSteps;
  }

  /**
   * Of some variables of a reduced graph.
   *
   * @param factors the tables in which one of them is
   * @param last those that are to be last in the block, all of them within it
   * @param bound how many entries its tables may have
   * @return the block, or null if it would have more
   */
  static @Nullable Block of(
      Reduced reduced, int[] variables, int[] local, int[] factors, int[] last, double bound) {
    int n = variables.length;
    int[] localStates = new int[n];
    for (int i = 0; i < n; i++) {
      localStates[i] = reduced.states[variables[i]];
    }
    int[][] scopes = new int[factors.length][];
    double[][] whole = new double[factors.length][];
    int[][] steps = new int[factors.length][];
    int[][] fixed = new int[factors.length][];
    int[][] fixedSteps = new int[factors.length][];
    for (int f = 0; f < factors.length; f++) {
      int[] scope = reduced.scopes[factors[f]];
      int inside = 0;
      for (int v : scope) {
        inside += local[v] >= 0 ? 1 : 0;
      }
      scopes[f] = new int[inside];
      fixed[f] = new int[scope.length - inside];
      fixedSteps[f] = new int[scope.length - inside];
      int step = 1;
      int outside = fixed[f].length;
      for (int d = scope.length - 1; d >= 0; d--) {
        int v = scope[d];
        if (local[v] >= 0) {
          scopes[f][--inside] = local[v];
        } else {
          fixed[f][--outside] = v;
          fixedSteps[f][outside] = step;
        }
        step *= reduced.states[v];
      }
      whole[f] = reduced.tables[factors[f]];
    }
    int[] localLast = new int[last.length];
    boolean[] isLast = new boolean[n];
    for (int i = 0; i < last.length; i++) {
      localLast[i] = local[last[i]];
      isLast[localLast[i]] = true;
    }
    int[][] tied = Arrays.copyOf(scopes, scopes.length + 1);
    tied[scopes.length] = localLast;
    GreedyOrder order =
        GreedyOrder.find(
            localStates,
            GreedyOrder.neighbours(n, tied),
            isLast,
            GreedyOrder.Rule.FILL,
            null,
            2 * bound);
    if (order == null || order.largestTable > GreedyOrder.LARGEST_ARRAY) {
      return null;
    }
    CliqueTree tree =
        new CliqueTree(localStates, scopes, order.order, order.ordered, order.later, localLast);
    if (tree.entries > 2 * bound) {
      return null;
    }
    int[][] localScopes = new int[factors.length][];
    for (int f = 0; f < factors.length; f++) {
      localScopes[f] = tree.scope(f);
      int[] scope = reduced.scopes[factors[f]];
      steps[f] = new int[localScopes[f].length];
      int step = 1;
      for (int d = scope.length - 1; d >= 0; d--) {
        for (int e = 0; e < localScopes[f].length; e++) {
          if (local[scope[d]] == localScopes[f][e]) {
            steps[f][e] = step;
          }
        }
        step *= reduced.states[scope[d]];
      }
    }
    return new Block(variables, tree, localStates, localScopes, whole, steps, fixed, fixedSteps);
  }

  int[] variables() {
    return variables;
  }

  /** What the block is worth where the others stand as they do. */
  CliqueTree.Collected collect(int[] assignment) {
    double[][] tables = new double[whole.length][];
    for (int f = 0; f < tables.length; f++) {
      tables[f] = cut(f, assignment);
    }
    return tree.collect(tables, true);
  }

  /** The distribution of those that are to be last, given the others outside the block. */
  double[] lastTable(CliqueTree.Collected collected) {
    return tree.lastTable(collected);
  }

  /** Draws the block anew. */
  void draw(CliqueTree.Collected collected, int[] assignment, SplittableRandom random) {
    int[] drawn = new int[variables.length];
    tree.draw(collected, drawn, random);
    for (int i = 0; i < drawn.length; i++) {
      assignment[variables[i]] = drawn[i];
    }
  }

  private double[] cut(int f, int[] assignment) {
    int from = 0;
    for (int d = 0; d < fixed[f].length; d++) {
      from += assignment[fixed[f][d]] * fixedSteps[f][d];
    }
    int[] scope = localScopes[f];
    int size = 1;
    for (int v : scope) {
      size *= localStates[v];
    }
    double[] table = new double[size];
    int[] digit = new int[scope.length];
    for (int i = 0; ; ) {
      table[i] = whole[f][from];
      if (++i == size) {
        return table;
      }
      for (int d = scope.length - 1; ; d--) {
        from += steps[f][d];
        if (++digit[d] < localStates[scope[d]]) {
          break;
        }
        from -= steps[f][d] * digit[d];
        digit[d] = 0;
      }
    }
  }
}

package dev.filial.core.inference.factor;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A graph without what is impossible: states that no table supports are gone, variables with one
 * state left are gone, and each table is over what remains, its largest weight being 1. What was
 * taken out of the tables is in {@link #logConstant}.
 */
final class Reduced {

  /** False if a variable has lost all its states; everything else is then empty. */
  final boolean possible;

  final double logConstant;

  /** States of each variable of the graph. */
  final int[] allStates;

  /** States of each variable that remains. */
  final int[] states;

  /** The number of a variable in the graph, for each that remains. */
  final int[] original;

  /** The number of what remains, for each variable of the graph; -1 if it is settled. */
  final int[] remaining;

  /** For each variable of the graph, the states it has left. */
  final int[][] kept;

  final int[][] scopes;
  final double[][] tables;

  private Reduced(
      boolean possible,
      double logConstant,
      int[] allStates,
      int[] states,
      int[] original,
      int[] remaining,
      int[][] kept,
      int[][] scopes,
      double[][] tables) {
    this.possible = possible;
    this.logConstant = logConstant;
    this.allStates = allStates;
    this.states = states;
    this.original = original;
    this.remaining = remaining;
    this.kept = kept;
    this.scopes = scopes;
    this.tables = tables;
  }

  /** Of a graph of which any variable may be wanted. */
  static Reduced of(FactorGraph graph) {
    return of(graph, null);
  }

  /**
   * Of a graph of which some variables are wanted, if any are named: what says nothing of others,
   * whatever they are, is left out too, such as offspring nobody has seen.
   */
  static Reduced of(FactorGraph graph, int @Nullable [] wanted) {
    List<Factor> factors = graph.factors();
    int[][] scopes = new int[factors.size()][];
    double[][] tables = new double[factors.size()][];
    for (int f = 0; f < scopes.length; f++) {
      scopes[f] = factors.get(f).scope();
      tables[f] = factors.get(f).table();
    }
    int[] all = graph.allStates();
    Domains domains = new Domains(all, scopes, tables);
    if (!domains.propagateAll()) {
      return new Reduced(
          false,
          Double.NEGATIVE_INFINITY,
          all,
          new int[0],
          new int[0],
          new int[0],
          new int[0][],
          new int[0][],
          new double[0][]);
    }
    int variables = all.length;
    int[][] kept = new int[variables][];
    boolean[] settled = new boolean[variables];
    for (int v = 0; v < variables; v++) {
      kept[v] = domains.kept(v);
      settled[v] = kept[v].length == 1;
    }
    double logConstant = 0;
    int[][] openScopes = new int[scopes.length][];
    double[][] openTables = new double[scopes.length][];
    int open = 0;
    for (int f = 0; f < scopes.length; f++) {
      double[] table = compressed(scopes[f], tables[f], all, kept);
      double most = 0;
      double least = Double.POSITIVE_INFINITY;
      for (double value : table) {
        most = Math.max(most, value);
        least = Math.min(least, value);
      }
      logConstant += Math.log(most);
      // A table that says the same of everything ties nothing.
      if (least < most) {
        for (int i = 0; i < table.length; i++) {
          table[i] /= most;
        }
        openScopes[open] = without(scopes[f], settled);
        openTables[open++] = table;
      }
    }
    openScopes = Arrays.copyOf(openScopes, open);
    openTables = Arrays.copyOf(openTables, open);
    boolean[] silent = new boolean[open];
    if (wanted != null) {
      Barren barren = new Barren(kept, settled, openScopes, openTables, wanted);
      logConstant += barren.drop();
      silent = barren.dropped;
    }
    int[] remaining = new int[variables];
    int[] original = new int[variables];
    int[] states = new int[variables];
    int count = 0;
    for (int v = 0; v < variables; v++) {
      remaining[v] = -1;
      if (!settled[v]) {
        original[count] = v;
        states[count] = kept[v].length;
        remaining[v] = count++;
      }
    }
    int[][] newScopes = new int[open][];
    double[][] newTables = new double[open][];
    int factorCount = 0;
    for (int f = 0; f < open; f++) {
      if (!silent[f]) {
        newScopes[factorCount] = new int[openScopes[f].length];
        for (int d = 0; d < openScopes[f].length; d++) {
          newScopes[factorCount][d] = remaining[openScopes[f][d]];
        }
        newTables[factorCount++] = openTables[f];
      }
    }
    return new Reduced(
        true,
        logConstant,
        all,
        Arrays.copyOf(states, count),
        Arrays.copyOf(original, count),
        remaining,
        kept,
        Arrays.copyOf(newScopes, factorCount),
        Arrays.copyOf(newTables, factorCount));
  }

  private static int[] without(int[] scope, boolean[] settled) {
    int[] open = new int[scope.length];
    int count = 0;
    for (int v : scope) {
      if (!settled[v]) {
        open[count++] = v;
      }
    }
    return count == scope.length ? open : Arrays.copyOf(open, count);
  }

  private static double[] compressed(int[] scope, double[] table, int[] states, int[][] kept) {
    int size = 1;
    for (int v : scope) {
      size *= kept[v].length;
    }
    if (size == table.length) {
      return table.clone();
    }
    int arity = scope.length;
    int[] stride = new int[arity];
    int step = 1;
    int from = 0;
    for (int d = arity - 1; d >= 0; d--) {
      stride[d] = step;
      step *= states[scope[d]];
      from += kept[scope[d]][0] * stride[d];
    }
    double[] compressed = new double[size];
    int[] digit = new int[arity];
    for (int i = 0; ; ) {
      compressed[i] = table[from];
      if (++i == size) {
        return compressed;
      }
      for (int d = arity - 1; ; d--) {
        int[] left = kept[scope[d]];
        from -= left[digit[d]] * stride[d];
        boolean carry = ++digit[d] == left.length;
        if (carry) {
          digit[d] = 0;
        }
        from += left[digit[d]] * stride[d];
        if (!carry) {
          break;
        }
      }
    }
  }
}

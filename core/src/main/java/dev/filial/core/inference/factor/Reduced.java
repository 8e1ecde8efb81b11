package dev.filial.core.inference.factor;

import java.util.Arrays;
import java.util.List;

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

  static Reduced of(FactorGraph graph) {
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
    int[] remaining = new int[variables];
    int[] original = new int[variables];
    int[] states = new int[variables];
    int count = 0;
    for (int v = 0; v < variables; v++) {
      kept[v] = domains.kept(v);
      remaining[v] = -1;
      if (kept[v].length > 1) {
        original[count] = v;
        states[count] = kept[v].length;
        remaining[v] = count++;
      }
    }
    double logConstant = 0;
    int[][] newScopes = new int[scopes.length][];
    double[][] newTables = new double[scopes.length][];
    int factorCount = 0;
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
        newScopes[factorCount] = renamed(scopes[f], remaining);
        newTables[factorCount++] = table;
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

  private static int[] renamed(int[] scope, int[] remaining) {
    int[] renamed = new int[scope.length];
    int count = 0;
    for (int v : scope) {
      if (remaining[v] >= 0) {
        renamed[count++] = remaining[v];
      }
    }
    return count == scope.length ? renamed : Arrays.copyOf(renamed, count);
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

package dev.filial.core.inference.factor;

/**
 * Leaves out what says nothing of what is wanted: a variable in one table only which, summed over,
 * leaves the same for whatever the others of that table are (barren nodes; Shachter, Operations
 * Research 34, 1986). Found by the numbers, so it needs no direction of the tables. Leaving one out
 * may make others so.
 *
 * <p>Costs a look through the table of each that is tried.
 */
final class Barren {

  /** How far sums may be apart, relatively, that differ by rounding only. */
  private static final double SAME = 1e-14;

  private final int[][] kept;
  private final boolean[] settled;
  private final int[][] scopes;
  private final double[][] tables;
  private final boolean[] isWanted;
  private final int[] ties;
  private final int[] tiesStart;
  private final int[] tablesOf;
  private final int[] stack;
  private int stackSize;

  /** Which tables have been left out. */
  final boolean[] dropped;

  /**
   * Of tables over the variables that are not settled.
   *
   * @param settled those; what is left out will be marked so too
   */
  Barren(int[][] kept, boolean[] settled, int[][] scopes, double[][] tables, int[] wanted) {
    this.kept = kept;
    this.settled = settled;
    this.scopes = scopes;
    this.tables = tables;
    int n = kept.length;
    isWanted = new boolean[n];
    for (int v : wanted) {
      isWanted[v] = true;
    }
    dropped = new boolean[scopes.length];
    ties = new int[n];
    tiesStart = new int[n + 1];
    for (int[] scope : scopes) {
      for (int v : scope) {
        ties[v]++;
      }
    }
    for (int v = 0; v < n; v++) {
      tiesStart[v + 1] = tiesStart[v] + ties[v];
    }
    tablesOf = new int[tiesStart[n]];
    int[] next = tiesStart.clone();
    for (int f = 0; f < scopes.length; f++) {
      for (int v : scopes[f]) {
        tablesOf[next[v]++] = f;
      }
    }
    // Each is put here when it has one table left and again when it has none.
    stack = new int[2 * n];
  }

  /**
   * Leaves out what can be; the natural logarithm of the factor that this takes from the weight.
   */
  double drop() {
    double logConstant = 0;
    for (int v = 0; v < kept.length; v++) {
      consider(v);
    }
    while (stackSize > 0) {
      int v = stack[--stackSize];
      if (settled[v]) {
        continue;
      }
      if (ties[v] == 0) {
        settled[v] = true;
        logConstant += Math.log(kept[v].length);
        continue;
      }
      int f = onlyTable(v);
      double sum = commonSum(f, v);
      if (sum > 0) {
        settled[v] = true;
        dropped[f] = true;
        logConstant += Math.log(sum);
        for (int u : scopes[f]) {
          ties[u]--;
          if (u != v) {
            consider(u);
          }
        }
      }
    }
    return logConstant;
  }

  private void consider(int v) {
    if (!settled[v] && !isWanted[v] && ties[v] <= 1) {
      stack[stackSize++] = v;
    }
  }

  private int onlyTable(int v) {
    int at = tiesStart[v];
    while (dropped[tablesOf[at]]) {
      at++;
    }
    return tablesOf[at];
  }

  /** The sum over the variable if it is the same throughout, or 0. */
  private double commonSum(int factor, int variable) {
    int[] scope = scopes[factor];
    double[] table = tables[factor];
    int row = 1;
    int d = scope.length - 1;
    for (; scope[d] != variable; d--) {
      row *= kept[scope[d]].length;
    }
    int step = row * kept[variable].length;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < table.length; i += step) {
      for (int x = i; x < i + row; x++) {
        double sum = 0;
        for (int at = x; at < i + step; at += row) {
          sum += table[at];
        }
        least = Math.min(least, sum);
        most = Math.max(most, sum);
      }
    }
    return most - least <= SAME * most ? (most + least) / 2 : 0;
  }
}

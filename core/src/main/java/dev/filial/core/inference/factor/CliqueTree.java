package dev.filial.core.inference.factor;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * The cliques of an elimination order, each sending one message to its parent: what is computed in
 * which table. Tables are multiplied where their first variable is summed out, messages go to the
 * roots (collecting), and beliefs come back from them (distributing), so that each clique holds the
 * distribution of its variables (Lauritzen and Spiegelhalter, Journal of the Royal Statistical
 * Society B 50, 1988; Dechter, Artificial Intelligence 113, 1999).
 *
 * <p>A belief comes back as the distribution of a clique given its separator, times the separator's
 * distribution; so nothing is divided but a row by its own sum, and a row of zeros stays one.
 *
 * <p>The order of dimensions is the same in all tables, latest summed out first: a separator leads,
 * and what is summed over lies in rows next to each other.
 *
 * <p>Immutable; costs about {@link #entries} times the number of tables and messages that meet in a
 * clique.
 */
final class CliqueTree {

  /**
   * A product whose smallest factors multiply to less than this (a natural logarithm) is formed of
   * logarithms, because it might come out as zero where it is not.
   */
  private static final double NARROW = -650;

  private final int[] states;

  /** When each variable is summed out. */
  private final int[] position;

  /** Variables of each clique, by descending position. */
  private final int[][] cliques;

  /** How many of a clique's variables, the leading ones, are its parent's too. */
  private final int[] separator;

  private final int[] size;
  private final int[] parent;

  /** Cliques with each child before its parent. */
  private final int[] upwards;

  private final int[] firstChild;
  private final int[] nextChild;

  /** Tables of each clique, as a list. */
  private final int[] firstFactor;

  private final int[] nextFactor;
  private final int[][] scopes;

  /** The clique of the variables that are to be last, or -1. */
  private final int lastClique;

  final double entries;
  final double largestTable;
  final int width;

  /**
   * Builds the tree of an order.
   *
   * @param later for each variable that is summed out, its neighbours then
   * @param order the variables that are summed out
   * @param last the variables after them, in one clique; in the order of its dimensions from the
   *     last to the first
   */
  CliqueTree(int[] states, int[][] scopes, int[] order, int ordered, int[][] later, int[] last) {
    this.states = states;
    int n = states.length;
    position = new int[n];
    for (int i = 0; i < ordered; i++) {
      position[order[i]] = i;
    }
    for (int i = 0; i < last.length; i++) {
      position[last[i]] = ordered + i;
    }
    this.scopes = new int[scopes.length][];
    int[] factorsAt = new int[n];
    for (int f = 0; f < scopes.length; f++) {
      this.scopes[f] = descending(scopes[f]);
      factorsAt[this.scopes[f][scopes[f].length - 1]]++;
    }

    int[][] vars = new int[ordered + 1][];
    int[] sep = new int[ordered + 1];
    int[] table = new int[ordered + 1];
    int[] up = new int[ordered + 1];
    int[] cliqueOf = new int[n];
    int[] top = new int[ordered + 1];
    // Cliques whose parent is the clique of a variable.
    int[] waiting = new int[n];
    int[] next = new int[ordered + 1];
    Arrays.fill(waiting, -1);
    int count = 0;
    for (int i = 0; i < ordered; i++) {
      int v = order[i];
      int[] neighbours = descending(later[v]);
      int entriesHere = states[v];
      for (int u : neighbours) {
        entriesHere *= states[u];
      }
      int contained = -1;
      int children = 0;
      for (int c = waiting[v]; c >= 0; c = next[c]) {
        children++;
        if (sep[c] == neighbours.length + 1 && (contained < 0 || table[c] < table[contained])) {
          contained = c;
        }
      }
      // The variable's table would be a part of its child's. It is spared if working in the larger
      // one does not cost more than it saves.
      if (contained >= 0) {
        double dearer = (double) (children - 1 + factorsAt[v]) * (table[contained] - entriesHere);
        if (dearer > (double) table[contained] + entriesHere) {
          contained = -1;
        }
      }
      int clique;
      if (contained >= 0) {
        clique = contained;
        sep[clique]--;
      } else {
        clique = count++;
        vars[clique] = Arrays.copyOf(neighbours, neighbours.length + 1);
        vars[clique][neighbours.length] = v;
        sep[clique] = neighbours.length;
        table[clique] = entriesHere;
      }
      top[clique] = i;
      up[clique] = -1;
      for (int c = waiting[v]; c >= 0; ) {
        int following = next[c];
        if (c != clique) {
          up[c] = clique;
        }
        c = following;
      }
      cliqueOf[v] = clique;
      if (neighbours.length > 0) {
        int first = neighbours[neighbours.length - 1];
        next[clique] = waiting[first];
        waiting[first] = clique;
      }
    }
    if (last.length > 0) {
      int clique = count++;
      vars[clique] = descending(last);
      table[clique] = 1;
      top[clique] = ordered;
      up[clique] = -1;
      for (int v : last) {
        table[clique] *= states[v];
        cliqueOf[v] = clique;
        for (int c = waiting[v]; c >= 0; c = next[c]) {
          up[c] = clique;
        }
      }
      lastClique = clique;
    } else {
      lastClique = -1;
    }

    int[] at = new int[ordered + 1];
    Arrays.fill(at, -1);
    for (int c = 0; c < count; c++) {
      at[top[c]] = c;
    }
    Gathering gathering = new Gathering(states, this.scopes, count, vars, sep, table, up);
    for (int f = 0; f < scopes.length; f++) {
      gathering.factor(f, cliqueOf[this.scopes[f][scopes[f].length - 1]]);
    }
    for (int c : at) {
      if (c >= 0) {
        gathering.clique(c);
      }
    }
    count = gathering.count;
    cliques = Arrays.copyOf(gathering.vars, count);
    separator = Arrays.copyOf(gathering.sep, count);
    size = Arrays.copyOf(gathering.table, count);
    parent = Arrays.copyOf(gathering.up, count);
    firstChild = Arrays.copyOf(gathering.firstChild, count);
    nextChild = Arrays.copyOf(gathering.nextChild, count);
    firstFactor = Arrays.copyOf(gathering.firstFactor, count);
    nextFactor = gathering.nextFactor;
    upwards = Arrays.copyOf(gathering.upwards, count);
    double sum = 0;
    double most = 0;
    int variables = 1;
    for (int c = 0; c < count; c++) {
      sum += size[c] + (double) separatorSize(c);
      most = Math.max(most, size[c]);
      variables = Math.max(variables, cliques[c].length);
    }
    entries = sum;
    largestTable = most;
    width = variables - 1;
  }

  private int separatorSize(int clique) {
    int entriesOf = 1;
    for (int d = 0; d < separator[clique]; d++) {
      entriesOf *= states[cliques[clique][d]];
    }
    return entriesOf;
  }

  private int[] descending(int[] variables) {
    int[] sorted = variables.clone();
    for (int i = 1; i < sorted.length; i++) {
      int v = sorted[i];
      int j = i;
      for (; j > 0 && position[sorted[j - 1]] < position[v]; j--) {
        sorted[j] = sorted[j - 1];
      }
      sorted[j] = v;
    }
    return sorted;
  }

  /** The scope of a table as the tree wants its dimensions. */
  int[] scope(int factor) {
    return scopes[factor];
  }

  /** Tables with their dimensions as the tree wants them. */
  double[][] arranged(int[][] given, double[][] tables) {
    double[][] arranged = new double[tables.length][];
    for (int f = 0; f < tables.length; f++) {
      arranged[f] =
          Arrays.equals(given[f], scopes[f])
              ? tables[f]
              : Kernels.permuted(tables[f], given[f], scopes[f], states);
    }
    return arranged;
  }

  /** What has been collected: for each clique its table, before anything came back. */
  static final class Collected {

    private final double[][] tables;
    private final boolean[] logarithms;

    /** Natural logarithm of the sum of all weights. */
    double logWeight;

    private Collected(int cliques) {
      tables = new double[cliques][];
      logarithms = new boolean[cliques];
    }
  }

  /**
   * Multiplies the tables and sums them out, from the leaves to the roots.
   *
   * @param factors the tables, {@linkplain #arranged arranged}
   * @param keep whether the tables will be gone back through
   */
  Collected collect(double[][] factors, boolean keep) {
    Kernels kernels = new Kernels();
    int count = cliques.length;
    Collected collected = new Collected(count);
    double[][] messages = new double[count][];
    boolean[] messageLogs = new boolean[count];
    double[] lows = new double[count];
    double logWeight = 0;
    for (int c : upwards) {
      int[] whole = cliques[c];
      double low = 0;
      for (int f = firstFactor[c]; f >= 0; f = nextFactor[f]) {
        low += Math.log(Rows.leastAboveZero(factors[f]));
      }
      for (int d = firstChild[c]; d >= 0; d = nextChild[d]) {
        low += lows[d];
      }
      boolean logs = low < NARROW;
      double[] table = new double[size[c]];
      if (!logs) {
        Arrays.fill(table, 1);
      }
      for (int f = firstFactor[c]; f >= 0; f = nextFactor[f]) {
        if (logs) {
          kernels.add(table, whole, Rows.logarithms(factors[f]), scopes[f], states);
        } else {
          kernels.multiply(table, whole, factors[f], scopes[f], states);
        }
      }
      for (int d = firstChild[c]; d >= 0; d = nextChild[d]) {
        int[] part = Arrays.copyOf(cliques[d], separator[d]);
        if (logs) {
          double[] message = messageLogs[d] ? messages[d] : Rows.logarithms(messages[d]);
          kernels.add(table, whole, message, part, states);
        } else {
          kernels.multiply(table, whole, messages[d], part, states);
        }
        messages[d] = new double[0];
      }
      double[] message = Rows.sums(table, separatorSize(c), logs);
      double most = Double.NEGATIVE_INFINITY;
      for (double value : message) {
        most = Math.max(most, value);
      }
      logWeight += logs ? most : Math.log(most);
      if (logWeight == Double.NEGATIVE_INFINITY) {
        collected.logWeight = logWeight;
        return collected;
      }
      if (logs) {
        lows[c] = Rows.lessen(message, most);
        messageLogs[c] = lows[c] < NARROW;
        if (!messageLogs[c]) {
          for (int i = 0; i < message.length; i++) {
            message[i] = Math.exp(message[i]);
          }
        }
      } else {
        for (int i = 0; i < message.length; i++) {
          message[i] /= most;
        }
        lows[c] = Math.log(Rows.leastAboveZero(message));
      }
      messages[c] = message;
      if (keep || c == lastClique) {
        collected.tables[c] = table;
        collected.logarithms[c] = logs;
      }
    }
    collected.logWeight = logWeight;
    return collected;
  }

  /**
   * Goes back from the roots to the leaves: the distribution of every variable.
   *
   * @param collected with its tables kept; they are used up
   */
  double[][] distribute(Collected collected) {
    Kernels kernels = new Kernels();
    double[][] marginals = new double[states.length][];
    for (int at = upwards.length - 1; at >= 0; at--) {
      int c = upwards[at];
      int[] whole = cliques[c];
      double[] table = collected.tables[c];
      int rows = separatorSize(c);
      int row = table.length / rows;
      double[] given = new double[rows];
      int p = parent[c];
      if (p < 0) {
        given[0] = 1;
      } else {
        int[] part = Arrays.copyOf(whole, separator[c]);
        kernels.sumInto(given, part, collected.tables[p], cliques[p], states);
      }
      for (int r = 0; r < rows; r++) {
        Rows.condition(table, r * row, (r + 1) * row, collected.logarithms[c], given[r]);
      }
      for (int d = separator[c]; d < whole.length; d++) {
        double[] marginal = new double[states[whole[d]]];
        Kernels.sumAround(marginal, 0, d, table, whole, states);
        Rows.normalise(marginal);
        marginals[whole[d]] = marginal;
      }
    }
    return marginals;
  }

  /** The variables of the clique that was to be last, in the order of its dimensions. */
  int[] lastVariables() {
    return lastClique < 0 ? new int[0] : cliques[lastClique];
  }

  /** The distribution of the variables that were to be last together; used up by this. */
  double[] lastTable(Collected collected) {
    if (lastClique < 0) {
      return new double[] {1};
    }
    double[] table = collected.tables[lastClique];
    Rows.condition(table, 0, table.length, collected.logarithms[lastClique], 1);
    collected.logarithms[lastClique] = false;
    return table;
  }

  /**
   * Draws all variables together from their distribution, from the roots to the leaves.
   *
   * @param collected with its tables kept
   * @param drawn where the states go, one for each variable
   */
  void draw(Collected collected, int[] drawn, SplittableRandom random) {
    for (int at = upwards.length - 1; at >= 0; at--) {
      int c = upwards[at];
      int[] whole = cliques[c];
      if (separator[c] == whole.length) {
        continue;
      }
      double[] table = collected.tables[c];
      int r = 0;
      int rows = 1;
      for (int d = 0; d < separator[c]; d++) {
        r = r * states[whole[d]] + drawn[whole[d]];
        rows *= states[whole[d]];
      }
      int row = table.length / rows;
      int pick = Rows.draw(table, r * row, row, collected.logarithms[c], random);
      for (int d = whole.length - 1; d >= separator[c]; d--) {
        drawn[whole[d]] = pick % states[whole[d]];
        pick /= states[whole[d]];
      }
    }
  }
}

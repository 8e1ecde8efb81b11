package dev.filial.core.inference.factor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
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
    Gathering gathering = new Gathering(count, vars, sep, table, up);
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

  /**
   * Ties each clique to its children and tables. Where several tables and messages meet in a large
   * clique over the same few of its variables, they are first multiplied in a clique of those few,
   * between them and the large one, so that the large one is gone through once for all of them.
   */
  private final class Gathering {

    /** Below this a clique is gone through too fast for anything to be saved. */
    private static final int LARGE = 200;

    /** A group is this many times smaller than the clique it is in. */
    private static final int SMALLER = 24;

    private static final int MOST_GROUPS = 400;

    int count;
    int[][] vars;
    int[] sep;
    int[] table;
    int[] up;
    int[] firstChild;
    int[] nextChild;
    int[] firstFactor;
    final int[] nextFactor = new int[scopes.length];
    int[] upwards;
    int placed;

    Gathering(int count, int[][] vars, int[] sep, int[] table, int[] up) {
      this.count = count;
      this.vars = vars;
      this.sep = sep;
      this.table = table;
      this.up = up;
      firstChild = new int[vars.length];
      nextChild = new int[vars.length];
      firstFactor = new int[vars.length];
      upwards = new int[count];
      Arrays.fill(firstChild, -1);
      Arrays.fill(firstFactor, -1);
      for (int c = 0; c < count; c++) {
        if (up[c] >= 0) {
          child(c, up[c]);
        }
      }
    }

    void factor(int f, int clique) {
      nextFactor[f] = firstFactor[clique];
      firstFactor[clique] = f;
    }

    private void child(int c, int clique) {
      up[c] = clique;
      nextChild[c] = firstChild[clique];
      firstChild[clique] = c;
    }

    /** Groups what meets in a clique, and places it after everything below it. */
    void clique(int c) {
      if (table[c] >= LARGE) {
        group(c);
      }
      place(c);
    }

    private void place(int c) {
      if (placed == upwards.length) {
        upwards = Arrays.copyOf(upwards, placed + placed / 2 + 4);
      }
      upwards[placed++] = c;
    }

    private void group(int c) {
      List<Part> parts = new ArrayList<>();
      for (int f = firstFactor[c]; f >= 0; f = nextFactor[f]) {
        parts.add(new Part(f, true, scopes[f], sizeOf(scopes[f])));
      }
      for (int d = firstChild[c]; d >= 0; d = nextChild[d]) {
        int[] part = Arrays.copyOf(vars[d], sep[d]);
        parts.add(new Part(d, false, part, sizeOf(part)));
      }
      if (parts.size() < 3) {
        return;
      }
      parts.sort(Comparator.comparingInt((Part part) -> -part.size));
      List<List<Part>> groups = new ArrayList<>();
      firstFactor[c] = -1;
      firstChild[c] = -1;
      for (Part part : parts) {
        List<Part> into = null;
        for (int g = groups.size() - 1; g >= 0 && into == null; g--) {
          Part first = groups.get(g).get(0);
          if ((long) first.size * SMALLER <= table[c] && isWithin(part.scope, first.scope)) {
            into = groups.get(g);
          }
        }
        if (into != null) {
          into.add(part);
        } else if (groups.size() < MOST_GROUPS) {
          groups.add(new ArrayList<>(List.of(part)));
        } else {
          put(part, c);
        }
      }
      for (List<Part> group : groups) {
        int target = group.size() > 1 ? between(group.get(0), c) : c;
        for (Part part : group) {
          put(part, target);
        }
      }
    }

    private void put(Part part, int clique) {
      if (part.isFactor) {
        factor(part.number, clique);
      } else {
        child(part.number, clique);
      }
    }

    private int between(Part like, int clique) {
      if (count == up.length) {
        int more = count + count / 4 + 8;
        vars = Arrays.copyOf(vars, more);
        sep = Arrays.copyOf(sep, more);
        table = Arrays.copyOf(table, more);
        up = Arrays.copyOf(up, more);
        firstChild = Arrays.copyOf(firstChild, more);
        nextChild = Arrays.copyOf(nextChild, more);
        firstFactor = Arrays.copyOf(firstFactor, more);
      }
      int made = count++;
      vars[made] = like.scope;
      sep[made] = like.scope.length;
      table[made] = like.size;
      firstChild[made] = -1;
      firstFactor[made] = -1;
      child(made, clique);
      place(made);
      return made;
    }

    private int sizeOf(int[] scope) {
      int entriesOf = 1;
      for (int v : scope) {
        entriesOf *= states[v];
      }
      return entriesOf;
    }

    /** Whether one is a subsequence of the other. */
    private boolean isWithin(int[] part, int[] whole) {
      int at = 0;
      for (int d = 0; d < whole.length && at < part.length; d++) {
        if (whole[d] == part[at]) {
          at++;
        }
      }
      return at == part.length;
    }
  }

  /** A table or a message that meets others in a clique. */
  private static final class Part {
    final int number;
    final boolean isFactor;
    final int[] scope;
    final int size;

    Part(int number, boolean isFactor, int[] scope, int size) {
      this.number = number;
      this.isFactor = isFactor;
      this.scope = scope;
      this.size = size;
    }
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
        low += Math.log(leastAboveZero(factors[f]));
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
          kernels.add(table, whole, logarithms(factors[f]), scopes[f], states);
        } else {
          kernels.multiply(table, whole, factors[f], scopes[f], states);
        }
      }
      for (int d = firstChild[c]; d >= 0; d = nextChild[d]) {
        int[] part = Arrays.copyOf(cliques[d], separator[d]);
        if (logs) {
          double[] message = messageLogs[d] ? messages[d] : logarithms(messages[d]);
          kernels.add(table, whole, message, part, states);
        } else {
          kernels.multiply(table, whole, messages[d], part, states);
        }
        messages[d] = new double[0];
      }
      double[] message = rowSums(table, separatorSize(c), logs);
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
        lows[c] = lessen(message, most);
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
        lows[c] = Math.log(leastAboveZero(message));
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

  private static double leastAboveZero(double[] values) {
    double least = 1;
    for (double value : values) {
      if (value > 0 && value < least) {
        least = value;
      }
    }
    return least;
  }

  private static double[] logarithms(double[] values) {
    double[] logarithms = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      logarithms[i] = Math.log(values[i]);
    }
    return logarithms;
  }

  /** Takes the largest logarithm from all; the smallest that is not of zero. */
  private static double lessen(double[] logarithms, double most) {
    double least = 0;
    for (int i = 0; i < logarithms.length; i++) {
      logarithms[i] -= most;
      if (logarithms[i] > Double.NEGATIVE_INFINITY) {
        least = Math.min(least, logarithms[i]);
      }
    }
    return least;
  }

  private static double[] rowSums(double[] table, int rows, boolean logs) {
    double[] sums = new double[rows];
    int row = table.length / rows;
    for (int r = 0, i = 0; r < rows; r++) {
      int end = i + row;
      if (logs) {
        double most = greatest(table, i, end);
        double sum = 0;
        if (most > Double.NEGATIVE_INFINITY) {
          for (; i < end; i++) {
            sum += Math.exp(table[i] - most);
          }
        }
        i = end;
        sums[r] = most + Math.log(sum);
      } else {
        double sum = 0;
        for (; i < end; i++) {
          sum += table[i];
        }
        sums[r] = sum;
      }
    }
    return sums;
  }

  private static double greatest(double[] table, int from, int end) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = from; i < end; i++) {
      most = Math.max(most, table[i]);
    }
    return most;
  }

  /** Turns a row into a distribution times {@code by}; a row of zeros stays one. */
  private static void condition(double[] table, int from, int end, boolean logs, double by) {
    if (logs) {
      double most = greatest(table, from, end);
      for (int i = from; i < end; i++) {
        table[i] = most == Double.NEGATIVE_INFINITY ? 0 : Math.exp(table[i] - most);
      }
    }
    double sum = 0;
    for (int i = from; i < end; i++) {
      sum += table[i];
    }
    if (sum > 0) {
      double scale = by / sum;
      for (int i = from; i < end; i++) {
        table[i] *= scale;
      }
    }
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
        condition(table, r * row, (r + 1) * row, collected.logarithms[c], given[r]);
      }
      for (int d = separator[c]; d < whole.length; d++) {
        double[] marginal = new double[states[whole[d]]];
        Kernels.sumAround(marginal, 0, d, table, whole, states);
        normalise(marginal);
        marginals[whole[d]] = marginal;
      }
    }
    return marginals;
  }

  private static void normalise(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
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
    condition(table, 0, table.length, collected.logarithms[lastClique], 1);
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
      int pick = drawRow(table, r * row, row, collected.logarithms[c], random);
      for (int d = whole.length - 1; d >= separator[c]; d--) {
        drawn[whole[d]] = pick % states[whole[d]];
        pick /= states[whole[d]];
      }
    }
  }

  private static int drawRow(
      double[] table, int from, int row, boolean logs, SplittableRandom random) {
    double most = logs ? greatest(table, from, from + row) : 0;
    double sum = 0;
    for (int i = from; i < from + row; i++) {
      sum += logs ? Math.exp(table[i] - most) : table[i];
    }
    double mark = random.nextDouble() * sum;
    int chosen = -1;
    for (int i = 0; i < row; i++) {
      double weight = logs ? Math.exp(table[from + i] - most) : table[from + i];
      // Rounding may leave the mark past the last; then it is the last that is possible.
      if (weight > 0) {
        chosen = i;
        mark -= weight;
        if (mark < 0) {
          break;
        }
      }
    }
    return chosen;
  }
}

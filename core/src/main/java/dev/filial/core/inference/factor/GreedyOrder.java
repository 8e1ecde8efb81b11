package dev.filial.core.inference.factor;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * One order in which variables are summed out, found greedily: always the one next that looks
 * cheapest by a rule. Summing a variable out ties all its neighbours to each other; the ties that
 * were not there before are its fill.
 *
 * <p>The rules are min-fill, min-weight and weighted min-fill (Kjærulff, Triangulation of graphs,
 * Aalborg 1990; Koller and Friedman, Probabilistic Graphical Models, 2009, section 9.4.3). Fill is
 * kept up to date and not counted anew: a new tie between two variables is one less for each
 * neighbour they share. A variable with very many neighbours is not looked at before it has lost
 * most of them, since its table could not be held in any case. With {@code n} variables of few
 * neighbours the cost grows as {@code n log n}.
 */
final class GreedyOrder {

  enum Rule {
    FILL,
    WEIGHT,
    WEIGHTED_FILL,
    /** Through the graph as ranks say, but first whatever has no fill. */
    SWEEP
  }

  /** Past this many neighbours a table has more entries than an array can hold. */
  static final int MOST_NEIGHBOURS = 31;

  /** A table with more entries than this is not stored, and the plan is one that cannot be run. */
  static final double LARGEST_ARRAY = Integer.MAX_VALUE - 8;

  private static final double OUT_OF_REACH = Double.MAX_VALUE;

  /** What searching one order may cost before the rest is taken for a single table. */
  private static final long PATIENCE = 20_000_000L;

  private static final long PATIENCE_FOR_EACH = 2500;

  private final int[] states;
  private final boolean[] last;
  private final Rule rule;
  private final @Nullable SplittableRandom random;
  private final int[] rank;

  private final int[][] adjacent;
  private final int[] length;
  private final int[] degree;
  private final boolean[] gone;

  private final double[] fill;

  // An indexed binary heap by (key, tie).
  private final double[] key;
  private final double[] tie;
  private final int[] heap;
  private final int[] place;
  private int heapSize;

  private final int[] near;
  private long effort;

  /** The order, without the variables that are to be last. */
  final int[] order;

  int ordered;

  /**
   * For each variable, the neighbours it had when it was summed out; empty past what can be run.
   */
  final int[][] later;

  double entries;
  double largestTable;
  int width;

  private GreedyOrder(
      int[] states,
      int[][] base,
      boolean[] last,
      Rule rule,
      @Nullable SplittableRandom random,
      int[] rank) {
    this.states = states;
    this.last = last;
    this.rule = rule;
    this.random = random;
    this.rank = rank;
    int n = states.length;
    adjacent = new int[n][];
    length = new int[n];
    degree = new int[n];
    gone = new boolean[n];
    fill = new double[n];
    key = new double[n];
    tie = new double[n];
    heap = new int[n];
    place = new int[n];
    near = new int[n];
    order = new int[n];
    later = new int[n][];
    for (int v = 0; v < n; v++) {
      adjacent[v] = base[v].clone();
      length[v] = degree[v] = base[v].length;
    }
    Arrays.fill(place, -1);
    for (int v = 0; v < n; v++) {
      if (!last[v]) {
        appraise(v);
        heap[heapSize] = v;
        place[v] = heapSize++;
      }
    }
    for (int i = heapSize / 2 - 1; i >= 0; i--) {
      sink(i);
    }
  }

  /** Neighbours of each variable, ascending: what shares a table with it. */
  static int[][] neighbours(int variables, int[][] scopes) {
    int[] count = new int[variables];
    for (int[] scope : scopes) {
      for (int v : scope) {
        count[v] += scope.length - 1;
      }
    }
    int[][] neighbours = new int[variables][];
    for (int v = 0; v < variables; v++) {
      neighbours[v] = new int[count[v]];
      count[v] = 0;
    }
    for (int[] scope : scopes) {
      for (int v : scope) {
        for (int u : scope) {
          if (u != v) {
            neighbours[v][count[v]++] = u;
          }
        }
      }
    }
    for (int v = 0; v < variables; v++) {
      int[] list = neighbours[v];
      Arrays.sort(list);
      int kept = 0;
      for (int i = 0; i < list.length; i++) {
        if (i == 0 || list[i] != list[i - 1]) {
          list[kept++] = list[i];
        }
      }
      if (kept < list.length) {
        neighbours[v] = Arrays.copyOf(list, kept);
      }
    }
    return neighbours;
  }

  /**
   * Finds an order.
   *
   * @param base the neighbours of each variable, ascending
   * @param last what is not to be summed out
   * @param random where given, shakes the rule, for another try
   * @param tooMuch a try is given up once its tables have this many entries
   * @return the order, or null if it was given up
   */
  static @Nullable GreedyOrder find(
      int[] states,
      int[][] base,
      boolean[] last,
      Rule rule,
      @Nullable SplittableRandom random,
      double tooMuch) {
    GreedyOrder order = new GreedyOrder(states, base, last, rule, random, new int[0]);
    return order.run(tooMuch) ? order : null;
  }

  /** The same by {@link Rule#SWEEP}, lower ranks first. */
  static @Nullable GreedyOrder sweep(
      int[] states, int[][] base, boolean[] last, int[] rank, double tooMuch) {
    GreedyOrder order = new GreedyOrder(states, base, last, Rule.SWEEP, null, rank);
    return order.run(tooMuch) ? order : null;
  }

  /**
   * Ranks by distance from an end of the graph: each component is gone through breadth first, from
   * a variable that is farthest from another.
   */
  static int[] distanceRanks(int[][] base) {
    int n = base.length;
    int[] queue = new int[n];
    int[] rank = new int[n];
    boolean[] met = new boolean[n];
    boolean[] ranked = new boolean[n];
    int done = 0;
    for (int v = 0; v < n; v++) {
      if (!met[v]) {
        int end = breadthFirst(base, v, queue, done, met);
        int count = breadthFirst(base, queue[end - 1], queue, done, ranked);
        for (; done < count; done++) {
          rank[queue[done]] = done;
        }
      }
    }
    return rank;
  }

  private static int breadthFirst(int[][] base, int root, int[] queue, int from, boolean[] met) {
    int count = from;
    met[root] = true;
    queue[count++] = root;
    for (int head = from; head < count; head++) {
      for (int u : base[queue[head]]) {
        if (!met[u]) {
          met[u] = true;
          queue[count++] = u;
        }
      }
    }
    return count;
  }

  /**
   * Variables that, once known, leave tables no larger than a cap over the rest: whenever the next
   * table would be larger, one of its variables is taken for known, the one that has been so least
   * often (cutset conditioning; Bidyuk and Dechter, Journal of Artificial Intelligence Research 28,
   * 2007).
   *
   * @param last what is never taken
   * @param timesTaken how often each has been; counted up here
   */
  static boolean[] cutset(
      int[] states,
      int[][] base,
      boolean[] last,
      double cap,
      int[] timesTaken,
      SplittableRandom random) {
    GreedyOrder order = new GreedyOrder(states, base, last, Rule.FILL, random, new int[0]);
    boolean[] taken = new boolean[states.length];
    while (order.heapSize > 0) {
      int v = order.heap[0];
      int neighbours = order.collect(v);
      double table = states[v];
      for (int i = 0; i < neighbours; i++) {
        table *= states[order.near[i]];
      }
      if (table <= cap) {
        order.remove(v);
        order.sumOut(v, neighbours);
        continue;
      }
      int chosen = v;
      double mark = order.degree[v] * random.nextDouble();
      for (int i = 0; i < neighbours; i++) {
        int u = order.near[i];
        double other = order.degree[u] * random.nextDouble();
        if (!last[u]
            && (timesTaken[u] < timesTaken[chosen]
                || (timesTaken[u] == timesTaken[chosen] && other > mark))) {
          chosen = u;
          mark = other;
        }
      }
      taken[chosen] = true;
      timesTaken[chosen]++;
      order.remove(chosen);
      order.forget(chosen);
    }
    return taken;
  }

  /** How much searching it took, in looks at neighbours. */
  long effort() {
    return effort;
  }

  private boolean run(double tooMuch) {
    while (heapSize > 0) {
      // Twice as many variables as a table can have make one that cannot be held.
      if (effort > PATIENCE + PATIENCE_FOR_EACH * states.length && heapSize > 2 * MOST_NEIGHBOURS) {
        takeTheRestAsOne();
        return entries < tooMuch;
      }
      int v = heap[0];
      remove(v);
      int neighbours = collect(v);
      double table = states[v];
      for (int i = 0; i < neighbours; i++) {
        table = Math.min(table * states[near[i]], Double.MAX_VALUE);
      }
      account(table, neighbours);
      if (entries >= tooMuch) {
        return false;
      }
      if (largestTable <= LARGEST_ARRAY) {
        later[v] = Arrays.copyOf(near, neighbours);
      }
      order[ordered++] = v;
      sumOut(v, neighbours);
    }
    return true;
  }

  private void account(double table, int neighbours) {
    entries = Math.min(entries + table, Double.MAX_VALUE);
    largestTable = Math.max(largestTable, table);
    width = Math.max(width, neighbours);
  }

  private void takeTheRestAsOne() {
    double table = 1;
    int rest = 0;
    for (int v = 0; v < states.length; v++) {
      if (!gone[v]) {
        table = Math.min(table * states[v], Double.MAX_VALUE);
        rest++;
      }
    }
    account(table, rest - 1);
    heapSize = 0;
  }

  /** Puts the neighbours that are left into {@link #near}, ascending, and says how many. */
  private int collect(int v) {
    int[] list = adjacent[v];
    int kept = 0;
    for (int i = 0; i < length[v]; i++) {
      if (!gone[list[i]]) {
        near[kept++] = list[i];
      }
    }
    effort += length[v];
    return kept;
  }

  private boolean areAdjacent(int a, int b) {
    return length[a] < length[b]
        ? Arrays.binarySearch(adjacent[a], 0, length[a], b) >= 0
        : Arrays.binarySearch(adjacent[b], 0, length[b], a) >= 0;
  }

  private void insert(int a, int b) {
    int at = -Arrays.binarySearch(adjacent[a], 0, length[a], b) - 1;
    if (length[a] == adjacent[a].length) {
      adjacent[a] = Arrays.copyOf(adjacent[a], length[a] + (length[a] >> 1) + 4);
    }
    System.arraycopy(adjacent[a], at, adjacent[a], at + 1, length[a] - at);
    adjacent[a][at] = b;
    length[a]++;
    degree[a]++;
    effort += 1 + length[a] / 16;
  }

  private double fillOf(int a, int b) {
    return rule == Rule.WEIGHTED_FILL ? (double) states[a] * states[b] : 1;
  }

  private void sumOut(int v, int neighbours) {
    int[] around = Arrays.copyOf(near, neighbours);
    for (int i = 0; i < neighbours; i++) {
      for (int j = i + 1; j < neighbours; j++) {
        if (!areAdjacent(around[i], around[j])) {
          tieTogether(around[i], around[j]);
        }
      }
    }
    effort += (long) neighbours * neighbours;
    leave(v, around);
  }

  /** Takes a variable out as known, which ties nothing. */
  private void forget(int v) {
    leave(v, Arrays.copyOf(near, collect(v)));
  }

  private void leave(int v, int[] around) {
    gone[v] = true;
    for (int u : around) {
      degree[u]--;
      if (length[u] > 8 && degree[u] < length[u] / 2) {
        forgetTheGone(u);
      }
    }
    for (int u : around) {
      if (!last[u]) {
        appraise(u);
        settle(u);
      }
    }
  }

  private void tieTogether(int a, int b) {
    if (rule != Rule.WEIGHT) {
      int fewer = length[a] < length[b] ? a : b;
      int more = fewer == a ? b : a;
      int[] list = adjacent[fewer];
      double less = fillOf(a, b);
      effort += length[fewer];
      for (int i = 0; i < length[fewer]; i++) {
        int c = list[i];
        if (place[c] >= 0
            && key[c] < OUT_OF_REACH
            && Arrays.binarySearch(adjacent[more], 0, length[more], c) >= 0) {
          fill[c] -= less;
          key[c] = keyByFill(c);
          rise(place[c]);
        }
      }
    }
    insert(a, b);
    insert(b, a);
  }

  private void forgetTheGone(int u) {
    int[] list = adjacent[u];
    int kept = 0;
    for (int i = 0; i < length[u]; i++) {
      if (!gone[list[i]]) {
        list[kept++] = list[i];
      }
    }
    effort += length[u];
    length[u] = kept;
  }

  private void appraise(int v) {
    if (degree[v] > MOST_NEIGHBOURS) {
      key[v] = OUT_OF_REACH;
      tie[v] = degree[v];
      return;
    }
    int neighbours = collect(v);
    double weight = states[v];
    for (int i = 0; i < neighbours; i++) {
      weight *= states[near[i]];
    }
    if (rule == Rule.WEIGHT) {
      key[v] = random == null ? weight : weight * (1 + random.nextDouble());
      tie[v] = neighbours;
      return;
    }
    double missing = 0;
    for (int i = 0; i < neighbours; i++) {
      for (int j = i + 1; j < neighbours; j++) {
        if (!areAdjacent(near[i], near[j])) {
          missing += fillOf(near[i], near[j]);
        }
      }
    }
    effort += (long) neighbours * neighbours / 2;
    fill[v] = missing;
    key[v] = keyByFill(v);
    tie[v] = random == null ? weight : random.nextDouble();
  }

  private double keyByFill(int v) {
    return rule != Rule.SWEEP ? fill[v] : fill[v] == 0 ? 0 : 1.0 + rank[v];
  }

  private boolean isBefore(int a, int b) {
    return key[a] != key[b] ? key[a] < key[b] : tie[a] != tie[b] ? tie[a] < tie[b] : a < b;
  }

  private void remove(int v) {
    int at = place[v];
    place[v] = -1;
    int moved = heap[--heapSize];
    if (moved != v) {
      heap[at] = moved;
      place[moved] = at;
      settle(moved);
    }
  }

  private void settle(int v) {
    rise(place[v]);
    sink(place[v]);
  }

  private void rise(int from) {
    int at = from;
    int v = heap[at];
    while (at > 0 && isBefore(v, heap[(at - 1) / 2])) {
      heap[at] = heap[(at - 1) / 2];
      place[heap[at]] = at;
      at = (at - 1) / 2;
    }
    heap[at] = v;
    place[v] = at;
  }

  private void sink(int from) {
    int at = from;
    int v = heap[at];
    while (2 * at + 1 < heapSize) {
      int child = 2 * at + 1;
      if (child + 1 < heapSize && isBefore(heap[child + 1], heap[child])) {
        child++;
      }
      if (!isBefore(heap[child], v)) {
        break;
      }
      heap[at] = heap[child];
      place[heap[at]] = at;
      at = child;
    }
    heap[at] = v;
    place[v] = at;
  }
}

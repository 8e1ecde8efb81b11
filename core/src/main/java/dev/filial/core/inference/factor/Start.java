package dev.filial.core.inference.factor;

import java.util.SplittableRandom;

/**
 * A possible assignment, found by trying states at random, following what each makes impossible,
 * and going back where nothing is left. A variable at which the search failed is tried earlier when
 * the search begins anew (Boussemart and others, ECAI 2004); a search that ends proves that nothing
 * is possible. May take time exponential in the size of the graph, and is given up before.
 */
final class Start {

  private static final int FIRST_FAILURES = 200;
  private static final int MOST_BEGINNINGS = 24;

  private final int[] states;
  private final Domains domains;
  private final int[][] neighbours;
  private final int[] failures;
  private final SplittableRandom random;

  private Start(Reduced reduced, int[][] neighbours, SplittableRandom random) {
    this.states = reduced.states;
    this.domains = new Domains(states, reduced.scopes, reduced.tables);
    this.neighbours = neighbours;
    this.failures = new int[states.length];
    this.random = random;
  }

  /**
   * Finds one.
   *
   * @throws IllegalStateException if there is none, or none was found
   */
  static int[] find(Reduced reduced, int[][] neighbours, SplittableRandom random) {
    Start start = new Start(reduced, neighbours, random);
    if (!start.domains.propagateAll()) {
      throw new IllegalStateException("nothing is possible here, so there is no place to start");
    }
    double patience = FIRST_FAILURES;
    for (int i = 0; i < MOST_BEGINNINGS; i++) {
      if (start.search((int) patience)) {
        return start.found();
      }
      patience *= 1.5;
    }
    throw new IllegalStateException(
        "no possible assignment was found to start from; whether there is one is not known");
  }

  private int[] found() {
    int[] found = new int[states.length];
    for (int v = 0; v < found.length; v++) {
      found[v] = domains.kept(v)[0];
    }
    return found;
  }

  private boolean search(int patience) {
    int beginning = domains.mark();
    int n = states.length;
    int[] order = order();
    int[] triedAt = new int[n];
    int[] triedState = new int[n];
    int[] marks = new int[n];
    int depth = 0;
    int failed = 0;
    int at = 0;
    while (true) {
      while (at < n && domains.left(order[at]) == 1) {
        at++;
      }
      if (at == n) {
        return true;
      }
      int[] kept = domains.kept(order[at]);
      triedAt[depth] = at;
      triedState[depth] = kept[random.nextInt(kept.length)];
      marks[depth] = domains.mark();
      boolean consistent = domains.assign(order[at], triedState[depth++]);
      while (!consistent) {
        if (depth == 0) {
          throw new IllegalStateException(
              "nothing is possible here: every way to begin ends in a contradiction");
        }
        depth--;
        at = triedAt[depth];
        failures[order[at]]++;
        failed++;
        domains.undo(marks[depth]);
        // What is struck out here was tried in vain under all that is still assumed.
        consistent = domains.exclude(order[at], triedState[depth]);
      }
      if (failed > patience) {
        domains.undo(beginning);
        return false;
      }
    }
  }

  /** Through the graph from the variable that failed most, each followed by its neighbours. */
  private int[] order() {
    int n = states.length;
    int[] order = new int[n];
    boolean[] met = new boolean[n];
    int count = 0;
    int offset = n == 0 ? 0 : random.nextInt(n);
    int worst = -1;
    for (int v = 0; v < n; v++) {
      if (failures[v] > 0 && (worst < 0 || failures[v] > failures[worst])) {
        worst = v;
      }
    }
    for (int i = worst < 0 ? 0 : -1; i < n; i++) {
      int root = i < 0 ? worst : (i + offset) % n;
      if (met[root]) {
        continue;
      }
      int head = count;
      met[root] = true;
      order[count++] = root;
      while (head < count) {
        for (int u : neighbours[order[head++]]) {
          if (!met[u]) {
            met[u] = true;
            order[count++] = u;
          }
        }
      }
    }
    return order;
  }
}

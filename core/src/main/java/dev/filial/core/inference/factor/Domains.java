package dev.filial.core.inference.factor;

import java.util.Arrays;

/**
 * Which states of each variable are still possible. A state that no table gives a weight, whatever
 * the other variables of that table are, is struck out, and so on until nothing changes
 * (generalised arc consistency; Mackworth, Artificial Intelligence 8, 1977). What was struck out
 * can be put back, for a search that tries things.
 *
 * <p>Costs one look through a table for every time one of its variables loses a state.
 */
final class Domains {

  final int[] states;
  private final int[][] scopes;
  private final double[][] tables;
  private final int[] offset;
  private final boolean[] live;
  private final int[] left;

  /** The tables with a zero at each variable; one without strikes nothing out, ever. */
  private final int[] touchStart;

  private final int[] touch;
  private final boolean[] strict;

  private final int[] queue;
  private final boolean[] queued;
  private int queueHead;
  private int queueSize;

  private final boolean[] supported;
  private final int[] supportOffset;
  private final int[] digit;

  private int[] trail = new int[64];
  private int[] trailVariable = new int[64];
  private int trailSize;

  Domains(int[] states, int[][] scopes, double[][] tables) {
    this.states = states;
    this.scopes = scopes;
    this.tables = tables;
    int variables = states.length;
    offset = new int[variables + 1];
    for (int v = 0; v < variables; v++) {
      offset[v + 1] = offset[v] + states[v];
    }
    live = new boolean[offset[variables]];
    Arrays.fill(live, true);
    left = states.clone();
    strict = new boolean[scopes.length];
    touchStart = new int[variables + 1];
    int widest = 0;
    int mostStates = 0;
    for (int f = 0; f < scopes.length; f++) {
      strict[f] = hasZero(tables[f]);
      int sum = 0;
      for (int v : scopes[f]) {
        sum += states[v];
        if (strict[f]) {
          touchStart[v + 1]++;
        }
      }
      widest = Math.max(widest, scopes[f].length);
      mostStates = Math.max(mostStates, sum);
    }
    for (int v = 0; v < variables; v++) {
      touchStart[v + 1] += touchStart[v];
    }
    touch = new int[touchStart[variables]];
    int[] next = touchStart.clone();
    for (int f = 0; f < scopes.length; f++) {
      if (strict[f]) {
        for (int v : scopes[f]) {
          touch[next[v]++] = f;
        }
      }
    }
    queue = new int[Math.max(1, scopes.length)];
    queued = new boolean[scopes.length];
    supported = new boolean[mostStates];
    supportOffset = new int[widest];
    digit = new int[widest];
  }

  private static boolean hasZero(double[] table) {
    for (double value : table) {
      if (value == 0) {
        return true;
      }
    }
    return false;
  }

  boolean isLive(int variable, int state) {
    return live[offset[variable] + state];
  }

  /** How many states the variable has left. */
  int left(int variable) {
    return left[variable];
  }

  /** The states the variable has left, ascending. */
  int[] kept(int variable) {
    int[] kept = new int[left[variable]];
    int next = 0;
    for (int s = 0; s < states[variable]; s++) {
      if (live[offset[variable] + s]) {
        kept[next++] = s;
      }
    }
    return kept;
  }

  /** Works through every table; false if a variable has no state left. */
  boolean propagateAll() {
    for (int f = 0; f < scopes.length; f++) {
      if (strict[f]) {
        enqueue(f);
      }
    }
    return propagate();
  }

  /** Leaves the variable one state and follows what that does; false if some variable has none. */
  boolean assign(int variable, int state) {
    for (int s = 0; s < states[variable]; s++) {
      if (s != state && live[offset[variable] + s]) {
        strike(variable, s);
      }
    }
    return propagate();
  }

  /** Strikes a state out and follows what that does; false if some variable has none left. */
  boolean exclude(int variable, int state) {
    strike(variable, state);
    boolean consistent = propagate();
    return consistent && left[variable] > 0;
  }

  /** Where {@link #undo} may return to. */
  int mark() {
    return trailSize;
  }

  void undo(int mark) {
    while (trailSize > mark) {
      trailSize--;
      live[trail[trailSize]] = true;
      left[trailVariable[trailSize]]++;
    }
  }

  private void strike(int variable, int state) {
    live[offset[variable] + state] = false;
    left[variable]--;
    if (trailSize == trail.length) {
      trail = Arrays.copyOf(trail, 2 * trailSize);
      trailVariable = Arrays.copyOf(trailVariable, 2 * trailSize);
    }
    trail[trailSize] = offset[variable] + state;
    trailVariable[trailSize++] = variable;
    for (int at = touchStart[variable]; at < touchStart[variable + 1]; at++) {
      enqueue(touch[at]);
    }
  }

  private void enqueue(int factor) {
    if (!queued[factor]) {
      queued[factor] = true;
      int tail = queueHead + queueSize++;
      queue[tail < queue.length ? tail : tail - queue.length] = factor;
    }
  }

  private boolean propagate() {
    boolean possible = true;
    while (queueSize > 0) {
      int factor = queue[queueHead];
      queueHead = queueHead + 1 == queue.length ? 0 : queueHead + 1;
      queueSize--;
      queued[factor] = false;
      // After a contradiction the queue is only emptied, for the next try.
      possible = possible && revise(factor);
    }
    return possible;
  }

  private boolean revise(int factor) {
    int[] scope = scopes[factor];
    double[] table = tables[factor];
    int arity = scope.length;
    if (arity == 0) {
      return table[0] > 0;
    }
    int wanted = 0;
    int sum = 0;
    int dead = 0;
    for (int d = 0; d < arity; d++) {
      supportOffset[d] = sum;
      sum += states[scope[d]];
      wanted += left[scope[d]];
      digit[d] = 0;
      if (!live[offset[scope[d]]]) {
        dead++;
      }
    }
    Arrays.fill(supported, 0, sum, false);
    for (int i = 0; wanted > 0; ) {
      if (dead == 0 && table[i] > 0) {
        for (int d = 0; d < arity; d++) {
          int at = supportOffset[d] + digit[d];
          if (!supported[at]) {
            supported[at] = true;
            wanted--;
          }
        }
      }
      if (++i == table.length) {
        break;
      }
      for (int d = arity - 1; ; d--) {
        int base = offset[scope[d]];
        if (!live[base + digit[d]]) {
          dead--;
        }
        boolean carry = ++digit[d] == states[scope[d]];
        if (carry) {
          digit[d] = 0;
        }
        if (!live[base + digit[d]]) {
          dead++;
        }
        if (!carry) {
          break;
        }
      }
    }
    if (wanted == 0) {
      return true;
    }
    // What this table struck out itself need not be looked through in it again.
    queued[factor] = true;
    boolean possible = true;
    for (int d = 0; d < arity; d++) {
      int variable = scope[d];
      for (int s = 0; s < states[variable]; s++) {
        if (live[offset[variable] + s] && !supported[supportOffset[d] + s]) {
          strike(variable, s);
        }
      }
      possible &= left[variable] > 0;
    }
    queued[factor] = false;
    return possible;
  }
}

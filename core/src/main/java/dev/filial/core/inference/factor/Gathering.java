package dev.filial.core.inference.factor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Ties each clique to its children and tables. Where several tables and messages meet in a large
 * clique over the same few of its variables, they are first multiplied in a clique of those few,
 * between them and the large one, so that the large one is gone through once for all of them.
 */
final class Gathering {

  /** Below this a clique is gone through too fast for anything to be saved. */
  private static final int LARGE = 200;

  /** A group is this many times smaller than the clique it is in. */
  private static final int SMALLER = 24;

  private static final int MOST_GROUPS = 400;

  private final int[] states;
  private final int[][] scopes;
  int count;
  int[][] vars;
  int[] sep;
  int[] table;
  int[] up;
  int[] firstChild;
  int[] nextChild;
  int[] firstFactor;
  final int[] nextFactor;
  int[] upwards;
  private int placed;

  Gathering(
      int[] states, int[][] scopes, int count, int[][] vars, int[] sep, int[] table, int[] up) {
    this.states = states;
    this.scopes = scopes;
    this.nextFactor = new int[scopes.length];
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
}

package dev.filial.core.ancestry;

import java.util.stream.IntStream;

/**
 * The coancestries of some thousand genotypes by the tabular method (Emik and Terrill 1949, Journal
 * of Heredity 40:51-55): the row of a plant is the mean of its parents' rows. Level by level, so
 * that rows of one level are worked out side by side. Time and memory go by the square of the size.
 */
final class CoancestryTable implements Kin {

  /** The most genotypes a table is made for: half a gibibyte. */
  static final int MOST = 8_192;

  /** Below this many numbers a level is not worth handing to other threads. */
  private static final long PARALLEL_FROM = 1 << 16;

  private static final int TILE = 32;

  private final GeneFlow flow;
  private final SetPairs sets;
  private final int size;
  private final double[] table;
  private final double[] inbreeding;

  private CoancestryTable(GeneFlow flow, SetPairs sets) {
    this.flow = flow;
    this.sets = sets;
    size = flow.size();
    table = new double[size * size];
    inbreeding = new double[size];
  }

  static CoancestryTable of(GeneFlow flow, SetPairs sets) {
    CoancestryTable result = new CoancestryTable(flow, sets);
    int[] starts = flow.levelStarts();
    for (int level = 0; level + 1 < starts.length; level++) {
      result.fillLevel(starts[level], starts[level + 1]);
    }
    return result;
  }

  private void fillLevel(int from, int to) {
    IntStream rows = IntStream.range(from, to);
    if ((long) (to - from) * from >= PARALLEL_FROM) {
      rows = rows.parallel();
    }
    rows.forEach(i -> fillOlder(i, from));
    for (int i = from; i < to; i++) {
      fillLevelMates(i, from);
    }
    mirror(from, to);
  }

  /** With all plants of lower levels, whose rows are whole. */
  private void fillOlder(int i, int from) {
    if (flow.isPlain(i)) {
      int seed = flow.seed(i) * size;
      int pollen = flow.pollen(i) * size;
      int row = i * size;
      if (seed >= 0 && pollen >= 0) {
        for (int j = 0; j < from; j++) {
          table[row + j] = 0.5 * (table[seed + j] + table[pollen + j]);
        }
      } else if (seed >= 0 || pollen >= 0) {
        addRow(row, Math.max(seed, pollen), 0.5, from);
      }
      return;
    }
    flow.eachParent(i, (parent, weight) -> addRow(i * size, parent * size, weight, from));
  }

  private void addRow(int row, int other, double weight, int to) {
    if (other >= 0) {
      for (int j = 0; j < to; j++) {
        table[row + j] += weight * table[other + j];
      }
    }
  }

  /**
   * With those of its own level before it, and with itself: by what these have with its parents.
   */
  private void fillLevelMates(int i, int from) {
    if (flow.isFounder(i)) {
      table[i * size + i] = 1.0 / flow.ploidy(i);
      return;
    }
    int row = i * size;
    flow.eachParent(
        i,
        (parent, weight) -> {
          for (int j = from; j < i && parent >= 0; j++) {
            table[row + j] += weight * table[j * size + parent];
          }
        });
    for (int j = from; j < i; j++) {
      table[j * size + i] = table[row + j];
    }
    inbreeding[i] =
        flow.isPlain(i)
            ? between(flow.seed(i), flow.pollen(i))
            : sets.inbreeding(flow.ways(i), this);
    table[row + i] =
        flow.isPlain(i) ? SetPairs.self(inbreeding[i], 2) : sets.self(flow.ways(i), this);
  }

  /** Writes the level's rows into the columns of the older ones, tile by tile. */
  private void mirror(int from, int to) {
    for (int top = from; top < to; top += TILE) {
      int bottom = Math.min(to, top + TILE);
      for (int j = 0; j < from; j++) {
        for (int i = top; i < bottom; i++) {
          table[j * size + i] = table[i * size + j];
        }
      }
    }
  }

  @Override
  public double between(int a, int b) {
    return a < 0 || b < 0 ? 0 : table[a * size + b];
  }

  @Override
  public double inbreeding(int node) {
    return inbreeding[node];
  }

  @Override
  public double self(int node) {
    return table[node * size + node];
  }

  @Override
  public void row(int node, double[] out) {
    System.arraycopy(table, node * size, out, 0, size);
  }
}

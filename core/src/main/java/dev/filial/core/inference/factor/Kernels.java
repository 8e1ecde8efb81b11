package dev.filial.core.inference.factor;

/**
 * Loops over tables. A table is over variables in an order all tables share, so that the variables
 * of one table that are also in another come in the same order there: the dimensions of the larger
 * fall into runs that are all shared or all not, and only the runs are counted through.
 */
final class Kernels {

  private final int[] size = new int[40];
  private final int[] stride = new int[40];
  private final int[] digit = new int[40];
  private int runs;

  /** Whether the run whose entries lie next to each other is one of the smaller table. */
  private boolean inner;

  /** Finds the runs; {@code part} is a subsequence of {@code whole}. */
  private void layOut(int[] whole, int[] part, int[] states) {
    runs = 0;
    int at = part.length - 1;
    int step = 1;
    boolean shared = false;
    for (int d = whole.length - 1; d >= 0; d--) {
      boolean here = at >= 0 && part[at] == whole[d];
      if (runs == 0 || here != shared) {
        size[runs] = 1;
        stride[runs] = here ? step : 0;
        digit[runs++] = 0;
        shared = here;
        if (runs == 1) {
          inner = here;
        }
      }
      size[runs - 1] *= states[whole[d]];
      if (here) {
        step *= states[whole[d]];
        at--;
      }
    }
  }

  private int advance(int from) {
    int j = from;
    for (int r = 1; ; r++) {
      if (++digit[r] < size[r]) {
        return j + stride[r];
      }
      digit[r] = 0;
      j -= stride[r] * (size[r] - 1);
    }
  }

  /** Multiplies each entry of a table by the one of a smaller table that it belongs to. */
  void multiply(double[] table, int[] whole, double[] factor, int[] part, int[] states) {
    layOut(whole, part, states);
    if (runs == 0) {
      table[0] *= factor[0];
      return;
    }
    int row = size[0];
    for (int i = 0, j = 0; ; ) {
      if (inner) {
        for (int x = 0; x < row; x++) {
          table[i + x] *= factor[j + x];
        }
      } else {
        double by = factor[j];
        for (int x = i; x < i + row; x++) {
          table[x] *= by;
        }
      }
      i += row;
      if (i == table.length) {
        return;
      }
      j = advance(j);
    }
  }

  /** The same with logarithms. */
  void add(double[] table, int[] whole, double[] factor, int[] part, int[] states) {
    layOut(whole, part, states);
    if (runs == 0) {
      table[0] += factor[0];
      return;
    }
    int row = size[0];
    for (int i = 0, j = 0; ; ) {
      for (int x = 0; x < row; x++) {
        table[i + x] += factor[inner ? j + x : j];
      }
      i += row;
      if (i == table.length) {
        return;
      }
      j = advance(j);
    }
  }

  /** Sums a table into a smaller one, which holds zeros before. */
  void sumInto(double[] sums, int[] part, double[] table, int[] whole, int[] states) {
    layOut(whole, part, states);
    if (runs == 0) {
      sums[0] += table[0];
      return;
    }
    int row = size[0];
    for (int i = 0, j = 0; ; ) {
      if (inner) {
        for (int x = 0; x < row; x++) {
          sums[j + x] += table[i + x];
        }
      } else {
        double sum = 0;
        for (int x = i; x < i + row; x++) {
          sum += table[x];
        }
        sums[j] += sum;
      }
      i += row;
      if (i == table.length) {
        return;
      }
      j = advance(j);
    }
  }

  /** Sums a table over all variables but the one at a dimension. */
  static void sumAround(
      double[] sums, int at, int dimension, double[] table, int[] whole, int[] states) {
    int row = 1;
    for (int d = dimension + 1; d < whole.length; d++) {
      row *= states[whole[d]];
    }
    int count = states[whole[dimension]];
    for (int i = 0; i < table.length; ) {
      for (int s = 0; s < count; s++) {
        double sum = 0;
        for (int end = i + row; i < end; i++) {
          sum += table[i];
        }
        sums[at + s] += sum;
      }
    }
  }

  /** A table with its dimensions in another order. */
  static double[] permuted(double[] table, int[] from, int[] to, int[] states) {
    int arity = from.length;
    int[] step = new int[arity];
    int size = 1;
    for (int d = arity - 1; d >= 0; d--) {
      for (int e = 0; e < arity; e++) {
        if (to[e] == from[d]) {
          step[e] = size;
        }
      }
      size *= states[from[d]];
    }
    double[] permuted = new double[size];
    int[] count = new int[arity];
    for (int i = 0, j = 0; ; ) {
      permuted[i] = table[j];
      if (++i == size) {
        return permuted;
      }
      for (int d = arity - 1; ; d--) {
        j += step[d];
        if (++count[d] < states[to[d]]) {
          break;
        }
        j -= step[d] * count[d];
        count[d] = 0;
      }
    }
  }
}

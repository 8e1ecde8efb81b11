package dev.filial.core.inference.factor;

import java.util.SplittableRandom;

/**
 * Sums over the rows of a table, and draws from them; a table holds weights or, where weights might
 * underflow, their natural logarithms.
 */
final class Rows {

  private Rows() {}

  /** The smallest weight that is not 0, at most 1. */
  static double leastAboveZero(double[] values) {
    double least = 1;
    for (double value : values) {
      if (value > 0 && value < least) {
        least = value;
      }
    }
    return least;
  }

  /** The logarithms of weights. */
  static double[] logarithms(double[] values) {
    double[] logarithms = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      logarithms[i] = Math.log(values[i]);
    }
    return logarithms;
  }

  /** Takes the largest logarithm from all; the smallest that is not of zero. */
  static double lessen(double[] logarithms, double most) {
    double least = 0;
    for (int i = 0; i < logarithms.length; i++) {
      logarithms[i] -= most;
      if (logarithms[i] > Double.NEGATIVE_INFINITY) {
        least = Math.min(least, logarithms[i]);
      }
    }
    return least;
  }

  /** The sum of each of so many rows of one length; a logarithm if they are. */
  static double[] sums(double[] table, int rows, boolean logs) {
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
  static void condition(double[] table, int from, int end, boolean logs, double by) {
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

  /** Brings weights to a sum of 1. */
  static void normalise(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
  }

  /** Draws a place in a row by its weights. */
  static int draw(double[] table, int from, int row, boolean logs, SplittableRandom random) {
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

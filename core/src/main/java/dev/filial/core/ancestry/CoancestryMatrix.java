package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Pedigree;

/** The coancestries of chosen plants with each other. Immutable. */
public final class CoancestryMatrix {

  /** The most plants a matrix is made for: 400 MB of numbers. */
  public static final int MOST = 10_000;

  private final Pedigree pedigree;
  private final int[] plants;

  /** The lower half, the diagonal included. */
  private final double[][] rows;

  CoancestryMatrix(Pedigree pedigree, int[] plants, double[][] rows) {
    this.pedigree = pedigree;
    this.plants = plants;
    this.rows = rows;
  }

  static void requireSize(int size) {
    if (size > MOST) {
      throw new IllegalArgumentException(
          "a matrix of "
              + size
              + " plants would take "
              + (((long) size * (size + 1) * 4) >> 20)
              + " MiB, and is made for at most "
              + MOST
              + " plants; choose fewer, or take it row by row");
    }
  }

  /** How many plants there are. */
  public int size() {
    return plants.length;
  }

  /** The code of the {@code k}-th plant chosen. */
  public String code(int k) {
    return pedigree.code(plants[k]);
  }

  /** The coancestry of two of the chosen plants, by their place; of one with itself too. */
  public double between(int k, int other) {
    return k >= other ? rows[k][other] : rows[other][k];
  }

  /** The mean coancestry over all pairs, each plant with itself included; 0 of none. */
  public double mean() {
    double n = size();
    return n == 0 ? 0 : (2 * sumOfPairs() + trace()) / (n * n);
  }

  /** The mean coancestry over pairs of different plants; 0 of fewer than two. */
  public double meanOfPairs() {
    double n = size();
    return n < 2 ? 0 : 2 * sumOfPairs() / (n * (n - 1));
  }

  private double sumOfPairs() {
    double sum = 0;
    for (int k = 0; k < rows.length; k++) {
      for (int j = 0; j < k; j++) {
        sum += rows[k][j];
      }
    }
    return sum;
  }

  private double trace() {
    double sum = 0;
    for (int k = 0; k < rows.length; k++) {
      sum += rows[k][k];
    }
    return sum;
  }
}

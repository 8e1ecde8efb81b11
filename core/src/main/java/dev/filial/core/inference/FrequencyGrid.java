package dev.filial.core.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Points at which an unknown frequency of alleles is reckoned with, and their weights.
 *
 * <p>For two alleles the Gauss-Jacobi rule of the Beta(½, ½) distribution (Golub and Welsch 1969,
 * Mathematics of Computation 23:221-230), whose weights are all alike: with n points exact for up
 * to 2n − 1 draws. Of more than 64 draws it takes no more points than four times the root of their
 * number: how well they place the frequency grows with that root, and what is left out is past the
 * twelfth digit. For k alleles Dirichlet(½, …): the share of the first is Beta(½, (k−1)/2), that of
 * the second among the rest Beta(½, (k−2)/2), and so on.
 */
final class FrequencyGrid {

  /** More points are never taken for one locus. */
  private static final int MOST_POINTS = 400;

  private final double[] weights;
  private final double[][] frequencies;

  private FrequencyGrid(double[] weights, double[][] frequencies) {
    this.weights = weights;
    this.frequencies = frequencies;
  }

  /** The weight of each point; they sum to 1. */
  double[] weights() {
    return weights;
  }

  /** At each point the frequency of each allele; they sum to 1. */
  double[][] frequencies() {
    return frequencies;
  }

  /** How many points it takes for so many draws, allele by allele. */
  static double fine(int alleles, int draws) {
    return Math.pow(Math.max(2, enough(draws)), alleles - 1.0);
  }

  private static int enough(int draws) {
    return Math.min(draws / 2 + 1, (int) Math.ceil(4 * Math.sqrt(draws)));
  }

  /**
   * For a locus.
   *
   * @param alleles how many it has, 2 or more
   * @param draws how many of them are drawn by the founders of the taxon
   * @param most at most so many points
   */
  static FrequencyGrid of(int alleles, int draws, int most) {
    int steps = alleles - 1;
    int each = Math.max(2, Math.min(enough(draws), most));
    while (each > 2 && Math.pow(each, steps) > Math.min(most, MOST_POINTS)) {
      each--;
    }
    if (Math.pow(each, steps) > MOST_POINTS) {
      // So many alleles that even two points each are past counting: all alike.
      double[] alike = new double[alleles];
      Arrays.fill(alike, 1.0 / alleles);
      return new FrequencyGrid(new double[] {1}, new double[][] {alike});
    }
    List<double[]> points = new ArrayList<>(List.of(new double[alleles + 1]));
    points.get(0)[alleles] = 1; // the last place keeps the weight
    for (int step = 0; step < steps; step++) {
      double[][] rule = beta(each, 0.5, (steps - step) / 2.0);
      List<double[]> next = new ArrayList<>();
      for (double[] point : points) {
        double left = 1;
        for (int i = 0; i < step; i++) {
          left -= point[i];
        }
        for (int i = 0; i < each; i++) {
          double[] more = point.clone();
          more[step] = Math.max(0, left) * rule[0][i];
          more[alleles] *= rule[1][i];
          next.add(more);
        }
      }
      points = next;
    }
    double[] weights = new double[points.size()];
    double[][] frequencies = new double[points.size()][alleles];
    for (int p = 0; p < weights.length; p++) {
      double left = 1;
      for (int i = 0; i < steps; i++) {
        frequencies[p][i] = points.get(p)[i];
        left -= points.get(p)[i];
      }
      frequencies[p][steps] = Math.max(0, left);
      weights[p] = points.get(p)[alleles];
    }
    return new FrequencyGrid(weights, frequencies);
  }

  /**
   * Points and weights of the Gauss rule of a beta distribution, by the recursion of its Jacobi
   * polynomials.
   */
  private static double[][] beta(int points, double a, double b) {
    // On [-1, 1] the weight is (1-x)^alpha (1+x)^beta with alpha = b - 1, beta = a - 1.
    double alpha = b - 1;
    double beta = a - 1;
    double[][] jacobi = new double[points][points];
    for (int n = 0; n < points; n++) {
      double s = 2 * n + alpha + beta;
      jacobi[n][n] =
          n == 0
              ? (beta - alpha) / (alpha + beta + 2)
              : (beta * beta - alpha * alpha) / (s * (s + 2));
      if (n > 0) {
        double square =
            n == 1
                ? 4 * (1 + alpha) * (1 + beta) / ((alpha + beta + 2) * (alpha + beta + 2) * (s + 1))
                : 4.0
                    * n
                    * (n + alpha)
                    * (n + beta)
                    * (n + alpha + beta)
                    / (s * s * (s + 1) * (s - 1));
        jacobi[n][n - 1] = Math.sqrt(square);
        jacobi[n - 1][n] = jacobi[n][n - 1];
      }
    }
    EigenDecomposition rule = new EigenDecomposition(new Array2DRowRealMatrix(jacobi));
    double[][] found = new double[2][points];
    double sum = 0;
    for (int i = 0; i < points; i++) {
      found[0][i] = (1 + rule.getRealEigenvalue(i)) / 2;
      double first = rule.getEigenvector(i).getEntry(0);
      found[1][i] = first * first;
      sum += found[1][i];
    }
    for (int i = 0; i < points; i++) {
      found[1][i] /= sum;
    }
    return found;
  }
}

package dev.filial.core.ancestry;

import java.util.Arrays;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * How tightly two positions drawn at random from a map are linked, as a Gauss rule.
 *
 * <p>Two loci d morgans apart stay together through one meiosis by the linkage value u = e^(−2d) =
 * 1 − 2r (Haldane). Whatever is asked of two loci through g meioses is a polynomial of degree at
 * most g in u, so its mean over all pairs of positions needs the weight of u over the map alone. A
 * Gauss rule of n nodes for that weight integrates every polynomial of degree 2n − 1 exactly, up to
 * rounding, whatever the chromosomes. Pairs on different chromosomes have u = 0, a node of its own.
 *
 * <p>Fewer do where g is large. A chance through g meioses is Σ b<sub>j</sub> C(g, j) r^j (1 −
 * r)^(g − j), the b<sub>j</sub> between 0 and 1: a mixture of binomial chances, too smooth in r to
 * need the whole degree. In terms of Chebyshev polynomials over the values that u takes on the
 * longest chromosome, of length l, those of order m fade like exp(−m²/2c), c = g(1 − e^(−2l))/2,
 * and past 8√c nothing is left that a double holds. So 4√c nodes and two more leave all
 * b<sub>j</sub> together within 1e-12.
 *
 * <p>The rule is made by the Lanczos process on a fine discretisation and the eigenvalues of the
 * resulting tridiagonal matrix (Golub and Welsch 1969; Gautschi 2004, Orthogonal Polynomials).
 */
final class PairsOnMap {

  /** The most nodes a rule has: enough for 400 meioses on chromosomes of any length. */
  private static final int MOST_NODES = 64;

  private static final int POINTS_OF_PANEL = 16;

  /** The narrowest panel, next to distance 0, where tight linkage changes fastest, in morgans. */
  private static final double NARROWEST = 1.0 / 256;

  private final double[] values;
  private final double[] weights;

  private PairsOnMap(double[] values, double[] weights) {
    this.values = values;
    this.weights = weights;
  }

  /**
   * A rule for chances at two loci through so many meioses, which it gives within 1e-12; past 400
   * of them less exactly, within 1e-8 for a thousand.
   */
  static PairsOnMap of(GeneticMap map, int meioses) {
    int nodes = Math.min(MOST_NODES, Math.min(meioses / 2 + 1, smooth(map, meioses)));
    Discrete fine = discretise(map);
    double[] diagonal = new double[nodes];
    double[] beside = new double[nodes];
    int made = lanczos(fine, diagonal, beside);
    EigenDecomposition eigen =
        new EigenDecomposition(
            Arrays.copyOf(diagonal, made), Arrays.copyOf(beside, Math.max(0, made - 1)));
    double[] values = new double[made + 1];
    double[] weights = new double[made + 1];
    weights[0] = 1 - fine.mass;
    for (int k = 0; k < made; k++) {
      double first = eigen.getEigenvector(k).getEntry(0);
      values[k + 1] = eigen.getRealEigenvalue(k);
      weights[k + 1] = fine.mass * first * first;
    }
    return new PairsOnMap(values, weights);
  }

  private static int smooth(GeneticMap map, int meioses) {
    double longest = 0;
    for (int i = 0; i < map.chromosomes(); i++) {
      longest = Math.max(longest, map.length(i));
    }
    return 2 + (int) Math.ceil(4 * Math.sqrt(meioses * -Math.expm1(-2 * longest) / 2));
  }

  /** How many nodes there are; unlinked pairs' comes first. */
  int size() {
    return values.length;
  }

  /** The linkage value of a node, 0 to 1. */
  double value(int node) {
    return values[node];
  }

  /** How much of all pairs a node stands for; all sum to 1. */
  double weight(int node) {
    return weights[node];
  }

  /** The weight of pairs on one chromosome as many points. */
  private static final class Discrete {
    double[] at = new double[256];
    double[] weight = new double[256];
    int size;
    double mass;

    void add(double u, double w) {
      if (size == at.length) {
        at = Arrays.copyOf(at, 2 * size);
        weight = Arrays.copyOf(weight, 2 * size);
      }
      at[size] = u;
      weight[size++] = w;
      mass += w;
    }
  }

  private static Discrete discretise(GeneticMap map) {
    Discrete fine = new Discrete();
    GaussIntegrator rule = new GaussIntegratorFactory().legendre(POINTS_OF_PANEL, -1, 1);
    double total = map.total();
    for (int i = 0, next; i < map.chromosomes(); i = next) {
      next = i + 1;
      double length = map.length(i);
      while (next < map.chromosomes() && map.length(next) == length) {
        next++;
      }
      addPairs(fine, rule, length, (next - i) * 2 / (total * total));
    }
    return fine;
  }

  /** Pairs at distance d on a chromosome of length l are l − d in number, on either side. */
  private static void addPairs(Discrete fine, GaussIntegrator rule, double length, double factor) {
    double to = length;
    while (to > 0) {
      double from = to > NARROWEST ? to / 2 : 0;
      double half = (to - from) / 2;
      for (int k = 0; k < rule.getNumberOfPoints(); k++) {
        double distance = from + half * (1 + rule.getPoint(k));
        fine.add(Math.exp(-2 * distance), factor * half * rule.getWeight(k) * (length - distance));
      }
      to = from;
    }
  }

  /** Fills the tridiagonal matrix; returns how many rows the weight gives before it is used up. */
  private static int lanczos(Discrete fine, double[] diagonal, double[] beside) {
    int n = fine.size;
    double[][] basis = new double[diagonal.length][];
    double[] now = new double[n];
    for (int i = 0; i < n; i++) {
      now[i] = Math.sqrt(fine.weight[i] / fine.mass);
    }
    for (int k = 0; k < diagonal.length; k++) {
      basis[k] = now;
      double[] next = new double[n];
      for (int i = 0; i < n; i++) {
        next[i] = fine.at[i] * now[i];
      }
      diagonal[k] = dot(next, now);
      // Against all before, twice: the plain three-term recurrence loses orthogonality.
      for (int again = 0; again < 2; again++) {
        for (int j = 0; j <= k; j++) {
          double part = dot(next, basis[j]);
          for (int i = 0; i < n; i++) {
            next[i] -= part * basis[j][i];
          }
        }
      }
      double norm = Math.sqrt(dot(next, next));
      if (norm < 1e-14) {
        return k + 1;
      }
      beside[k] = norm;
      for (int i = 0; i < n; i++) {
        next[i] /= norm;
      }
      now = next;
    }
    return diagonal.length;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}

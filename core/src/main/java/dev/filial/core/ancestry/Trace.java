package dev.filial.core.ancestry;

import java.util.Arrays;

/**
 * What share of a random allele of some genotypes is from each genotype behind them: one row, or a
 * sum of rows, of the matrix T of gene flow in A = T D Tᵀ (Henderson 1976, Biometrics 32:69-83).
 *
 * <p>The genotypes are gone through from the youngest to the oldest, each once, as Meuwissen and
 * Luo (1992, Genetics Selection Evolution 24:305-313) do; a bit for each genotype keeps the order.
 * Time is linear in the genotypes behind. Not to be shared between threads, and used over and over.
 */
final class Trace {

  private final GeneFlow flow;
  private final double[] open;
  private final long[] bits;
  private int top = -1;
  private int[] found = new int[64];
  private double[] parts = new double[64];
  private int count;

  Trace(GeneFlow flow) {
    this.flow = flow;
    open = new double[flow.size()];
    bits = new long[(flow.size() >> 6) + 1];
  }

  /** Adds a genotype to start from; {@link GeneFlow#UNKNOWN} adds nothing. */
  void add(int node, double weight) {
    if (node >= 0) {
      open[node] += weight;
      int word = node >> 6;
      bits[word] |= 1L << node;
      top = Math.max(top, word);
    }
  }

  /** Adds what the parents of a genotype gave it. */
  void addParents(int node, double weight) {
    if (flow.isPlain(node)) {
      // Nearly all are, and without a lambda it is faster.
      add(flow.seed(node), 0.5 * weight);
      add(flow.pollen(node), 0.5 * weight);
      return;
    }
    flow.eachParent(node, (parent, share) -> add(parent, weight * share));
  }

  /** Goes from what was added back to the founders. */
  void run() {
    count = 0;
    for (int word = top; word >= 0; word--) {
      while (bits[word] != 0) {
        int bit = 63 - Long.numberOfLeadingZeros(bits[word]);
        bits[word] ^= 1L << bit;
        int node = (word << 6) + bit;
        double weight = open[node];
        open[node] = 0;
        if (count == found.length) {
          found = Arrays.copyOf(found, 2 * count);
          parts = Arrays.copyOf(parts, 2 * count);
        }
        found[count] = node;
        parts[count++] = weight;
        addParents(node, weight);
      }
    }
    top = -1;
  }

  /** How many genotypes the last run met. */
  int count() {
    return count;
  }

  /** The {@code k}-th genotype met, the youngest first. */
  int node(int k) {
    return found[k];
  }

  /** The share of the {@code k}-th genotype met. */
  double part(int k) {
    return parts[k];
  }

  /** The sum of squared shares, each times the value of its genotype. */
  double quadratic(double[] values) {
    double sum = 0;
    for (int k = 0; k < count; k++) {
      sum += parts[k] * parts[k] * values[found[k]];
    }
    return sum;
  }
}

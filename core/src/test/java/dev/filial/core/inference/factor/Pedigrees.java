package dev.filial.core.inference.factor;

import java.util.SplittableRandom;

/** Graphs of the shape of pedigrees: one gene of two alleles, and plants with two parents. */
final class Pedigrees {

  /** States 0, 1, 2: how many of the one allele. Dimensions: parent, parent, offspring. */
  private static final double[] MENDEL = mendel();

  private static final double[] FOUNDER = {0.25, 0.5, 0.25};

  private Pedigrees() {}

  private static double[] mendel() {
    double[] table = new double[27];
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        double p = a / 2.0;
        double q = b / 2.0;
        table[(a * 3 + b) * 3] = (1 - p) * (1 - q);
        table[(a * 3 + b) * 3 + 1] = p * (1 - q) + q * (1 - p);
        table[(a * 3 + b) * 3 + 2] = p * q;
      }
    }
    return table;
  }

  static int founder(FactorGraph.Builder builder) {
    int plant = builder.variable(3);
    builder.factor(new int[] {plant}, FOUNDER);
    return plant;
  }

  static int offspring(FactorGraph.Builder builder, int seed, int pollen) {
    int plant = builder.variable(3);
    builder.factor(new int[] {seed, pollen, plant}, MENDEL);
    return plant;
  }

  /** The recessive or the dominant is seen, and once in a while wrongly. */
  static void seen(FactorGraph.Builder builder, int plant, boolean recessive, double error) {
    double dominant = recessive ? error : 1 - error;
    builder.factor(new int[] {plant}, new double[] {dominant, dominant, 1 - dominant});
  }

  /** Generations of plants whose parents are any two of the generation before; some are seen. */
  static FactorGraph random(int generations, int plants, double error, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    FactorGraph.Builder builder = FactorGraph.builder();
    int[] parents = new int[plants];
    for (int i = 0; i < plants; i++) {
      parents[i] = founder(builder);
    }
    for (int g = 0; g < generations; g++) {
      int[] next = new int[plants];
      for (int i = 0; i < plants; i++) {
        int one = random.nextInt(plants);
        int other = (one + 1 + random.nextInt(plants - 1)) % plants;
        next[i] = offspring(builder, parents[one], parents[other]);
        if (random.nextInt(3) == 0) {
          seen(builder, next[i], random.nextInt(4) == 0, error);
        }
      }
      parents = next;
    }
    return builder.build();
  }

  /** Every one of some parents crossed with every other, and one seen offspring of each cross. */
  static FactorGraph halfDiallel(int parents, double error, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    FactorGraph.Builder builder = FactorGraph.builder();
    int[] plants = new int[parents];
    for (int i = 0; i < parents; i++) {
      plants[i] = founder(builder);
    }
    for (int i = 0; i < parents; i++) {
      for (int j = 0; j < i; j++) {
        seen(builder, offspring(builder, plants[i], plants[j]), random.nextBoolean(), error);
      }
    }
    return builder.build();
  }
}

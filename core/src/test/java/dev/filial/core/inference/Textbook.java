package dev.filial.core.inference;

import java.util.Map;

/**
 * How genes are handed on, in the terms in which a textbook says it: by counting copies and writing
 * out gametes. Nothing here is taken from the library. Each kind has the trait "tips", of which red
 * is dominant (T) and plain is not (t); the linked one has also "wax", waxed (W) or bare (w).
 */
interface Textbook {

  int genotypes();

  /** The chance of each gamete of a plant. */
  double[] gametes(int genotype, boolean pollen);

  int joined(int egg, int grain);

  /** The chance of each gamete of some plant of a population with so much of each dominant. */
  double[] drawn(double[] dominant, boolean pollen);

  /** As the library writes it. */
  String text(int genotype);

  /** Whether a plant has the dominant allele of a trait. */
  boolean hasDominant(String trait, int genotype);

  /** Whether founders can be inbred: one gamete twice. */
  default boolean inbreeds() {
    return false;
  }

  /** A diploid's one locus; genotypes and gametes by their copies of t. */
  Textbook DIPLOID =
      new Textbook() {
        @Override
        public int genotypes() {
          return 3;
        }

        @Override
        public double[] gametes(int genotype, boolean pollen) {
          return new double[] {1 - genotype / 2.0, genotype / 2.0};
        }

        @Override
        public int joined(int egg, int grain) {
          return egg + grain;
        }

        @Override
        public double[] drawn(double[] dominant, boolean pollen) {
          return new double[] {dominant[0], 1 - dominant[0]};
        }

        @Override
        public String text(int genotype) {
          return new String[] {"TT", "Tt", "tt"}[genotype];
        }

        @Override
        public boolean hasDominant(String trait, int genotype) {
          return genotype < 2;
        }

        @Override
        public boolean inbreeds() {
          return true;
        }
      };

  /** A gene of the cytoplasm: a plant has its seed parent's. */
  Textbook CYTOPLASM =
      new Textbook() {
        @Override
        public int genotypes() {
          return 2;
        }

        @Override
        public double[] gametes(int genotype, boolean pollen) {
          if (pollen) {
            return new double[] {1};
          }
          return genotype == 0 ? new double[] {1, 0} : new double[] {0, 1};
        }

        @Override
        public int joined(int egg, int grain) {
          return egg;
        }

        @Override
        public double[] drawn(double[] dominant, boolean pollen) {
          return pollen ? new double[] {1} : new double[] {dominant[0], 1 - dominant[0]};
        }

        @Override
        public String text(int genotype) {
          return genotype == 0 ? "T" : "t";
        }

        @Override
        public boolean hasDominant(String trait, int genotype) {
          return genotype == 0;
        }
      };

  /**
   * An autotetraploid's one locus, by copies of t. A gamete has two alleles: with the chance of
   * double reduction one of the four twice, and else two different ones of the four, all pairs
   * alike.
   */
  static Textbook tetraploid(double doubleReduction) {
    return new Textbook() {
      @Override
      public int genotypes() {
        return 5;
      }

      @Override
      public double[] gametes(int genotype, boolean pollen) {
        double[] chances = new double[3];
        for (int one = 0; one < 4; one++) {
          int first = one < genotype ? 1 : 0;
          chances[2 * first] += doubleReduction / 4;
          for (int other = 0; other < 4; other++) {
            if (other != one) {
              chances[first + (other < genotype ? 1 : 0)] += (1 - doubleReduction) / 12;
            }
          }
        }
        return chances;
      }

      @Override
      public int joined(int egg, int grain) {
        return egg + grain;
      }

      @Override
      public double[] drawn(double[] dominant, boolean pollen) {
        double p = dominant[0];
        return new double[] {p * p, 2 * p * (1 - p), (1 - p) * (1 - p)};
      }

      @Override
      public String text(int genotype) {
        return "T".repeat(4 - genotype) + "t".repeat(genotype);
      }

      @Override
      public boolean hasDominant(String trait, int genotype) {
        return genotype < 4;
      }
    };
  }

  /**
   * Two linked loci of a diploid with phase. Gametes are TW, Tw, tW and tw; a genotype is one of
   * the ten pairs of them.
   */
  static Textbook linked(double recombination) {
    String[] haplotypes = {"TW", "Tw", "tW", "tw"};
    int[][] number = new int[4][4];
    int[][] pair = new int[10][];
    int count = 0;
    for (int i = 0; i < 4; i++) {
      for (int j = i; j < 4; j++) {
        number[i][j] = count;
        number[j][i] = count;
        pair[count++] = new int[] {i, j};
      }
    }
    return new Textbook() {
      @Override
      public int genotypes() {
        return 10;
      }

      @Override
      public double[] gametes(int genotype, boolean pollen) {
        int one = pair[genotype][0];
        int other = pair[genotype][1];
        double[] chances = new double[4];
        chances[one] += (1 - recombination) / 2;
        chances[other] += (1 - recombination) / 2;
        // Recombined: tips of the one with wax of the other.
        chances[one / 2 * 2 + other % 2] += recombination / 2;
        chances[other / 2 * 2 + one % 2] += recombination / 2;
        return chances;
      }

      @Override
      public int joined(int egg, int grain) {
        return number[egg][grain];
      }

      @Override
      public double[] drawn(double[] dominant, boolean pollen) {
        double t = dominant[0];
        double w = dominant[1];
        return new double[] {t * w, t * (1 - w), (1 - t) * w, (1 - t) * (1 - w)};
      }

      @Override
      public String text(int genotype) {
        return haplotypes[pair[genotype][0]] + "/" + haplotypes[pair[genotype][1]];
      }

      @Override
      public boolean hasDominant(String trait, int genotype) {
        String allele = Map.of("tips", "T", "wax", "W").get(trait);
        return text(genotype).contains(allele);
      }

      @Override
      public boolean inbreeds() {
        return true;
      }
    };
  }
}

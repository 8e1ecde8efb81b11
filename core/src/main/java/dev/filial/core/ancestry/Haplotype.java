package dev.filial.core.ancestry;

import java.util.Arrays;

/**
 * One set of chromosomes end to end: stretches of one taxon each, by where they end on the map, in
 * morgans. Mutable, for one thread.
 */
final class Haplotype {

  double[] end;
  int[] taxon;
  int size;

  Haplotype() {
    end = new double[32];
    taxon = new int[32];
  }

  /** A set wholly of one taxon. */
  static Haplotype whole(int taxon, double total) {
    Haplotype whole = new Haplotype();
    whole.add(total, taxon);
    return whole;
  }

  void clear() {
    size = 0;
  }

  /** Goes on to a place with a taxon. */
  void add(double to, int its) {
    if (size > 0 && taxon[size - 1] == its) {
      end[size - 1] = to;
      return;
    }
    if (size == end.length) {
      end = Arrays.copyOf(end, 2 * size);
      taxon = Arrays.copyOf(taxon, 2 * size);
    }
    end[size] = to;
    taxon[size++] = its;
  }

  /** Whether it is of one taxon from end to end. */
  boolean isWhole() {
    return size == 1;
  }
}

package dev.filial.core.heredity;

import java.util.Arrays;

/**
 * The homologous chromosomes of one linkage group in a plant or a gamete, packed into a number: up
 * to four haplotypes of thirteen bits each, in rising order, so that equal sets are equal numbers.
 *
 * <p>Of a plant whose two subgenomes do not pair, a further bit says so; the first half is then one
 * subgenome and the second the other, each in rising order.
 */
final class Homologs {

  private static final int BITS = 13;
  private static final long MASK = (1L << BITS) - 1;
  private static final long APART = 1L << (4 * BITS);

  /** More chromosome sets than these are not reckoned with. */
  static final int MOST = 4;

  private Homologs() {}

  static long of(int... haplotypes) {
    int[] sorted = haplotypes.clone();
    Arrays.sort(sorted);
    return pack(sorted);
  }

  /** Of two subgenomes, half of the haplotypes each. */
  static long apart(int... haplotypes) {
    int[] sorted = haplotypes.clone();
    Arrays.sort(sorted, 0, sorted.length / 2);
    Arrays.sort(sorted, sorted.length / 2, sorted.length);
    return pack(sorted) | APART;
  }

  private static long pack(int[] haplotypes) {
    if (haplotypes.length > MOST) {
      throw new IllegalArgumentException(
          "a plant of " + haplotypes.length + " chromosome sets; odds are reckoned for 2, 3 and 4");
    }
    long packed = 0;
    for (int i = haplotypes.length - 1; i >= 0; i--) {
      packed = packed << BITS | (haplotypes[i] + 1);
    }
    return packed;
  }

  static boolean areApart(long packed) {
    return (packed & APART) != 0;
  }

  static int count(long packed) {
    long rest = packed & ~APART;
    return rest == 0 ? 0 : (63 - Long.numberOfLeadingZeros(rest)) / BITS + 1;
  }

  static int at(long packed, int place) {
    return (int) (packed >>> (place * BITS) & MASK) - 1;
  }

  static int[] all(long packed) {
    int[] haplotypes = new int[count(packed)];
    for (int i = 0; i < haplotypes.length; i++) {
      haplotypes[i] = at(packed, i);
    }
    return haplotypes;
  }

  /** An egg's and a pollen grain's chromosomes together. */
  static long join(long egg, long pollen) {
    int eggs = count(egg);
    int grains = count(pollen);
    boolean apart = areApart(egg) && areApart(pollen);
    int[] both = new int[eggs + grains];
    if (apart) {
      for (int i = 0; i < eggs; i++) {
        // First the halves that pair with each other, then the other halves.
        both[i < eggs / 2 ? i : grains / 2 + i] = at(egg, i);
      }
      for (int i = 0; i < grains; i++) {
        both[i < grains / 2 ? eggs / 2 + i : eggs + i] = at(pollen, i);
      }
      return apart(both);
    }
    for (int i = 0; i < eggs; i++) {
      both[i] = at(egg, i);
    }
    for (int i = 0; i < grains; i++) {
      both[eggs + i] = at(pollen, i);
    }
    return of(both);
  }
}

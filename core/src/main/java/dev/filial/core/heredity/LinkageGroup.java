package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Loci of one chromosome in their order, and how often neighbours recombine. A locus that is linked
 * to none of the others is a group of its own.
 *
 * <p>Recombination in one interval is taken not to influence that in the next (no interference), so
 * that loci further apart recombine by r = r₁ + r₂ − 2r₁r₂.
 *
 * @param loci the loci in order
 * @param recombination the share of gametes recombined between each locus and the next, 0 to ½; one
 *     fewer than there are loci
 * @param exact whether these were stated and not worked out of map distances
 */
public record LinkageGroup(List<Locus> loci, List<Fraction> recombination, boolean exact) {

  /** Gametes of a group are numbered; so many fit. */
  private static final int MOST_HAPLOTYPES = 8000;

  /**
   * Checks that the parts fit each other.
   *
   * @throws IllegalArgumentException if there is no locus, a recombination lies outside 0 to ½ or
   *     there are too few or too many, a cytoplasmic locus is linked, or the group has more
   *     possible gametes than can be numbered
   */
  public LinkageGroup {
    loci = List.copyOf(loci);
    recombination = List.copyOf(recombination);
    if (loci.isEmpty() || recombination.size() != loci.size() - 1) {
      throw new IllegalArgumentException(
          loci.size()
              + " genes of one chromosome with "
              + recombination.size()
              + " recombinations; there is one between each gene and the next");
    }
    for (int i = 0; i < recombination.size(); i++) {
      requireRecombination(
          loci.get(i).name() + " and " + loci.get(i + 1).name(), recombination.get(i));
    }
    long haplotypes = 1;
    for (Locus locus : loci) {
      if (locus.isCytoplasmic() && loci.size() > 1) {
        throw new IllegalArgumentException(
            "the gene "
                + locus.name()
                + " sits in the cytoplasm, and cannot be linked to genes of a chromosome");
      }
      haplotypes *= locus.alleles().size();
      if (haplotypes > MOST_HAPLOTYPES) {
        throw new IllegalArgumentException(
            "the linked genes "
                + String.join(", ", loci.stream().map(Locus::name).toList())
                + " can form more than "
                + MOST_HAPLOTYPES
                + " kinds of gametes, which is past what is computed; leave out a gene or some"
                + " alleles");
      }
    }
  }

  /** A locus linked to no other. */
  public static LinkageGroup of(Locus locus) {
    return new LinkageGroup(List.of(locus), List.of(), true);
  }

  /** Two loci and their recombination. */
  public static LinkageGroup of(Locus one, Fraction recombination, Locus other) {
    return new LinkageGroup(List.of(one, other), List.of(recombination), true);
  }

  /**
   * A locus and where it lies.
   *
   * @param locus the locus
   * @param centimorgans its distance from the end of the group
   */
  public record Placed(Locus locus, BigDecimal centimorgans) {}

  /**
   * Loci by their places on the map.
   *
   * @throws IllegalArgumentException if there are none, or as the constructor
   */
  public static LinkageGroup mapped(MapFunction function, List<Placed> placed) {
    List<Placed> inOrder = new ArrayList<>(placed);
    inOrder.sort(Comparator.comparing(Placed::centimorgans));
    List<Locus> loci = new ArrayList<>();
    List<Fraction> recombination = new ArrayList<>();
    for (int i = 0; i < inOrder.size(); i++) {
      loci.add(inOrder.get(i).locus());
      if (i > 0) {
        BigDecimal apart =
            inOrder.get(i).centimorgans().subtract(inOrder.get(i - 1).centimorgans());
        double ratio = function.recombination(apart.doubleValue() / 100);
        recombination.add(Fraction.parse(new BigDecimal(ratio).toPlainString()));
      }
    }
    return new LinkageGroup(loci, recombination, loci.size() < 2);
  }

  static void requireRecombination(String between, Fraction ratio) {
    if (ratio.signum() < 0 || ratio.compareTo(Fraction.HALF) > 0) {
      throw new IllegalArgumentException(
          "a recombination of "
              + ratio
              + " between "
              + between
              + "; it lies between 0 and 1/2, which is no linkage");
    }
  }

  /**
   * The group with only these of its loci, recombination adding up over those left out.
   *
   * @throws IllegalArgumentException if none is left
   */
  public LinkageGroup only(List<Locus> kept) {
    List<Locus> left = new ArrayList<>();
    List<Fraction> between = new ArrayList<>();
    Fraction since = Fraction.ZERO;
    for (int i = 0; i < loci.size(); i++) {
      if (i > 0) {
        since = compose(since, recombination.get(i - 1));
      }
      if (kept.contains(loci.get(i))) {
        if (!left.isEmpty()) {
          between.add(since);
        }
        left.add(loci.get(i));
        since = Fraction.ZERO;
      }
    }
    return new LinkageGroup(left, between, exact || left.size() < 2);
  }

  /** Recombined over two intervals: in one of them, but not in both. */
  private static Fraction compose(Fraction one, Fraction other) {
    return one.plus(other).minus(Fraction.of(2).times(one).times(other));
  }

  /** How many kinds of gametes its loci can form. */
  int haplotypes() {
    int product = 1;
    for (Locus locus : loci) {
      product *= locus.alleles().size();
    }
    return product;
  }

  /** The allele that a haplotype carries at the locus of that place in the group. */
  int allele(int haplotype, int place) {
    int rest = haplotype;
    for (int i = loci.size() - 1; i > place; i--) {
      rest /= loci.get(i).alleles().size();
    }
    return rest % loci.get(place).alleles().size();
  }

  /** The haplotype with these alleles, one a locus. */
  int haplotype(int[] alleles) {
    int code = 0;
    for (int i = 0; i < alleles.length; i++) {
      code = code * loci.get(i).alleles().size() + alleles[i];
    }
    return code;
  }

  /** The alleles of a haplotype: {@code Ab}, or {@code S1.b} where one has several characters. */
  String text(int haplotype) {
    List<String> symbols = new ArrayList<>();
    for (int i = 0; i < loci.size(); i++) {
      symbols.add(loci.get(i).alleles().get(allele(haplotype, i)));
    }
    boolean shortOnes = symbols.stream().allMatch(symbol -> symbol.length() == 1);
    return String.join(shortOnes ? "" : ".", symbols);
  }
}

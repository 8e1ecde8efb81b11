package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Segregation distortion: gametes with one allele take part more often than those with another of
 * the same plant. A plant that is homozygous at the locus hands its allele on whatever the weight.
 *
 * @param locus the locus
 * @param side whose gametes are concerned
 * @param weights how much a gamete with each allele counts, 0 or more; only their ratio matters,
 *     and an allele that is not named counts 1
 */
public record Distortion(Locus locus, Side side, Map<String, Fraction> weights) {

  /** Whose gametes. */
  public enum Side {
    /** Those of the seed parent. */
    EGGS,
    /** Those of the pollen parent. */
    POLLEN,
    /** Both. */
    BOTH
  }

  /**
   * Checks the weights.
   *
   * @throws IllegalArgumentException if the locus lacks an allele, a weight is below 0, all are 0,
   *     or the locus sits in the cytoplasm
   */
  public Distortion {
    Objects.requireNonNull(locus, "locus");
    Objects.requireNonNull(side, "side");
    weights = Collections.unmodifiableMap(new LinkedHashMap<>(weights));
    if (locus.isCytoplasmic()) {
      throw new IllegalArgumentException(
          "the gene " + locus.name() + " sits in the cytoplasm and does not segregate");
    }
    boolean all = true;
    for (String allele : locus.alleles()) {
      Fraction weight = weights.getOrDefault(allele, Fraction.ONE);
      all &= weight.isZero();
    }
    weights.forEach(
        (allele, weight) -> {
          if (locus.index(allele) >= 0 && weight.signum() < 0) {
            throw new IllegalArgumentException(
                "gametes with "
                    + allele
                    + " count "
                    + weight
                    + "; a weight is 0 or more, and 1 is no distortion");
          }
        });
    if (all) {
      throw new IllegalArgumentException(
          "no allele of the gene " + locus.name() + " is handed on at all; leave one above 0");
    }
  }

  /**
   * In gametes of a heterozygote the allele is found in that share instead of in half.
   *
   * @param share 0 to 1
   * @throws IllegalArgumentException if it is not, or the locus has not just two alleles
   */
  public static Distortion share(Locus locus, Side side, String allele, Fraction share) {
    locus.index(allele);
    if (locus.alleles().size() != 2) {
      throw new IllegalArgumentException(
          "the gene "
              + locus.name()
              + " has more than two alleles; give a weight for each that is favoured");
    }
    if (share.signum() < 0 || share.compareTo(Fraction.ONE) > 0) {
      throw new IllegalArgumentException(
          "a share of " + share + " of the gametes with " + allele + "; it lies between 0 and 1");
    }
    String other = locus.alleles().get(1 - locus.index(allele));
    return new Distortion(locus, side, Map.of(allele, share, other, Fraction.ONE.minus(share)));
  }

  Fraction weight(int allele) {
    return weights.getOrDefault(locus.alleles().get(allele), Fraction.ONE);
  }

  boolean touches(boolean pollen) {
    return side == Side.BOTH || (side == Side.POLLEN) == pollen;
  }
}

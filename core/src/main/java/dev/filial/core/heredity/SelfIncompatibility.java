package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Objects;

/**
 * Gametophytic self-incompatibility: a pollen grain fails on a style that carries the grain's own
 * allele (East and Mangelsdorf 1925, Proceedings of the National Academy of Sciences 11:166-171).
 *
 * @param locus the S locus
 * @param leak how often such a grain comes through all the same, against one that is not refused; 0
 *     to 1
 * @param selfFertile alleles that no style refuses
 */
public record SelfIncompatibility(Locus locus, Fraction leak, List<String> selfFertile) {

  /** What comes through where nothing is stated: one grain in a hundred. A rule, no source. */
  public static final Fraction USUAL_LEAK = Fraction.of(1, 100);

  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if the leak lies outside 0 to 1, an allele is not of the
   *     locus, or the locus sits in the cytoplasm
   */
  public SelfIncompatibility {
    Objects.requireNonNull(locus, "locus");
    selfFertile = List.copyOf(selfFertile);
    selfFertile.forEach(locus::index);
    if (leak.signum() < 0 || leak.compareTo(Fraction.ONE) > 0) {
      throw new IllegalArgumentException(
          "a leak of " + leak + " at " + locus.name() + "; it lies between 0 and 1");
    }
    if (locus.isCytoplasmic()) {
      throw new IllegalArgumentException(
          "the S locus " + locus.name() + " lies on a chromosome, not in the cytoplasm");
    }
  }

  /** Of that locus, with the usual leak. */
  public static SelfIncompatibility of(Locus locus) {
    return new SelfIncompatibility(locus, USUAL_LEAK, List.of());
  }

  /** The same with another leak. */
  public SelfIncompatibility withLeak(Fraction other) {
    return new SelfIncompatibility(locus, other, selfFertile);
  }

  boolean isSelfFertile(int allele) {
    return selfFertile.contains(locus.alleles().get(allele));
  }
}

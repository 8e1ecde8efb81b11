package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;

/**
 * Whether one plant can set seed with another's pollen, by their S alleles.
 *
 * @param verdict in short
 * @param working the share of the pollen parent's grains that no style of the seed parent refuses,
 *     0 to 1
 * @param effective the share that takes part all the same, the leak counted in; 0 to 1
 */
public record Compatibility(Verdict verdict, Fraction working, Fraction effective) {

  /** How much of the pollen works. */
  public enum Verdict {
    /** All of it. */
    ALL,
    /** Some of it, as half between plants with one S allele in common. */
    SOME,
    /** None, save what leaks. */
    NONE
  }

  /**
   * Of two diploids.
   *
   * @throws IllegalArgumentException if they are of different genomes, the genome has no S locus,
   *     or one is no diploid
   */
  public static Compatibility of(Genotype seed, Genotype pollen) {
    Genome genome = seed.genome();
    SelfIncompatibility refusing =
        genome
            .selfIncompatibility()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "no S locus is among the genes; without one all pollen works"));
    if (genome != pollen.genome()) {
      throw new IllegalArgumentException("the two genotypes were read for different genes");
    }
    if (seed.ploidy() != 2 || pollen.ploidy() != 2) {
      throw new IllegalArgumentException(
          "the S locus is reckoned with between diploids; in polyploids pollen of two different S"
              + " alleles may work on any style");
    }
    int group = genome.place(refusing.locus()).group();
    LinkageGroup linked = genome.groups().get(group);
    Masses<Long> grains = Gametes.of(genome, group, Parent.of(pollen), true);
    BigInteger working = BigInteger.ZERO;
    for (long grain : grains.masses().keySet()) {
      if (!Gametes.isRefused(genome, linked, grain, seed.homologs(group), refusing)) {
        working = working.add(grains.masses().get(grain));
      }
    }
    Fraction share = new Fraction(working, grains.total());
    Verdict verdict = share.isOne() ? Verdict.ALL : share.isZero() ? Verdict.NONE : Verdict.SOME;
    return new Compatibility(
        verdict, share, share.plus(Fraction.ONE.minus(share).times(refusing.leak())));
  }
}

package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** One of the two parents of a cross. */
public sealed interface Parent {

  /**
   * A plant whose genotype is known.
   *
   * @param genotype what it carries
   * @param meiosis how it forms its gametes
   */
  record Plant(Genotype genotype, Meiosis meiosis) implements Parent {
    /** Checks that both were given. */
    public Plant {
      Objects.requireNonNull(genotype, "genotype");
      Objects.requireNonNull(meiosis, "meiosis");
    }
  }

  /**
   * Some diploid plant of a taxon, of which only the frequencies of the alleles are known. Loci are
   * independent of each other in it.
   *
   * @param frequencies the frequency of each allele by locus name and symbol; they sum to 1 at each
   *     locus
   */
  record OfTaxon(Map<String, Map<String, Fraction>> frequencies) implements Parent {
    /**
     * Checks the frequencies.
     *
     * @throws IllegalArgumentException if one is below 0, or they do not sum to 1 at a locus
     */
    public OfTaxon {
      Map<String, Map<String, Fraction>> copy = new LinkedHashMap<>();
      frequencies.forEach(
          (locus, alleles) -> {
            Fraction sum = Fraction.ZERO;
            for (Map.Entry<String, Fraction> allele : alleles.entrySet()) {
              if (allele.getValue().signum() < 0) {
                throw new IllegalArgumentException(
                    "a frequency of "
                        + allele.getValue()
                        + " of "
                        + allele.getKey()
                        + "; it lies between 0 and 1");
              }
              sum = sum.plus(allele.getValue());
            }
            if (!sum.isOne()) {
              throw new IllegalArgumentException(
                  "the frequencies of the alleles of the gene "
                      + locus
                      + (alleles.isEmpty() ? "" : " (" + String.join(", ", alleles.keySet()) + ")")
                      + " come to "
                      + sum
                      + "; together they are 1");
            }
            copy.put(locus, Collections.unmodifiableMap(new LinkedHashMap<>(alleles)));
          });
      frequencies = Collections.unmodifiableMap(copy);
    }
  }

  /** A plant that forms its gametes as diploids do. */
  static Parent of(Genotype genotype) {
    return new Plant(genotype, Meiosis.REDUCED);
  }

  /** A plant that forms its gametes in that way. */
  static Parent of(Genotype genotype, Meiosis meiosis) {
    return new Plant(genotype, meiosis);
  }
}

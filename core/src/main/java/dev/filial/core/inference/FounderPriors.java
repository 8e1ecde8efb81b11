package dev.filial.core.inference;

import dev.filial.core.heredity.Parent;
import dev.filial.core.number.Fraction;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What is known of the plants of each taxon before any plant was looked at. Immutable.
 *
 * <p>A frequency that is not stated is an unknown which all founders of the taxon share: Beta(½, ½)
 * for two alleles (Jeffreys 1946, Proceedings of the Royal Society A 186:453-461), Dirichlet(½, …)
 * for more. Plants of which no taxon is known share one such unknown too.
 */
public final class FounderPriors {

  /** The taxon of plants of which none is known. */
  public static final String UNKNOWN = "";

  /** The taxon of plants whose records are not believed: nothing can be stated of it. */
  static final String DOUBTED = "?";

  private final Map<String, Map<String, Map<String, Fraction>>> frequencies;
  private final Map<String, Fraction> inbreeding;

  private FounderPriors(
      Map<String, Map<String, Map<String, Fraction>>> frequencies,
      Map<String, Fraction> inbreeding) {
    this.frequencies = frequencies;
    this.inbreeding = inbreeding;
  }

  /** Nothing is known of any taxon. */
  public static FounderPriors none() {
    return new FounderPriors(Map.of(), Map.of());
  }

  /**
   * The same, with the frequencies of the alleles of a locus in a taxon stated.
   *
   * @param taxon its name, or {@link #UNKNOWN} for plants of which no taxon is known
   * @param alleles the frequency of each allele, 0 to 1; those not named are not found in it
   * @throws IllegalArgumentException if they do not sum to 1
   */
  public FounderPriors withFrequencies(String taxon, String locus, Map<String, Fraction> alleles) {
    new Parent.OfTaxon(Map.of(locus, alleles));
    Map<String, Map<String, Map<String, Fraction>>> all = new HashMap<>(frequencies);
    Map<String, Map<String, Fraction>> its = new HashMap<>(all.getOrDefault(taxon, Map.of()));
    its.put(locus, new LinkedHashMap<>(alleles));
    all.put(taxon, its);
    return new FounderPriors(all, inbreeding);
  }

  /**
   * The same, with plants of the taxon inbred: both alleles of a diploid are copies of one with
   * this chance, and else two draws.
   *
   * @param coefficient 0 to 1
   * @throws IllegalArgumentException if it is not
   */
  public FounderPriors withInbreeding(String taxon, Fraction coefficient) {
    if (coefficient.signum() < 0 || coefficient.compareTo(Fraction.ONE) > 0) {
      throw new IllegalArgumentException(
          "an inbreeding coefficient of " + coefficient + "; it lies between 0 and 1");
    }
    Map<String, Fraction> all = new HashMap<>(inbreeding);
    all.put(taxon, coefficient);
    return new FounderPriors(frequencies, all);
  }

  /** The stated frequencies of a locus in a taxon; empty if none are. */
  public Optional<Map<String, Fraction>> frequencies(String taxon, String locus) {
    return Optional.ofNullable(frequencies.getOrDefault(taxon, Map.of()).get(locus));
  }

  /** The inbreeding coefficient of plants of a taxon; 0 where none is stated. */
  public Fraction inbreeding(String taxon) {
    return inbreeding.getOrDefault(taxon, Fraction.ZERO);
  }
}

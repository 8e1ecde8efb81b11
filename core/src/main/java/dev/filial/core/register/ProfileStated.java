package dev.filial.core.register;

import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Parent;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What plants of a taxon carry: how frequent each allele is among them, how the chromosomes of a
 * tetraploid one pair, and how long the chromosomes of a set are on the genetic map.
 *
 * @param taxon the taxon
 * @param frequencies how frequent the alleles are, by the name of the locus and the symbol of the
 *     allele; 1 for a fixed one
 * @param pairing how four sets pair, or null when not known
 * @param doubleReduction how often a gamete of four sets that pair freely carries one chromosome's
 *     allele twice, 0 to 1/6, or null when not known
 * @param chromosomes the lengths of the chromosomes of one set in centimorgans, in any order; empty
 *     when not known
 * @param remark anything else, or null
 */
public record ProfileStated(
    String taxon,
    Map<String, Map<String, Fraction>> frequencies,
    @Nullable Pairing pairing,
    @Nullable Fraction doubleReduction,
    List<BigDecimal> chromosomes,
    @Nullable String remark)
    implements Statement {

  /** How the chromosomes of a tetraploid pair. */
  public enum Pairing {
    /** Any with any of its four. */
    TETRASOMIC,
    /** Two and two, in subgenomes that keep apart. */
    DISOMIC
  }

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the name cannot be read, the frequencies at a locus do not
   *     sum to 1, double reduction or the length of a chromosome cannot be so, or nothing is said
   *     at all
   */
  public ProfileStated {
    Require.text("taxon", taxon);
    Subject.taxon(taxon);
    frequencies = new Parent.OfTaxon(frequencies).frequencies();
    frequencies.keySet().forEach(locus -> Require.text("frequencies", locus));
    Require.distinctLoci(frequencies.keySet());
    if (doubleReduction != null && pairing != Pairing.TETRASOMIC) {
      throw new IllegalArgumentException(
          "double reduction needs four chromosomes that pair freely; say that "
              + taxon
              + " is tetrasomic, or leave it out");
    }
    if (doubleReduction != null
        && (doubleReduction.signum() < 0
            || doubleReduction.compareTo(Meiosis.Tetrasomic.MOST) > 0)) {
      throw new IllegalArgumentException(
          "a double reduction of "
              + doubleReduction
              + "; it lies between 0 and "
              + Meiosis.Tetrasomic.MOST);
    }
    chromosomes = List.copyOf(chromosomes);
    chromosomes.forEach(length -> Require.measure("length of a chromosome", length));
    if (!chromosomes.isEmpty()) {
      GeneticMap.ofCentimorgans(chromosomes);
    }
    if (frequencies.isEmpty() && pairing == null && chromosomes.isEmpty()) {
      throw new IllegalArgumentException(
          "say how frequent an allele is in "
              + taxon
              + ", how its chromosomes pair, or how long they are");
    }
  }

  /**
   * A profile that says nothing of how long the chromosomes are.
   *
   * @throws IllegalArgumentException as the constructor of all
   */
  public ProfileStated(
      String taxon,
      Map<String, Map<String, Fraction>> frequencies,
      @Nullable Pairing pairing,
      @Nullable Fraction doubleReduction,
      @Nullable String remark) {
    this(taxon, frequencies, pairing, doubleReduction, List.of(), remark);
  }

  /**
   * A profile that says how long the chromosomes are, and nothing else.
   *
   * @throws IllegalArgumentException if the name cannot be read
   */
  public static ProfileStated ofMap(String taxon, GeneticMap map) {
    return new ProfileStated(taxon, Map.of(), null, null, map.centimorgans(), null);
  }

  /** The genetic map of one set; empty when it is not stated. */
  public Optional<GeneticMap> geneticMap() {
    return chromosomes.isEmpty()
        ? Optional.empty()
        : Optional.of(GeneticMap.ofCentimorgans(chromosomes));
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.taxon(taxon));
  }

  @Override
  public Set<Subject> mentions() {
    Set<Subject> loci = new LinkedHashSet<>();
    frequencies.keySet().forEach(locus -> loci.add(Subject.locus(locus)));
    return Set.copyOf(loci);
  }
}

package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far the share of a taxon in a real plant lies from the expected share, exactly.
 *
 * <p>The variance of a genome share is the mean, over all pairs of positions on the map, of the
 * covariance of finding the taxon at both. The covariance at two loci of a given linkage follows
 * from the parents', for any diploid pedigree with loops: an allele pair of one gamete came of one
 * set of its parent or, by a crossover between, of both; pairs of different gametes are traced back
 * as in A = T D Tᵀ. As a function of the linkage value u = 1 − 2r it is a polynomial of a degree no
 * higher than the generations, and is averaged over the map by a Gauss rule that gives these within
 * 1e-12 (up to 400 generations; within 1e-8 up to a thousand). For one cross that gives Hill's
 * formula (1993, Journal of Heredity 84:212-213). Crossovers without interference (Haldane 1919).
 *
 * <p>Where a plant, or one behind it, may have come about in several ways, the variance is over
 * these too: the mean variance within them plus the variance of their means. A parent nobody knows
 * is wholly of an unknown taxon, whatever it may be.
 *
 * <p>The cost is the square of the plants behind, times taxa, times the nodes of the rule: half the
 * generations, and of many generations four times their square root. Immutable.
 */
public final class GenomeSpread {

  /** The most plants behind one whose spread is worked out; a second or two. */
  public static final int MOST_PLANTS = 8_192;

  private final Pedigree pedigree;
  private final GeneticMap map;

  private GenomeSpread(Pedigree pedigree, GeneticMap map) {
    this.pedigree = pedigree;
    this.map = map;
  }

  /** Spread in a pedigree, over {@link GeneticMap#assumed}. Nothing is computed yet. */
  public static GenomeSpread of(Pedigree pedigree) {
    return new GenomeSpread(pedigree, GeneticMap.assumed());
  }

  /** The same over another map. */
  public GenomeSpread withMap(GeneticMap other) {
    return new GenomeSpread(pedigree, other);
  }

  /**
   * The spread of all shares of a plant.
   *
   * @param code the plant
   * @param map the map it holds for
   * @param taxa a line for each taxon, by name
   * @param unknown the same for what nobody knows; null if all is known
   * @param different the expected share of loci whose two sets are of different known taxa: 1 in an
   *     F1, a half in an F2 and a BC1
   * @param alike the expected share of loci whose two sets are of one known taxon
   * @param takenAsSelfed acquired plants of a stated F3 or later, or of selfed backcrosses, which
   *     may have been sib crossed and were taken as selfed
   */
  public record Spread(
      String code,
      GeneticMap map,
      List<OfTaxon> taxa,
      @Nullable OfTaxon unknown,
      double different,
      double alike,
      List<String> takenAsSelfed) {

    /** Copies the lists. */
    public Spread {
      taxa = List.copyOf(taxa);
      takenAsSelfed = List.copyOf(takenAsSelfed);
    }

    /** The line of a taxon; null if it is not behind the plant. */
    public @Nullable OfTaxon of(String taxon) {
      for (OfTaxon one : taxa) {
        if (one.taxon().equals(taxon)) {
          return one;
        }
      }
      return null;
    }
  }

  /**
   * The spread of a taxon's share.
   *
   * @param taxon its name
   * @param mean the expected share, 0 to 1
   * @param variance of the share among plants of that pedigree
   * @param absentAtLocus the chance that at a given locus neither set is of the taxon, 0 to 1
   */
  public record OfTaxon(String taxon, double mean, double variance, double absentAtLocus) {
    /** The standard deviation of the share. */
    public double standardDeviation() {
      return Math.sqrt(variance);
    }
  }

  /**
   * The spread of the shares of a plant.
   *
   * @throws NoSpreadException if the plant or one behind it is not diploid, or is an acquired
   *     hybrid of which only shares are stated, or more than {@link #MOST_PLANTS} stand behind it
   * @throws dev.filial.core.pedigree.PedigreeException if there is no plant of this code
   */
  public Spread of(String code) {
    TaxonLines lines = TaxonLines.behind(pedigree, code);
    if (lines.flow().size() > MOST_PLANTS) {
      throw new NoSpreadException(
          lines.flow().size()
              + " plants stand behind "
              + code
              + "; the exact spread is worked out for at most "
              + MOST_PLANTS
              + ", and genomes can be dropped down the pedigree for any number");
    }
    TwoLoci loci = new TwoLoci(lines, PairsOnMap.of(map, lines.depth()));
    loci.run();
    List<OfTaxon> taxa = new ArrayList<>();
    double alike = 0;
    for (int taxon = 0; taxon < lines.taxa().size(); taxon++) {
      taxa.add(ofTaxon(lines.taxa().get(taxon), loci, taxon));
      alike += loci.inBothSets(taxon);
    }
    OfTaxon unknown = null;
    double notKnown = 0;
    if (lines.anyUnknown()) {
      int taxon = lines.unknownTaxon();
      unknown = ofTaxon("unknown", loci, taxon);
      notKnown = 2 * loci.mean(taxon) - loci.inBothSets(taxon);
    }
    return new Spread(
        code, map, taxa, unknown, Math.max(0, 1 - notKnown - alike), alike, lines.takenAsSelfed());
  }

  private static OfTaxon ofTaxon(String name, TwoLoci loci, int taxon) {
    double mean = loci.mean(taxon);
    double absent = 1 - 2 * mean + loci.inBothSets(taxon);
    return new OfTaxon(name, mean, loci.variance(taxon), Math.min(1, Math.max(0, absent)));
  }
}

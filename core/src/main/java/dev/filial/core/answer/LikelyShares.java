package dev.filial.core.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What share of each taxon a real plant of a pedigree may carry, beside the expected one.
 *
 * @param map the chromosome lengths it holds for, in words
 * @param mapFrom whose map that is: the taxon it is stated for, or "asked" where it came with the
 *     question; null if it is assumed
 * @param chance how many of such plants lie within the ranges, 0 to 1
 * @param genomes how many genomes were dropped to find the ranges; 0 if the ranges are by the exact
 *     standard deviation, as of a normal distribution cut off at none and all
 * @param dice what the genomes can be dropped again with
 * @param taxa a line for each taxon, the largest expected share first, the unknown one last
 * @param different the expected share of loci whose two sets are of different known taxa
 * @param likeClass the classic generations of two taxa with that share and that difference; null
 *     where there are none, or not two taxa
 */
public record LikelyShares(
    String map,
    @Nullable String mapFrom,
    double chance,
    int genomes,
    long dice,
    List<Likely> taxa,
    double different,
    @Nullable String likeClass) {

  /** Copies the lines. */
  public LikelyShares {
    taxa = List.copyOf(taxa);
  }

  /**
   * The likely shares of one taxon.
   *
   * @param taxon its name, or "unknown"
   * @param low the lower end of the central range, 0 to 1
   * @param high its upper end
   * @param standardDeviation exact, of the share among such plants
   * @param absentAtLocus the exact chance that a plant has none of the taxon at a given locus
   * @param lost the chance that a plant has none of it at all; null if no genomes were dropped
   * @param lessThan the chance of less than the share asked about; null if none was, or no genomes
   *     were dropped
   * @param histogram how many dropped genomes had a share in each twentieth from 0 to 1; empty if
   *     none were dropped
   */
  public record Likely(
      String taxon,
      double low,
      double high,
      double standardDeviation,
      double absentAtLocus,
      @Nullable Double lost,
      @Nullable Double lessThan,
      List<Integer> histogram) {

    /** Copies the histogram. */
    public Likely {
      histogram = List.copyOf(histogram);
    }
  }
}

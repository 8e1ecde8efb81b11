package dev.filial.core.answer;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What share of each taxon a real plant of a pedigree may carry, beside the expected one.
 *
 * @param map the chromosome lengths it holds for, in words
 * @param mapFrom the taxon that map is stated for; null if it came with the question or is assumed
 * @param mapAssumed whether it is assumed
 * @param chance how many of such plants lie within the ranges, 0 to 1
 * @param genomes how many genomes were dropped to find the ranges; 0 if the ranges are by the exact
 *     standard deviation, as of a normal distribution cut off at none and all
 * @param dice what the genomes can be dropped again with
 * @param share the share of which it was asked how likely less of it is; null if it was not asked
 * @param taxa a line for each taxon, the largest expected share first
 * @param unknown the same for what nobody knows; null if all is known
 * @param different the expected share of loci whose two sets are of different known taxa
 * @param likeClass the classic generations of two taxa with that share and that difference, or
 *     nearest to them; null where there are not two taxa, or none has them and the plant's own
 *     generation is known
 */
public record LikelyShares(
    String map,
    @Nullable String mapFrom,
    boolean mapAssumed,
    double chance,
    int genomes,
    long dice,
    @Nullable Double share,
    List<Likely> taxa,
    @Nullable Likely unknown,
    double different,
    @Nullable String likeClass) {

  /** Copies the lines. */
  public LikelyShares {
    taxa = List.copyOf(taxa);
  }

  /** All lines, the unknown one last. */
  public List<Likely> lines() {
    List<Likely> lines = new ArrayList<>(taxa);
    if (unknown != null) {
      lines.add(unknown);
    }
    return List.copyOf(lines);
  }

  /**
   * The likely shares of one taxon.
   *
   * @param taxon its name; "unknown" for what nobody knows
   * @param low the lower end of the central range, 0 to 1
   * @param high its upper end
   * @param standardDeviation exact, of the share among such plants
   * @param absentAtLocus the exact chance that a plant has none of the taxon at a given locus
   * @param lost the chance that a plant has none of it at all; null if no genomes were dropped
   * @param lessThan the chance of less than the share asked about; null if none was
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

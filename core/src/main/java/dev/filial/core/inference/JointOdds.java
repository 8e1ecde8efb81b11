package dev.filial.core.inference;

import dev.filial.core.heredity.Genotype;
import java.util.Comparator;
import java.util.List;

/**
 * What two plants carry, together.
 *
 * @param first the code of one
 * @param second the code of the other
 * @param pairs what is possible, the likeliest first; chances sum to 1
 * @param reckoning how they were worked out
 */
public record JointOdds(String first, String second, List<Pair> pairs, Reckoning reckoning) {

  /**
   * A genotype of each.
   *
   * @param error the standard error of the chance where it was sampled, else 0
   */
  public record Pair(Genotype first, Genotype second, double chance, double error) {}

  /** Sorts them. */
  public JointOdds {
    pairs = pairs.stream().sorted(Comparator.comparingDouble(Pair::chance).reversed()).toList();
  }
}

package dev.filial.core.inference;

import dev.filial.core.pedigree.Case;
import java.util.List;

/**
 * In which of the recorded ways a plant came about: who pollinated, or which of several plants it
 * is.
 *
 * @param plant its code
 * @param ways the ways in the order of the pedigree; chances sum to 1
 * @param reckoning how they were worked out
 */
public record WayOdds(String plant, List<Chance> ways, Reckoning reckoning) {

  /**
   * A way.
   *
   * @param before its chance by what was stated, before anything was seen
   * @param after its chance by everything that was seen
   * @param error the standard error of that where it was sampled, else 0
   */
  public record Chance(Case way, double before, double after, double error) {}

  /** Copies the list. */
  public WayOdds {
    ways = List.copyOf(ways);
  }
}

package dev.filial.core.plan;

import java.util.List;

/**
 * A way to the wanted seedling, without any numbers.
 *
 * @param seed the number of the first cross's seed parent
 * @param pollen that of its pollen parent; the same number for a selfing
 * @param later what is done in each season after the first
 */
public record CrossPath(int seed, int pollen, List<Later> later) {

  /** Copies the list. */
  public CrossPath {
    later = List.copyOf(later);
  }

  /**
   * A season after the first.
   *
   * @param keep the number of the appearance that is kept of the season before
   * @param mate what it is crossed with
   */
  public record Later(int keep, Mate mate) {}

  /** How many seasons of crossing it takes, 1 or more. */
  public int seasons() {
    return later.size() + 1;
  }
}

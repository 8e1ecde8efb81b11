package dev.filial.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A way to the wanted seedling, without any numbers.
 *
 * @param seed the number of the first cross's seed parent
 * @param pollen that of its pollen parent; the same number for a selfing
 * @param later what is done in each season after the first
 */
public record CrossPath(int seed, int pollen, List<Later> later) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if two kept seedlings of different crosses are crossed in
   *     another season than the second
   */
  public CrossPath {
    later = List.copyOf(later);
    for (int i = 1; i < later.size(); i++) {
      if (later.get(i).mate() instanceof Mate.OtherCross) {
        throw new IllegalArgumentException(
            "two seedlings of different crosses in season "
                + (i + 2)
                + "; only those of the first season's crosses are crossed with each other");
      }
    }
  }

  /**
   * A season after the first.
   *
   * @param keep the number of the appearance that is kept of the season before
   * @param mate what it is crossed with
   */
  public record Later(int keep, Mate mate) {}

  /** The same with one season more. */
  CrossPath then(int keep, Mate mate) {
    List<Later> all = new ArrayList<>(later);
    all.add(new Later(keep, mate));
    return new CrossPath(seed, pollen, all);
  }

  /** The cross that is made beside the first one in the same season; empty if there is none. */
  public Optional<Mate.OtherCross> beside() {
    return !later.isEmpty() && later.get(0).mate() instanceof Mate.OtherCross other
        ? Optional.of(other)
        : Optional.empty();
  }

  /** How many seasons of crossing it takes, 1 or more. */
  public int seasons() {
    return later.size() + 1;
  }
}

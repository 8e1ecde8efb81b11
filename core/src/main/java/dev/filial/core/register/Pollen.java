package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Objects;

/** Where the pollen of a cross came from. */
public sealed interface Pollen {

  /**
   * The pollen of one plant.
   *
   * @param plant the pollen parent, or a group meaning one plant of it
   */
  record OnePlant(Code plant) implements Pollen {
    /** Checks that a plant was named. */
    public OnePlant {
      Objects.requireNonNull(plant, "plant");
    }
  }

  /** The seed parent's own: a selfing. */
  record Itself() implements Pollen {}

  /**
   * A mix of pollen put on by hand.
   *
   * @param plants the plants it came from with their weights, at least two
   */
  record Mix(List<Weighted> plants) implements Pollen {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if it names fewer than two plants, or one twice
     */
    public Mix {
      plants = List.copyOf(plants);
      if (plants.size() < 2) {
        throw new IllegalArgumentException("a pollen mix names at least two plants");
      }
      requireDistinct(plants);
    }
  }

  /**
   * Open pollination: whatever a bee or the wind brought.
   *
   * @param candidates the plants thought to have been in flower with their weights; may be empty
   * @param unknown the share brought by plants nobody knows of, 0 to 1; 1 when there are no
   *     candidates
   */
  record Open(List<Weighted> candidates, Fraction unknown) implements Pollen {
    /**
     * Copies the list and checks the share.
     *
     * @throws IllegalArgumentException if the share lies outside 0 to 1, or is below 1 with nobody
     *     to have brought the rest, or a plant is named twice
     */
    public Open {
      candidates = List.copyOf(candidates);
      Objects.requireNonNull(unknown, "unknown");
      if (unknown.signum() < 0 || unknown.compareTo(Fraction.ONE) > 0) {
        throw new IllegalArgumentException(
            "the unknown share of an open pollination is " + unknown + "; it lies between 0 and 1");
      }
      if (candidates.isEmpty() && !unknown.isOne()) {
        throw new IllegalArgumentException(
            "an open pollination without candidates is all unknown: its unknown share is 1, not "
                + unknown);
      }
      requireDistinct(candidates);
    }
  }

  private static void requireDistinct(List<Weighted> plants) {
    if (plants.stream().map(Weighted::plant).distinct().count() != plants.size()) {
      throw new IllegalArgumentException(
          "a plant is named twice among the pollen; give it once, with the sum of its weights");
    }
  }
}

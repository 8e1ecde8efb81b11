package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.util.Objects;

/**
 * One of several possibilities, and how much it counts against the others.
 *
 * @param plant a plant, or a group of unnumbered seedlings meaning one of it
 * @param weight a positive number; only its ratio to the other weights matters
 */
public record Weighted(Code plant, Fraction weight) {
  /**
   * Checks the weight.
   *
   * @throws IllegalArgumentException if it is not positive
   */
  public Weighted {
    Objects.requireNonNull(plant, "plant");
    Objects.requireNonNull(weight, "weight");
    if (weight.signum() <= 0) {
      throw new IllegalArgumentException(
          "the weight of " + plant.text() + " is " + weight + "; a weight is above 0");
    }
  }
}

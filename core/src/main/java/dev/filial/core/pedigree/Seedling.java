package dev.filial.core.pedigree;

import dev.filial.core.number.Fraction;
import java.util.List;

/**
 * A plant raised from seed: a mixture of the ways it may have come about, usually one.
 *
 * @param cases the ways, at least one; their shares sum to exactly 1
 */
public record Seedling(List<Case> cases) implements Origin {

  /**
   * Copies and checks the cases.
   *
   * @throws PedigreeException if there is none or the shares do not sum to exactly 1
   */
  public Seedling {
    cases = List.copyOf(cases);
    Fraction sum = Fraction.ZERO;
    if (cases.size() == 1) {
      sum = cases.get(0).share();
    } else {
      for (Case one : cases) {
        sum = sum.plus(one.share());
      }
    }
    if (!sum.isOne()) {
      throw new PedigreeException(
          "the shares of a seedling's cases sum to "
              + sum
              + ", not to 1: "
              + cases
              + "; make them sum to 1, unknown pollen taking what is left");
    }
  }

  /** A seedling of one certain cross of ordinary gametes; selfing if both are one plant. */
  public static Seedling cross(String seed, String pollen) {
    return new Seedling(
        List.of(
            Case.cross(
                Fraction.ONE, seed.equals(pollen) ? Route.SELFING : Route.CROSS, seed, pollen)));
  }
}

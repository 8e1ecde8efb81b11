package dev.filial.core.pedigree;

import dev.filial.core.number.Fraction;
import java.util.Objects;

/** One way a seedling may have come about, and how likely that is. */
public sealed interface Case {

  /** The prior probability of this case, above 0 and at most 1. */
  Fraction share();

  /** Why the case is there. */
  Route route();

  /**
   * The seedling has two parents.
   *
   * @param share the prior probability of this case
   * @param route why the case is there
   * @param seed what the seed parent gave
   * @param pollen what the pollen parent gave
   */
  record Sexual(Fraction share, Route route, Gamete seed, Gamete pollen) implements Case {
    /**
     * Checks the share.
     *
     * @throws PedigreeException if it is not above 0 and at most 1
     */
    public Sexual {
      checkShare(share, route);
      Objects.requireNonNull(seed, "seed");
      Objects.requireNonNull(pollen, "pollen");
    }
  }

  /**
   * The plant is genetically another plant again: seed without fertilisation, or one of the plants
   * it may be.
   *
   * @param share the prior probability of this case
   * @param route why the case is there
   * @param of the code of the plant it repeats
   */
  record Copy(Fraction share, Route route, String of) implements Case {
    /**
     * Checks the share.
     *
     * @throws PedigreeException if it is not above 0 and at most 1
     */
    public Copy {
      checkShare(share, route);
      Objects.requireNonNull(of, "of");
    }
  }

  /** A case with two parents that give ordinary gametes. */
  static Case cross(Fraction share, Route route, String seed, String pollen) {
    return new Sexual(share, route, Gamete.of(seed), Gamete.of(pollen));
  }

  /** A case in which the pollen is the seed parent's own. */
  static Case selfing(Fraction share, String plant) {
    return cross(share, Route.SELFING, plant, plant);
  }

  /** A case in which nobody knows whose pollen it was. */
  static Case unknownPollen(Fraction share, Route route, String seed) {
    return new Sexual(share, route, Gamete.of(seed), Gamete.unknown());
  }

  /** A case in which the seed formed without fertilisation. */
  static Case apomict(Fraction share, String seed) {
    return new Copy(share, Route.APOMIXIS, seed);
  }

  private static void checkShare(Fraction share, Route route) {
    Objects.requireNonNull(route, "route");
    if (!share.isOne() && (share.signum() <= 0 || share.compareTo(Fraction.ONE) > 0)) {
      throw new PedigreeException(
          "a case ("
              + route.text()
              + ") has a share of "
              + share
              + "; it must be above 0 and at most 1");
    }
  }
}

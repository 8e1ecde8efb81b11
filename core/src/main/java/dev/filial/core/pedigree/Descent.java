package dev.filial.core.pedigree;

import dev.filial.core.number.Fraction;

/**
 * A {@link Case} of a plant as its pedigree resolved it: plants by their index, and how many
 * chromosome sets each gamete brought.
 */
public sealed interface Descent {

  /** The prior probability of this case. */
  Fraction share();

  /** Why the case is there. */
  Route route();

  /**
   * Two parents.
   *
   * @param share the prior probability of this case
   * @param route why the case is there
   * @param seed the seed parent's index, or {@link Pedigree#UNKNOWN}
   * @param seedSets how many sets it gave
   * @param pollen the pollen parent's index, or {@link Pedigree#UNKNOWN}
   * @param pollenSets how many sets it gave
   */
  record Sexual(Fraction share, Route route, int seed, int seedSets, int pollen, int pollenSets)
      implements Descent {
    /** The chromosome sets of a plant of this case. */
    public int ploidy() {
      return seedSets + pollenSets;
    }

    /** What the seed parent's gamete weighs in the plant: its sets over all sets. */
    public Fraction seedWeight() {
      return seedSets == pollenSets ? Fraction.HALF : Fraction.of(seedSets, ploidy());
    }

    /** What the pollen parent's gamete weighs in the plant: its sets over all sets. */
    public Fraction pollenWeight() {
      return seedSets == pollenSets ? Fraction.HALF : Fraction.of(pollenSets, ploidy());
    }
  }

  /**
   * Another plant again.
   *
   * @param share the prior probability of this case
   * @param route why the case is there
   * @param of the index of the plant repeated
   */
  record Copy(Fraction share, Route route, int of) implements Descent {}
}

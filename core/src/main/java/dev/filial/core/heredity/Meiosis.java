package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.util.Objects;

/** How a plant forms its gametes. */
public sealed interface Meiosis {

  /** Chromosomes pair by twos; half of the sets go into a gamete. What diploids do. */
  record Reduced() implements Meiosis {}

  /**
   * Any two of four homologous chromosomes pair (an autotetraploid).
   *
   * @param doubleReduction the chance that a gamete carries one allele twice because both copies
   *     are sister chromatids; from 0 (random chromosome segregation, Haldane 1930, Journal of
   *     Genetics 22:359-372) over 1/7 (random chromatid segregation) to 1/6 (the most there can be,
   *     complete equational segregation, Mather 1935, Journal of Genetics 30:53-78)
   */
  record Tetrasomic(Fraction doubleReduction) implements Meiosis {

    /** The most that double reduction can be. */
    public static final Fraction MOST = Fraction.of(1, 6);

    /**
     * Checks the chance.
     *
     * @throws IllegalArgumentException if it lies outside 0 to 1/6
     */
    public Tetrasomic {
      if (doubleReduction.signum() < 0 || doubleReduction.compareTo(MOST) > 0) {
        throw new IllegalArgumentException(
            "a double reduction of " + doubleReduction + "; it lies between 0 and 1/6");
      }
    }
  }

  /**
   * A diploid's gametes with both sets.
   *
   * @param restitution which division failed
   * @param kept the chance that a gamete of a heterozygote is heterozygous too: where the locus
   *     lies at the centromere 1 after first-division restitution and 0 after second, further out
   *     between these; never below ½ after first-division restitution
   */
  record Unreduced(Restitution restitution, Fraction kept) implements Meiosis {
    /**
     * Checks the chance.
     *
     * @throws IllegalArgumentException if it lies outside 0 to 1, or below ½ after first-division
     *     restitution
     */
    public Unreduced {
      Objects.requireNonNull(restitution, "restitution");
      if (kept.signum() < 0 || kept.compareTo(Fraction.ONE) > 0) {
        throw new IllegalArgumentException(
            "heterozygosity kept with a chance of " + kept + "; it lies between 0 and 1");
      }
      if (restitution == Restitution.FIRST_DIVISION && kept.compareTo(Fraction.HALF) < 0) {
        throw new IllegalArgumentException(
            "heterozygosity kept with a chance of "
                + kept
                + " after first-division restitution; that keeps it at least half of the time");
      }
    }
  }

  /**
   * A triploid's gametes with so many sets, whichever of its three they are.
   *
   * @param sets 1 or 2
   */
  record OfTriploid(int sets) implements Meiosis {
    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is neither 1 nor 2
     */
    public OfTriploid {
      if (sets != 1 && sets != 2) {
        throw new IllegalArgumentException(
            "a triploid's gamete of " + sets + " chromosome sets; say 1 or 2");
      }
    }
  }

  /** What diploids do. */
  Meiosis REDUCED = new Reduced();

  /**
   * What an autotetraploid does.
   *
   * @throws IllegalArgumentException if the chance lies outside 0 to 1/6
   */
  static Meiosis tetrasomic(Fraction doubleReduction) {
    return new Tetrasomic(doubleReduction);
  }
}

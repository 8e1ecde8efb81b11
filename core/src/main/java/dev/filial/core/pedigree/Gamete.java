package dev.filial.core.pedigree;

import org.jspecify.annotations.Nullable;

/**
 * What one parent gave.
 *
 * @param parent the code of the plant that gave it; null when nobody knows
 * @param sets how many chromosome sets it brought; 0 for half of what the parent has. An unknown
 *     parent's 0 means half of the other parent's, or, where that is no number, as many as the
 *     other gamete brought, or one if that is unknown too.
 */
public record Gamete(@Nullable String parent, int sets) {

  private static final Gamete UNKNOWN = new Gamete(null, 0);

  /**
   * Checks the number of sets.
   *
   * @throws PedigreeException if it is negative
   */
  public Gamete {
    if (sets < 0) {
      throw new PedigreeException(
          "a gamete of " + parent + " cannot bring " + sets + " chromosome sets; state 1 or more");
    }
  }

  /** An ordinary gamete of the plant: half of its chromosome sets. */
  public static Gamete of(String parent) {
    return new Gamete(parent, 0);
  }

  /** A gamete of the plant that brought this many sets, as an unreduced one does. */
  public static Gamete unreduced(String parent, int sets) {
    return new Gamete(parent, sets);
  }

  /** A gamete of a plant nobody knows. */
  public static Gamete unknown() {
    return UNKNOWN;
  }
}

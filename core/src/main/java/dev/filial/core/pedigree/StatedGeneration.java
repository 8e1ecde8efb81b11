package dev.filial.core.pedigree;

/**
 * The generation a donor stated for an acquired hybrid. Without it a hybrid known only by its
 * fractions has no generation class, nor have its offspring.
 */
public sealed interface StatedGeneration {

  /** The first of the two taxa; for a backcross the recurrent one. */
  String first();

  /** The second of the two taxa; for a backcross the donor. */
  String second();

  /**
   * An F1, F2 and so on of two taxa.
   *
   * @param generation 1 for F1, at least 1
   * @param first one taxon
   * @param second the other taxon
   */
  record Filial(int generation, String first, String second) implements StatedGeneration {
    /**
     * Checks the generation and the taxa.
     *
     * @throws PedigreeException if the generation is below 1 or the taxa are one
     */
    public Filial {
      require(generation >= 1, "F" + generation + " is no generation: state F1 or later");
      require(
          !first.equals(second), "an F" + generation + " needs two taxa, not " + first + " twice");
    }
  }

  /**
   * A backcross, selfed afterwards or not.
   *
   * @param generation 1 for BC1, at least 1
   * @param first the recurrent taxon
   * @param second the donor, the other taxon of the F1
   * @param filial 1 for a plain BCn, m for BCnFm
   */
  record Backcross(int generation, String first, String second, int filial)
      implements StatedGeneration {
    /**
     * Checks the generations and the taxa.
     *
     * @throws PedigreeException if a generation is below 1 or the taxa are one
     */
    public Backcross {
      require(generation >= 1, "BC" + generation + " is no generation: state BC1 or later");
      require(filial >= 1, "F" + filial + " is no generation after a backcross: state 1 or more");
      require(!first.equals(second), "a backcross needs two taxa, not " + first + " twice");
    }
  }

  /** The F1 of two taxa. */
  static StatedGeneration f1(String first, String second) {
    return new Filial(1, first, second);
  }

  /** The Fn of two taxa. */
  static StatedGeneration filial(int generation, String first, String second) {
    return new Filial(generation, first, second);
  }

  /** The BCn of the F1 of two taxa to the first of them. */
  static StatedGeneration backcross(int generation, String recurrent, String donor) {
    return new Backcross(generation, recurrent, donor, 1);
  }

  private static void require(boolean holds, String message) {
    if (!holds) {
      throw new PedigreeException(message);
    }
  }
}

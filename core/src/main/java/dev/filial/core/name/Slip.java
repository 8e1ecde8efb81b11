package dev.filial.core.name;

/**
 * A code that may have been meant, and the one slip that leads from it to what was typed.
 *
 * @param code the code that may have been meant
 * @param kind the slip
 */
public record Slip(Code code, Kind kind) {

  /** The slips that people make with a string of digits and a letter. */
  public enum Kind {
    /** One digit differs, and the two look alike in pencil. */
    LOOK_ALIKE_DIGIT("one digit that looks alike"),
    /** Two neighbouring digits changed places. */
    NEIGHBOURS_SWAPPED("two neighbouring digits swapped"),
    /** One digit differs. */
    WRONG_DIGIT("one digit differs"),
    /** The digits are right and the letter is not. */
    WRONG_LETTER("the letter differs"),
    /** Two digits with one between them changed places. */
    JUMP_SWAPPED("two digits swapped across one"),
    /** A doubled digit stands for another doubled digit. */
    TWINS("a doubled digit mistaken");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The slip in a few words, for a message. */
    public String words() {
      return words;
    }
  }
}

package dev.filial.core.name;

import java.util.Locale;

/**
 * The two to four letters that stand before a code on everything that leaves the house, so that two
 * growers' 26-013 differ.
 *
 * @param letters A to Z; small letters are made capitals
 */
public record GrowersMark(String letters) {

  /**
   * Checks the letters and makes them capitals.
   *
   * @throws CodeException if there are not two to four letters A to Z
   */
  public GrowersMark {
    String typed = letters;
    letters = letters.strip().toUpperCase(Locale.ROOT);
    if (!letters.matches("[A-Z]{2,4}")) {
      throw new CodeException(
          "\""
              + Quote.of(typed)
              + "\": a grower's mark is two to four letters A to Z without accents, digits or"
              + " spaces, as KB.");
    }
  }

  /** The letters. */
  @Override
  public String toString() {
    return letters;
  }
}

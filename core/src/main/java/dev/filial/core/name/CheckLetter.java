package dev.filial.core.name;

/**
 * A remainder check letter: a number modulo a modulus, indexing an alphabet of as many letters.
 *
 * <p>When the modulus is a prime above 10 other than 11, every wrong digit, every swap of two
 * neighbouring digits and every swap of digits one apart changes the letter: the change of the
 * number is a product of factors (a digit difference below 10, a power of ten, 9 or 99) none of
 * which the prime divides. The same holds of a doubled digit mistaken for another (factor 11) and,
 * for 17, of the pattern 1_1 mistaken for 2_2 (factor 101). After J. Verhoeff, Error Detecting
 * Decimal Codes, Mathematical Centre Tracts 29, 1969.
 *
 * @param modulus how many letters there are, at least 2
 * @param alphabet the letters, each once, the letter of remainder 0 first; A to Z
 */
public record CheckLetter(int modulus, String alphabet) {

  /**
   * The letter on Filial's tags: modulus 17, and no letter that pencil turns into a digit or
   * another letter, nor F, which means filial.
   */
  public static final CheckLetter FILIAL = new CheckLetter(17, "ACDEHJKLMNPRTVWXY");

  /**
   * Checks the scheme.
   *
   * @throws IllegalArgumentException if the alphabet does not have {@code modulus} different
   *     letters A to Z
   */
  public CheckLetter {
    if (modulus < 2 || alphabet.length() != modulus) {
      throw new IllegalArgumentException(
          "modulus " + modulus + " needs as many letters (at least 2), not \"" + alphabet + "\"");
    }
    for (int i = 0; i < modulus; i++) {
      char letter = alphabet.charAt(i);
      if (letter < 'A' || letter > 'Z' || alphabet.indexOf(letter) != i) {
        throw new IllegalArgumentException(
            "each letter of a check alphabet is one of A to Z and stands once: \""
                + alphabet
                + "\"");
      }
    }
  }

  /**
   * The letter that goes with {@code number}.
   *
   * @throws IllegalArgumentException if the number is negative
   */
  public char letter(long number) {
    if (number < 0) {
      throw new IllegalArgumentException("a check letter is of a number from 0 up, not " + number);
    }
    return alphabet.charAt((int) (number % modulus));
  }

  /** Whether {@code letter}, in either case, is the one that goes with {@code number}. */
  public boolean matches(long number, char letter) {
    return letter(number) == Character.toUpperCase(letter);
  }

  /** Whether {@code letter}, in either case, is one of the alphabet. */
  public boolean isLetter(char letter) {
    return alphabet.indexOf(Character.toUpperCase(letter)) >= 0;
  }
}

package dev.filial.core.name;

/**
 * The check character of ISO/IEC 7064 MOD 37,36: a hybrid system over the 36 characters 0 to 9 and
 * A to Z, with one check character out of the same 36. It detects every single wrong character and
 * nearly every swap of neighbours.
 *
 * <p>Source: ISO/IEC 7064, Information technology, Security techniques, Check character systems;
 * one pass over the text.
 */
public final class Mod37_36 {
  private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
  private static final int SIZE = 36;

  private Mod37_36() {}

  /**
   * The character to append to {@code text}.
   *
   * @throws IllegalArgumentException if the text is empty or has a character other than 0 to 9 and
   *     A to Z
   */
  public static char checkCharacter(String text) {
    if (text.isEmpty()) {
      throw new IllegalArgumentException("a check character needs a text to be of");
    }
    return CHARACTERS.charAt((SIZE + 1 - carried(text)) % SIZE);
  }

  /** Whether {@code text} ends with the check character of what stands before it. */
  public static boolean isValid(String text) {
    if (text.length() < 2 || !text.chars().allMatch(c -> CHARACTERS.indexOf(c) >= 0)) {
      return false;
    }
    int last = text.length() - 1;
    return checkCharacter(text.substring(0, last)) == text.charAt(last);
  }

  private static int carried(String text) {
    int p = SIZE;
    for (int i = 0; i < text.length(); i++) {
      int value = CHARACTERS.indexOf(text.charAt(i));
      if (value < 0) {
        throw new IllegalArgumentException(
            Quote.of(text)
                + ": only 0 to 9 and A to Z can be checked; character "
                + (i + 1)
                + " is neither");
      }
      int sum = (p + value) % SIZE;
      p = (sum == 0 ? SIZE : sum) * 2 % (SIZE + 1);
    }
    return p;
  }
}

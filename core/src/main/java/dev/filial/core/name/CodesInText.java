package dev.filial.core.name;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds codes in a text that has other words too. */
public final class CodesInText {

  private static final Pattern CODE =
      Pattern.compile("\\b\\d{2}-\\d{3,9}[A-Z](?:-\\d+|[ \u00A0][PHS]\\d+)?\\b");

  private CodesInText() {}

  /**
   * Finds whatever has the form of a code with its check letter, with the number of a seedling,
   * pot, lot or sowing behind it if there is one. Whether the letter is right is not asked.
   */
  public static Matcher in(CharSequence text) {
    return CODE.matcher(text);
  }
}

package dev.filial.core.name;

import org.jspecify.annotations.Nullable;

/**
 * Reads codes exactly as {@link Code#text} writes them, without patterns: a register reads
 * thousands of its own codes to answer for one plant.
 */
final class CanonicalCode {

  private static final int SHORTEST = 7;
  private static final int LONGEST_NUMBER = 9;

  private static final Code.Part WHOLE = new Code.Part.Whole();

  private CanonicalCode() {}

  /** The code, or null where the text is not written so, be it a code or not. */
  static @Nullable Code read(String text) {
    int length = text.length();
    if (length < SHORTEST || !digit(text, 0) || !digit(text, 1) || text.charAt(2) != '-') {
      return null;
    }
    int at = 3;
    while (at < length && digit(text, at)) {
      at++;
    }
    int digits = at - 3;
    if (digits < 3
        || digits > LONGEST_NUMBER
        || at == length
        || (digits > 3 && text.charAt(3) == '0')) {
      return null;
    }
    long number = number(text, 3, at);
    Code.Part part = part(text, at + 1);
    if (number == 0 || part == null) {
      return null;
    }
    Code code = new Code((int) number(text, 0, 2), number, part);
    return code.letter() == text.charAt(at) ? code : null;
  }

  private static Code.@Nullable Part part(String text, int from) {
    if (from == text.length()) {
      return WHOLE;
    }
    boolean seedling = text.charAt(from) == '-';
    int start = seedling ? from + 1 : from + 2;
    int length = text.length() - start;
    if (length < 1 || length > LONGEST_NUMBER || text.charAt(start) == '0') {
      return null;
    }
    for (int at = start; at < text.length(); at++) {
      if (!digit(text, at)) {
        return null;
      }
    }
    int number = (int) number(text, start, text.length());
    if (seedling) {
      return new Code.Part.Seedling(number);
    }
    if (text.charAt(from) != ' ') {
      return null;
    }
    return switch (text.charAt(from + 1)) {
      case 'P' -> new Code.Part.Group(number);
      case 'H' -> new Code.Part.Lot(number);
      case 'S' -> new Code.Part.Sowing(number);
      default -> null;
    };
  }

  private static boolean digit(String text, int at) {
    return text.charAt(at) >= '0' && text.charAt(at) <= '9';
  }

  private static long number(String text, int from, int to) {
    long number = 0;
    for (int at = from; at < to; at++) {
      number = number * 10 + (text.charAt(at) - '0');
    }
    return number;
  }
}

package dev.filial.core.register;

import java.util.regex.Pattern;

/** What the reader of JSON says is wrong, without the words of its own insides. */
public final class JsonWords {

  private static final Pattern INSIDES =
      Pattern.compile(
          " ?\\((start marker )?at \\[Source.*?\\]\\)|,? ?from `[^`]*`|\\[Source.*?\\]");

  private JsonWords() {}

  /**
   * In a sentence without its full stop.
   *
   * @param message what the reader says, without the place
   */
  public static String of(String message) {
    return INSIDES.matcher(message).replaceAll("").strip();
  }
}

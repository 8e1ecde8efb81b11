package dev.filial.core.name;

/** A stretch of somebody's input as it may stand in a message: one line, not too long. */
final class Quote {
  private static final int LONGEST = 60;

  private Quote() {}

  static String of(String text) {
    String line = text.strip().replaceAll("[\\p{Cntrl}\\s]+", " ");
    int length = line.codePointCount(0, line.length());
    return length <= LONGEST
        ? line
        : line.substring(0, line.offsetByCodePoints(0, LONGEST - 1)) + "…";
  }
}

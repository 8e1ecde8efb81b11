package dev.filial.cli.label;

/** Text as it stands in a document that is both HTML and XML. */
final class Markup {

  private static final char REPLACEMENT = '\uFFFD';

  private Markup() {}

  /**
   * The text with what has a meaning in markup escaped, for an element or an attribute. Characters
   * that XML does not have become U+FFFD. Marks that turn the direction of the text round them are
   * left out: they would reach past the name they stand in.
   */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints().filter(c -> !turnsDirection(c)).forEach(c -> append(safe, c));
    return safe.toString();
  }

  private static void append(StringBuilder safe, int c) {
    switch (c) {
      case '&' -> safe.append("&amp;");
      case '<' -> safe.append("&lt;");
      case '>' -> safe.append("&gt;");
      case '"' -> safe.append("&quot;");
      case '\'' -> safe.append("&#39;");
      default -> safe.appendCodePoint(isInXml(c) ? c : REPLACEMENT);
    }
  }

  /** The character set of XML 1.0, section 2.2, less the controls that HTML does not take. */
  private static boolean isInXml(int c) {
    return c == '\t'
        || c == '\n'
        || (c >= 0x20 && c < 0x7F)
        || (c >= 0xA0 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD && !(c >= 0xFDD0 && c <= 0xFDEF))
        || (c >= 0x10000 && (c & 0xFFFE) != 0xFFFE);
  }

  /** Embeddings, overrides and isolates of the Unicode Bidirectional Algorithm (UAX 9). */
  private static boolean turnsDirection(int c) {
    return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  }
}

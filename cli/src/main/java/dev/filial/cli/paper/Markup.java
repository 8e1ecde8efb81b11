package dev.filial.cli.paper;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes elements, attributes and text of XML, and of HTML that is XML too. Every text passes
 * through here, so none can be taken for markup. What XML or HTML cannot hold becomes U+FFFD; marks
 * that turn the direction of the text round them are left out, since they would reach past the name
 * they stand in.
 */
public final class Markup {

  private static final char REPLACEMENT = '\uFFFD';

  /** The text escaped for an element, for what is written piece by piece. */
  public static String escaped(String text) {
    return new Markup().text(text).written();
  }

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Begins an element, with attributes as names and values in turn. */
  public Markup open(String tag, String... attributes) {
    start(tag, attributes);
    out.append('>');
    open.push(tag);
    return this;
  }

  /** An element without content. */
  public Markup empty(String tag, String... attributes) {
    start(tag, attributes);
    out.append("/>");
    return this;
  }

  /** An element with nothing but text. */
  public Markup element(String tag, String text, String... attributes) {
    return open(tag, attributes).text(text).close();
  }

  /** Text. */
  public Markup text(String text) {
    escape(text, false);
    return this;
  }

  /** Ends the element begun last. */
  public Markup close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** A new line, where white space means nothing. */
  public Markup line() {
    out.append('\n');
    return this;
  }

  /**
   * Everything written.
   *
   * @throws IllegalStateException if an element was not ended
   */
  public String written() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not ended: " + open.peek());
    }
    return out.toString();
  }

  private void start(String tag, String... attributes) {
    out.append('<').append(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      escape(attributes[i + 1], true);
      out.append('"');
    }
  }

  private void escape(String text, boolean inAttribute) {
    for (int i = 0; i < text.length(); ) {
      int letter = text.codePointAt(i);
      i += Character.charCount(letter);
      switch (letter) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append(inAttribute ? "&quot;" : "\"");
        case '\r' -> out.append("&#13;");
        case '\n', '\t' -> {
          if (inAttribute) {
            out.append("&#").append(letter).append(';');
          } else {
            out.append((char) letter);
          }
        }
        default -> {
          if (!turnsDirection(letter)) {
            out.appendCodePoint(isAllowed(letter) ? letter : REPLACEMENT);
          }
        }
      }
    }
  }

  /**
   * The character set of XML 1.0, section 2.2, beside tab and ends of line and less the controls
   * that HTML does not take.
   */
  private static boolean isAllowed(int c) {
    return (c >= 0x20 && c < 0x7F)
        || (c >= 0xA0 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD && !(c >= 0xFDD0 && c <= 0xFDEF))
        || (c >= 0x10000 && (c & 0xFFFE) != 0xFFFE);
  }

  /** Embeddings, overrides and isolates of the Unicode Bidirectional Algorithm (UAX 9). */
  private static boolean turnsDirection(int c) {
    return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  }
}

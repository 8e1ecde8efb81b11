package dev.filial.cli.page;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes elements, attributes and text of XML, and of HTML that is XML too. Every text passes
 * through here, so none can be taken for markup; what XML cannot hold becomes U+FFFD.
 */
final class Markup {

  private static final char REPLACEMENT = '\uFFFD';

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Begins an element, with attributes as names and values in turn. */
  Markup open(String tag, String... attributes) {
    start(tag, attributes);
    out.append('>');
    open.push(tag);
    return this;
  }

  /** An element without content. */
  Markup empty(String tag, String... attributes) {
    start(tag, attributes);
    out.append("/>");
    return this;
  }

  /** An element with nothing but text. */
  Markup element(String tag, String text, String... attributes) {
    return open(tag, attributes).text(text).close();
  }

  /** Text. */
  Markup text(String text) {
    escape(text, false);
    return this;
  }

  /** Ends the element begun last. */
  Markup close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** A new line, where white space means nothing. */
  Markup line() {
    out.append('\n');
    return this;
  }

  /**
   * Everything written.
   *
   * @throws IllegalStateException if an element was not ended
   */
  String written() {
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
        default -> out.appendCodePoint(isAllowed(letter) ? letter : REPLACEMENT);
      }
    }
  }

  /** What XML 1.0 allows beside tab and ends of line; halves of surrogate pairs are not. */
  private static boolean isAllowed(int letter) {
    return (letter >= 0x20 && letter <= 0xD7FF)
        || (letter >= 0xE000 && letter <= 0xFFFD)
        || letter >= 0x10000;
  }
}

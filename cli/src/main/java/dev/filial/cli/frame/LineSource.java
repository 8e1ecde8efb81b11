package dev.filial.cli.frame;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;

/** Lines one after the other, of which only the one at hand is kept. */
public final class LineSource {

  /** No entry is longer; what is, is no text. */
  static final int LONGEST = 1 << 20;

  private static final char NOT_TEXT = '\uFFFD';

  private final Reader in;
  private final char[] buffer = new char[1 << 15];
  private final StringBuilder begun = new StringBuilder();
  private int at;
  private int end;
  private long number;

  /** Lines of a text; those that cannot be decoded hold U+FFFD. */
  public LineSource(Reader in) {
    this.in = in;
  }

  /** The number of the line that was read last, from 1. */
  public long number() {
    return number;
  }

  /**
   * The next line without its end, whichever of LF and CR LF that is, and without the mark that
   * some editors put at the beginning of a text; null when there is no more.
   *
   * @throws Trouble if what comes is no text at all
   * @throws UncheckedIOException if it cannot be read
   */
  public @Nullable String next() {
    begun.setLength(0);
    boolean any = false;
    while (at < end || fill()) {
      any = true;
      int from = at;
      while (at < end && buffer[at] != '\n') {
        at++;
      }
      begun.append(buffer, from, at - from);
      if (begun.length() > LONGEST) {
        throw notText();
      }
      if (at < end) {
        at++;
        return line();
      }
    }
    return any ? line() : null;
  }

  private String line() {
    number++;
    int length = begun.length();
    if (length > 0 && begun.charAt(length - 1) == '\r') {
      length--;
    }
    int from = number == 1 && length > 0 && begun.charAt(0) == '\uFEFF' ? 1 : 0;
    if (begun.indexOf("\0") >= 0) {
      throw notText();
    }
    return begun.substring(from, length);
  }

  /** Whether a line holds what could not be read as text. */
  public static boolean isGarbled(String line) {
    return line.indexOf(NOT_TEXT) >= 0;
  }

  private Trouble notText() {
    return Trouble.file(
        "line " + Math.max(1, number) + " is no text in UTF-8, and nothing was written",
        "Save it as plain text, encoded in UTF-8.");
  }

  private boolean fill() {
    try {
      at = 0;
      end = Math.max(0, in.read(buffer));
      return end > 0;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

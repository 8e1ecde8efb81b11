package dev.filial.cli.screen;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where the answers go and where questions are answered, with what is known about each.
 *
 * @param out standard output: results and nothing else
 * @param err standard error: everything that is not a result
 * @param in standard input
 * @param asks whether somebody sits at standard input and can be asked
 * @param progress whether standard error is a terminal, so that a progress line may be drawn on it
 * @param colour whether standard output may carry colour
 * @param width the columns that no line of ours exceeds
 */
public record Terminal(
    PrintWriter out,
    PrintWriter err,
    BufferedReader in,
    boolean asks,
    boolean progress,
    boolean colour,
    int width) {

  private static final int DEFAULT_WIDTH = 80;
  private static final int NARROWEST = 20;
  private static final int WIDEST = 500;

  /** Prose in longer lines than this is hard to read, however wide the window. */
  private static final int LONGEST_READABLE_LINE = 100;

  /**
   * Works out colour and width.
   *
   * @param attached which of the streams 0, 1 and 2 are terminals, as the digits of those that are
   * @param measuredWidth the window's columns, if they were measured
   * @param env the environment: {@code NO_COLOR} (set at all) and {@code TERM=dumb} forbid colour,
   *     {@code COLUMNS} decides the width, terminal or not
   */
  public static Terminal of(
      PrintWriter out,
      PrintWriter err,
      BufferedReader in,
      String attached,
      @Nullable String measuredWidth,
      Map<String, String> env) {
    boolean toTerminal = attached.contains("1");
    boolean colour = toTerminal && !env.containsKey("NO_COLOR") && !"dumb".equals(env.get("TERM"));
    int width = columns(env.get("COLUMNS"));
    if (width == 0 && toTerminal) {
      width = columns(measuredWidth);
    }
    return new Terminal(
        out,
        err,
        in,
        attached.contains("0") && attached.contains("2"),
        attached.contains("2"),
        colour,
        width == 0 ? DEFAULT_WIDTH : width);
  }

  /** The columns to which sentences are wrapped: the terminal's, but no more than are readable. */
  public int proseWidth() {
    return Math.min(width, LONGEST_READABLE_LINE);
  }

  private static int columns(@Nullable String text) {
    if (text == null || !text.matches("\\d{1,6}")) {
      return 0;
    }
    int columns = Integer.parseInt(text);
    return columns == 0 ? 0 : Math.max(NARROWEST, Math.min(WIDEST, columns));
  }
}

package dev.filial.core.exchange;

import java.util.regex.Pattern;

/**
 * Cells that no spreadsheet executes. A cell that begins with {@code =}, {@code +}, {@code -},
 * {@code @}, a tab or a carriage return is run as a formula by some programs when the file is
 * opened; an apostrophe before it makes it a text. Plain numbers stay as they are.
 *
 * <p>Writing and reading undo each other: {@code read(written(cell))} is {@code cell}, whatever
 * stands in it.
 */
public final class SafeCell {

  private static final String EXECUTED = "=+-@\t\r";
  private static final Pattern PLAIN_NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?");

  private SafeCell() {}

  /** The cell as it is written to a file. */
  public static String written(String cell) {
    return isExecutedBehindApostrophes(cell) && !PLAIN_NUMBER.matcher(cell).matches()
        ? "'" + cell
        : cell;
  }

  /** The cell as it was before it was written. */
  public static String read(String cell) {
    return !cell.isEmpty() && cell.charAt(0) == '\'' && isExecutedBehindApostrophes(cell)
        ? cell.substring(1)
        : cell;
  }

  /** So that a text which begins with an apostrophe of its own comes back with it. */
  private static boolean isExecutedBehindApostrophes(String cell) {
    int first = 0;
    while (first < cell.length() && cell.charAt(first) == '\'') {
      first++;
    }
    return first < cell.length() && EXECUTED.indexOf(cell.charAt(first)) >= 0;
  }
}

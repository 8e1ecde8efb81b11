package dev.filial.cli.screen;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A cell of a table that a spreadsheet opens. Text that begins like a formula gets an apostrophe
 * before it, so that what somebody wrote on a packet is never worked out.
 */
public final class SpreadsheetCell {

  private static final String FORMULA_BEGINS = "=+-@\t\r";

  private SpreadsheetCell() {}

  /** The text of a cell, harmless. */
  public static String text(String cell) {
    return !cell.isEmpty() && FORMULA_BEGINS.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
  }

  /** Cells as one line of comma-separated values (RFC 4180), without the line break at its end. */
  public static String line(List<String> cells) {
    return cells.stream().map(SpreadsheetCell::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    String text = text(cell);
    boolean plain =
        text.codePoints().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
  }
}

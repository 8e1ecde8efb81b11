package dev.filial.core.exchange;

import java.io.IOException;
import java.io.Writer;
import java.util.List;

/**
 * Rows of comma-separated values as RFC 4180 has them, one after the other onto a writer: quotes
 * where they are needed, lines ended by carriage return and line feed. Text that a spreadsheet
 * would run as a formula gets an apostrophe before it ({@link SafeCell}).
 */
public final class CsvRows {

  private final Writer out;

  /** Rows onto {@code out}, which the caller closes. */
  public CsvRows(Writer out) {
    this.out = out;
  }

  /**
   * Writes one row.
   *
   * @throws IOException if it cannot be written
   */
  public void row(List<String> cells) throws IOException {
    for (int i = 0; i < cells.size(); i++) {
      if (i > 0) {
        out.write(',');
      }
      out.write(cell(cells.get(i)));
    }
    out.write("\r\n");
  }

  /** One cell as it stands in a row. */
  public static String cell(String text) {
    String cell = SafeCell.written(text);
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c == '"' || c == ',' || c == '\r' || c == '\n') {
        return '"' + cell.replace("\"", "\"\"") + '"';
      }
    }
    return cell;
  }
}

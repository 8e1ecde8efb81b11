package dev.filial.cli.command;

import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.exchange.CsvRows;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Rows of a table for a spreadsheet: commas between cells, quotes where needed, lines ended as RFC
 * 4180 has it. Text that a spreadsheet would take for a formula gets an apostrophe before it
 * (common practice, no source); numbers are plain, with a point.
 */
final class CsvText {

  private final StringBuilder text = new StringBuilder();

  /** The option that asks for one. */
  static final class Option {
    private final BooleanSupplier asked;
    private final Words words;

    /** Adds {@code --csv}. */
    Option(Words words) {
      this.words = words;
      asked = words.flag("--csv", "Write the table as CSV, for a spreadsheet.");
    }

    /**
     * Whether it was asked for.
     *
     * @throws Trouble if JSON was asked for too
     */
    boolean isAsked() {
      if (asked.getAsBoolean() && words.json()) {
        throw Trouble.usage(
            "--csv and --json are two forms of one answer", "Leave one of them out.");
      }
      return asked.getAsBoolean();
    }
  }

  /** Adds a row; null is an empty cell. */
  CsvText row(@Nullable Object... cells) {
    for (int i = 0; i < cells.length; i++) {
      text.append(i == 0 ? "" : ",").append(cell(cells[i]));
    }
    text.append("\r\n");
    return this;
  }

  private static String cell(@Nullable Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof Double number) {
      return String.format(Locale.ROOT, "%.6f", number);
    }
    if (value instanceof BigDecimal number) {
      return number.toPlainString();
    }
    if (value instanceof Number) {
      return value.toString();
    }
    return CsvRows.cell(value.toString());
  }

  /** All rows. */
  String text() {
    return text.toString();
  }
}

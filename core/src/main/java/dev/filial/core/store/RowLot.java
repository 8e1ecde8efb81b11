package dev.filial.core.store;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Rows of one form that are inserted together: a statement costs as much as several of its rows,
 * and each value that is handed to SQLite as much as writing it.
 *
 * <p>What is handed in is written with {@link #write} at the latest. A lot is never to be undone
 * alone: what fails of it fails the whole transaction. So SQLite is told to stop where it fails
 * ({@code OR FAIL}) and need not keep every page as it was before the statement.
 */
final class RowLot {

  /** Rows in one statement, at most; fewer go in by halves of it, so that few are ever prepared. */
  private static final int MOST = 32;

  /** So few go into one statement; more than a short command has. */
  private static final int FEW = 7;

  private final Sql sql;
  private final String beginning;
  private final String row;
  private final int width;
  private final Map<Integer, String> statements = new HashMap<>();
  private final @Nullable Object[] waiting;
  private int filled;

  /** Stand in every row: the time and the writer of entries, say. */
  private @Nullable Object[] shared = {};

  /**
   * For one form of row.
   *
   * @param into the statement up to the values of a row: {@code INSERT OR FAIL INTO table}
   * @param values the value of each column: {@code column1}, {@code column2} … are those of the row
   *     that is handed in; {@code ?1}, {@code ?2} … those that are shared; or what stands there
   * @param width how many values of a row are handed in
   */
  RowLot(Sql sql, String into, String values, int width) {
    this.sql = sql;
    this.beginning = into + " SELECT " + values + " FROM (VALUES ";
    this.row = "(?" + ", ?".repeat(width - 1) + ")";
    this.width = width;
    this.waiting = new @Nullable Object[MOST * width];
  }

  /** Says what stands in every row from now on. */
  void share(@Nullable Object... values) {
    if (!Arrays.equals(shared, values)) {
      write();
      shared = values;
    }
  }

  /** Takes a row; it may be written at once. Values of null are left out, having no place in it. */
  void add(@Nullable Object... values) {
    int end = filled + width;
    for (Object value : values) {
      if (value != null) {
        waiting[filled++] = value;
      }
    }
    if (filled != end) {
      throw new IllegalArgumentException("a row of other than " + width + " values");
    }
    if (filled == waiting.length) {
      write();
    }
  }

  /** Has all rows written. */
  void write() {
    int from = 0;
    while (from < filled) {
      int rows = together((filled - from) / width);
      @Nullable Object[] values = Arrays.copyOf(shared, shared.length + rows * width);
      System.arraycopy(waiting, from, values, shared.length, rows * width);
      String statement = statements.get(rows);
      if (statement == null) {
        statement = statement(rows);
        statements.put(rows, statement);
      }
      sql.update(statement, values);
      from += rows * width;
    }
    filled = 0;
  }

  /** Leaves out the rows that were not written yet. */
  void forget() {
    filled = 0;
  }

  /** How many of so many rows go into the next statement. */
  private static int together(int rows) {
    return rows <= FEW ? rows : Math.min(MOST, Integer.highestOneBit(rows));
  }

  private String statement(int rows) {
    return beginning + row + (", " + row).repeat(rows - 1) + ")";
  }
}

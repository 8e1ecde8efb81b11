package dev.filial.core.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * Rows of one form that are inserted together, since a statement costs as much as several of its
 * rows. What is handed in is written with {@link #write} at the latest.
 */
final class RowLot {

  /** Rows in one statement, at most; fewer go in by halves of it, so that few are ever prepared. */
  private static final int MOST = 32;

  private final Sql sql;
  private final int width;
  private final IntFunction<String> statement;
  private final Map<Integer, String> statements = new TreeMap<>();
  private final List<@Nullable Object> values = new ArrayList<>();

  /**
   * For one form of row.
   *
   * @param into the statement up to {@code VALUES}
   * @param row the values of a row, in parentheses
   * @param width how many question marks stand in it
   */
  RowLot(Sql sql, String into, String row, int width) {
    this.sql = sql;
    this.width = width;
    this.statement = rows -> into + " VALUES " + row + (", " + row).repeat(rows - 1);
  }

  /** Takes a row; it may be written at once. */
  void add(@Nullable Object... row) {
    if (row.length != width) {
      throw new IllegalArgumentException(row.length + " values where " + width + " are written");
    }
    for (Object value : row) {
      values.add(value);
    }
    if (values.size() == MOST * width) {
      write();
    }
  }

  /** Has all rows written. */
  void write() {
    int from = 0;
    for (int rows = MOST; rows > 0; rows /= 2) {
      while (values.size() - from >= rows * width) {
        int to = from + rows * width;
        sql.update(
            statements.computeIfAbsent(rows, statement::apply), values.subList(from, to).toArray());
        from = to;
      }
    }
    values.clear();
  }
}

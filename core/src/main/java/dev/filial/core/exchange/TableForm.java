package dev.filial.core.exchange;

import java.util.List;

/**
 * A form in which things are handed on as rows of a table.
 *
 * @param <T> what a row is of
 */
public interface TableForm<T> {

  /** The headers of the columns, in order. */
  List<String> columns();

  /** The cells of one row, as many as there are columns; empty where nothing is known. */
  List<String> row(T thing);
}

package dev.filial.cli.screen;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Rows under headings. Columns take what they need; where the terminal is narrower the widest give
 * way first and their cells wrap, but no word is cut. Where even that does not fit, each row is
 * written as lines of heading and value, one under the other.
 */
public final class Table {

  private static final int GAP = 2;

  /** A single word wider than this (a path, a digest) may be cut. */
  private static final int LONGEST_WHOLE_WORD = 30;

  private record Column(String heading, boolean right) {}

  private final List<Column> columns = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();

  /** Adds a column of text. */
  public Table column(String heading) {
    columns.add(new Column(heading, false));
    return this;
  }

  /** Adds a column of numbers, set flush right. */
  public Table numbers(String heading) {
    columns.add(new Column(heading, true));
    return this;
  }

  /**
   * Adds a row.
   *
   * @throws IllegalArgumentException if there are not as many cells as columns
   */
  public Table row(Object... cells) {
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException(
          cells.length + " cells for " + columns.size() + " columns");
    }
    List<String> row = new ArrayList<>(cells.length);
    for (Object cell : cells) {
      row.add(String.valueOf(cell));
    }
    rows.add(row);
    return this;
  }

  /** Whether no row was added. */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The lines of the table, headings and a rule first, none wider than {@code width}. */
  List<String> layOut(int width) {
    int[] widths = fit(width);
    return widths.length == 0 ? stacked(width) : tabulated(widths);
  }

  private List<String> tabulated(int[] widths) {
    List<String> lines = new ArrayList<>();
    List<String> headings = new ArrayList<>();
    for (Column column : columns) {
      headings.add(column.heading());
    }
    addRow(headings, widths, lines);
    List<String> rules = new ArrayList<>();
    for (int columnWidth : widths) {
      rules.add("─".repeat(columnWidth));
    }
    addRow(rules, widths, lines);
    for (List<String> row : rows) {
      addRow(row, widths, lines);
    }
    return lines;
  }

  private void addRow(List<String> cells, int[] widths, List<String> lines) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < widths.length; i++) {
      List<String> cell = Wrap.lines(cells.get(i), Math.max(2, widths[i]));
      wrapped.add(cell);
      height = Math.max(height, cell.size());
    }
    for (int line = 0; line < height; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        List<String> cell = wrapped.get(i);
        String part = line < cell.size() ? cell.get(line) : "";
        String padding = " ".repeat(Math.max(0, widths[i] - DisplayWidth.of(part)));
        text.append(i == 0 ? "" : " ".repeat(GAP));
        text.append(columns.get(i).right() ? padding + part : part + padding);
      }
      lines.add(text.toString().stripTrailing());
    }
  }

  private List<String> stacked(int width) {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      for (int i = 0; i < row.size(); i++) {
        String heading = columns.get(i).heading();
        if (!row.get(i).isEmpty()) {
          lines.addAll(
              Wrap.lines(heading.isEmpty() ? row.get(i) : heading + ": " + row.get(i), width));
        }
      }
    }
    return lines;
  }

  /** The widths of the columns, or none if the table cannot stand in {@code width} columns. */
  private int[] fit(int width) {
    int[] widths = new int[columns.size()];
    int[] least = new int[columns.size()];
    int total = GAP * (columns.size() - 1);
    for (int i = 0; i < widths.length; i++) {
      for (String cell : columnCells(i)) {
        for (String line : cell.split("\n", -1)) {
          widths[i] = Math.max(widths[i], DisplayWidth.of(line));
        }
        least[i] = Math.max(least[i], Math.min(LONGEST_WHOLE_WORD, Wrap.widestWord(cell)));
      }
      widths[i] = Math.max(2, widths[i]);
      least[i] = Math.max(2, least[i]);
      total += widths[i];
    }
    for (; total > width; total--) {
      int widest = -1;
      for (int i = 0; i < widths.length; i++) {
        if (widths[i] > least[i] && (widest < 0 || widths[i] > widths[widest])) {
          widest = i;
        }
      }
      if (widest < 0) {
        return new int[0];
      }
      widths[widest]--;
    }
    return widths;
  }

  private List<String> columnCells(int index) {
    List<String> cells = new ArrayList<>(Collections.singleton(columns.get(index).heading()));
    for (List<String> row : rows) {
      cells.add(row.get(index));
    }
    return cells;
  }
}

package dev.filial.core.spreadsheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A table in a file: how it is written, and the headers of its columns.
 *
 * @param file where it lies
 * @param form how it is written
 * @param columns the headers, as they stand there without outer spaces
 */
public record Sheet(Path file, SheetForm form, List<String> columns) {

  /** The column that a file of refused rows has beside those of the table. */
  public static final String REASON = "Filial: why not";

  /** Copies the list. */
  public Sheet {
    columns = List.copyOf(columns);
  }

  /**
   * Looks at a file.
   *
   * @throws SheetException if it is empty, no text, or has no header
   * @throws IOException if it cannot be read
   */
  public static Sheet of(Path file) throws IOException {
    SheetForm form = SheetForm.of(file);
    Sheet headless = new Sheet(file, form, List.of());
    try (SheetRows rows = headless.open(Files.newInputStream(file))) {
      Optional<SheetRow> header = rows.next();
      if (header.isEmpty() || header.get().isBlank()) {
        throw new SheetException(
            file + " does not begin with a row of column headers; give each column a name");
      }
      return new Sheet(file, form, header.get().cells().stream().map(String::strip).toList());
    }
  }

  /** The rows from the header on. */
  private SheetRows open(InputStream in) throws IOException {
    SheetRows rows = new SheetRows(form.reader(in), form.separator());
    if (form.stated()) {
      Optional<SheetRow> unused = rows.next();
    }
    return rows;
  }

  private SheetRows rows() throws IOException {
    return rows(Files.newInputStream(file));
  }

  /** The rows behind the header, out of a stream of the file's bytes. */
  SheetRows rows(InputStream in) throws IOException {
    SheetRows rows = open(in);
    Optional<SheetRow> unused = rows.next();
    return rows;
  }

  /** A few rows from the beginning, to guess by. */
  List<SheetRow> sample(int most) throws IOException {
    List<SheetRow> sample = new ArrayList<>();
    try (SheetRows rows = rows()) {
      Optional<SheetRow> row = rows.next();
      while (row.isPresent() && sample.size() < most) {
        if (!row.get().isBlank() && row.get().cells().size() == columns.size()) {
          sample.add(row.get());
        }
        row = rows.next();
      }
    }
    return sample;
  }

  /**
   * The place of a column: by its header, in either case, or as {@code column 3}.
   *
   * @throws SheetException if there is none, or two are headed so
   */
  int place(String named) {
    int found = -1;
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).equalsIgnoreCase(named.strip())) {
        if (found >= 0) {
          throw new SheetException(
              "two columns are headed \""
                  + columns.get(i)
                  + "\"; say which by its place: column "
                  + number(found)
                  + " or column "
                  + number(i));
        }
        found = i;
      }
    }
    if (found < 0) {
      found = byPlace(named.strip().toLowerCase(Locale.ROOT));
    }
    if (found < 0) {
      throw new SheetException(
          "no column is headed \"" + named + "\"; the columns are " + String.join(", ", columns));
    }
    return found;
  }

  private int byPlace(String named) {
    if (!named.matches("column \\d{1,5}")) {
      return -1;
    }
    int place = Integer.parseInt(named, 7, named.length(), 10);
    return place >= 1 && place <= number(columns.size() - 1) ? place - 1 + reasons() : -1;
  }

  /** What a mapping calls the column at a place. */
  private int number(int place) {
    return place + 1 - reasons();
  }

  /**
   * How many columns of reasons stand before all others: a mapping by places is that of the table
   * which the refused rows came from.
   */
  private int reasons() {
    return !columns.isEmpty() && columns.get(0).equals(REASON) ? 1 : 0;
  }

  /** How a mapping names the column at a place: by its header if that will do. */
  String nameOf(int place) {
    String header = columns.get(place);
    Set<Integer> same = new HashSet<>();
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).equalsIgnoreCase(header)) {
        same.add(i);
      }
    }
    boolean plain =
        same.size() == 1
            && !header.isEmpty()
            && header.lines().count() == 1
            && !header.startsWith("\"");
    return plain ? header : "column " + number(place);
  }
}

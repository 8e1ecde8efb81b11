package dev.filial.core.spreadsheet;

import dev.filial.core.exchange.SafeCell;
import dev.filial.core.store.PassingFile;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.SequenceWriter;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/**
 * The rows that were not taken, each as it stood with the reason before it, in a file of their own
 * that a spreadsheet opens: mended there, it can be taken in like the first. The reason comes
 * first, since behind a row with a cell too few it would stand under another column's header.
 *
 * <p>It has its name only when it is whole, and never takes the place of another file.
 */
final class RejectedRows implements AutoCloseable {

  private final Path file;
  private final PassingFile passing;
  private final Writer text;
  private final SequenceWriter rows;
  private final int reason;
  private final int width;
  private boolean published;

  private RejectedRows(Path file, BoundMapping columns) throws IOException {
    this.file = file;
    this.reason = columns.reason();
    this.width = columns.sheet().columns().size();
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || Files.exists(file)) {
      throw new FileAlreadyExistsException(file.toString());
    }
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(folder.toString());
    }
    passing = PassingFile.beside(file);
    try {
      text = new BufferedWriter(new OutputStreamWriter(passing.stream(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      passing.close();
      throw e;
    }
    // The mark by which spreadsheets know UTF-8.
    text.write('\uFEFF');
    rows =
        new CsvMapper()
            .writer(
                CsvSchema.emptySchema()
                    .withColumnSeparator(columns.sheet().form().separator())
                    .withLineSeparator("\r\n"))
            .writeValues(text);
  }

  /**
   * Begins one, with the headers of the table.
   *
   * @throws IOException if there is a file of that name, or none can be made
   */
  static RejectedRows into(Path file, BoundMapping columns) throws IOException {
    RejectedRows rejected = new RejectedRows(file, columns);
    try {
      rejected.write(columns.sheet().columns(), Sheet.REASON);
      return rejected;
    } catch (UncheckedIOException e) {
      rejected.close();
      throw e;
    }
  }

  /** Adds a row and why it was not taken. */
  void add(SheetRow row, String why) {
    write(row.cells(), why);
  }

  private void write(List<String> cells, String why) {
    List<String> written = new ArrayList<>(cells.size() + 1);
    written.add(SafeCell.written(why));
    // Of a row with cells too many or too few nobody knows which one is an older reason, unless
    // that
    // stands before all others.
    boolean known = cells.size() == width || reason == 0;
    for (int i = 0; i < cells.size(); i++) {
      if (i != reason || !known) {
        written.add(SafeCell.written(cells.get(i)));
      }
    }
    try {
      rows.write(written.toArray(String[]::new));
    } catch (JacksonException e) {
      throw new UncheckedIOException(told(e));
    }
  }

  private IOException told(Exception cause) {
    Throwable deepest = cause;
    while (deepest.getCause() != null) {
      deepest = deepest.getCause();
    }
    FileSystemException told =
        new FileSystemException(file.toString(), null, String.valueOf(deepest.getMessage()));
    told.initCause(cause);
    return told;
  }

  /**
   * Gives the file its name, once all of it is on the disk.
   *
   * @throws UncheckedIOException if it cannot be written, or there is one of that name by now
   */
  void publish() {
    try {
      rows.close();
      text.close();
      passing.publish(file);
      published = true;
    } catch (JacksonException e) {
      throw new UncheckedIOException(told(e));
    } catch (FileAlreadyExistsException e) {
      throw new UncheckedIOException(e);
    } catch (IOException e) {
      throw new UncheckedIOException(told(e));
    }
  }

  /** Takes the finished file away again, because the register could not be written after all. */
  void withdraw() {
    if (published) {
      discard(file);
      published = false;
    }
  }

  @Override
  public void close() {
    try {
      text.close();
    } catch (IOException e) {
      // That it could not be written was told when it was tried, and nothing is left of it.
      return;
    } finally {
      passing.close();
    }
  }

  private static void discard(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      return; // what is left over carries a name of its own and is in nobody's way
    }
  }
}

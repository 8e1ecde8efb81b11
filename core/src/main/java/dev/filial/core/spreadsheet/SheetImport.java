package dev.filial.core.spreadsheet;

import dev.filial.core.answer.Cautions;
import dev.filial.core.answer.Telling;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Caution;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.Statement;
import dev.filial.core.store.Book;
import dev.filial.core.store.RegisterStore;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Takes a table into a register: each row becomes the entries that would have been typed for it,
 * under the same rules.
 *
 * <p>All rows are written in one transaction. Unless the good ones are asked for alone, one row
 * that is refused leaves the register as it was. A trial is the import itself, taken back at the
 * end, so that it finds what the import would find: rows that lean on rows above them, and codes
 * that two rows have. No row is kept in memory after it was read.
 */
public final class SheetImport {

  /** After so many rows those who wait are told how far it is. */
  private static final int TOLD_EVERY = 2_000;

  private final BoundMapping columns;
  private final LocalDate today;
  private final Progress progress;
  private final int listed;

  private SheetImport(BoundMapping columns, LocalDate today, Progress progress, int listed) {
    this.columns = columns;
    this.today = today;
    this.progress = progress;
    this.listed = listed;
  }

  /**
   * An import of {@code sheet}.
   *
   * @param today a date after it is warned of, and a code that is given out for a row without a
   *     date is one of its year
   * @throws SheetException if the mapping names a column that is not there, or the table is a list
   *     of crosses that was exported from another register
   */
  public static SheetImport of(Sheet sheet, Mapping mapping, LocalDate today) {
    ExportedTable.requireNoCrosses(sheet);
    return new SheetImport(new BoundMapping(sheet, mapping), today, Progress.NONE, 20);
  }

  /** The same, telling {@code progress} how far it is. */
  public SheetImport withProgress(Progress progress) {
    return new SheetImport(columns, today, progress, listed);
  }

  /** The same, keeping the first {@code most} complaints and warnings; all are counted. */
  public SheetImport withListed(int most) {
    return new SheetImport(columns, today, progress, most);
  }

  /**
   * What is wrong with a row.
   *
   * @param line the line of the file on which it begins
   * @param column the header of the column; empty where the row as a whole is refused
   * @param why what is wrong and what to do
   */
  public record Complaint(long line, String column, String why) {
    /** In one sentence. */
    public String inWords() {
      return (column.isEmpty() ? "" : column + ": ") + why;
    }
  }

  /**
   * An entry that a row became.
   *
   * @param line the line of the file
   * @param text what the entry says
   */
  public record Sample(long line, String text) {}

  /**
   * What came of it, or would.
   *
   * @param written whether the register has the entries now
   * @param rows how many rows there are, without blank ones
   * @param taken how many were taken
   * @param refused how many were not
   * @param blank how many rows had nothing in any cell
   * @param first the number of the first entry; 0 when there is none
   * @param last the number of the last entry
   * @param complaints the first of what is wrong with the rows refused
   * @param warned how many warnings there were
   * @param warnings the first of them
   * @param samples the first entries
   * @param unmapped columns that nothing was said of; nothing of them was read
   */
  public record Outcome(
      boolean written,
      long rows,
      long taken,
      long refused,
      long blank,
      long first,
      long last,
      List<Complaint> complaints,
      long warned,
      List<Complaint> warnings,
      List<Sample> samples,
      List<String> unmapped) {

    /** Copies the lists. */
    public Outcome {
      complaints = List.copyOf(complaints);
      warnings = List.copyOf(warnings);
      samples = List.copyOf(samples);
      unmapped = List.copyOf(unmapped);
    }
  }

  /** Takes back what was written, bearing what came of it. */
  private static final class TakenBack extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Outcome outcome;

    TakenBack(Outcome outcome) {
      super("taken back", null, false, false);
      this.outcome = outcome;
    }
  }

  /**
   * Does everything and takes it back: the register is as it was.
   *
   * @param by who would write
   * @param time the time the entries would carry
   * @throws SheetException if the file cannot be parted into cells
   * @throws IOException if it cannot be read
   * @throws dev.filial.core.store.StoreException if the register cannot be written
   */
  public Outcome tryOut(RegisterStore store, String by, Instant time) throws IOException {
    return write(store, by, time, null, false);
  }

  /**
   * Writes all rows or, when one is refused, none.
   *
   * @param by who writes
   * @param time the time the entries carry
   * @throws SheetException if the file cannot be parted into cells; nothing was then written
   * @throws IOException if it cannot be read; nothing was then written
   * @throws dev.filial.core.store.StoreException if the register cannot be written
   */
  public Outcome applyAll(RegisterStore store, String by, Instant time) throws IOException {
    return write(store, by, time, null, true);
  }

  /**
   * Writes the rows that are good; the others go to a file of their own, each with its reason. When
   * none is refused, there is no such file.
   *
   * @param rejects that file, which is not there yet
   * @param by who writes
   * @param time the time the entries carry
   * @throws SheetException if the file cannot be parted into cells; nothing was then written
   * @throws IOException if it cannot be read, or the other not written; nothing was then written
   * @throws dev.filial.core.store.StoreException if the register cannot be written
   */
  public Outcome applyGood(RegisterStore store, Path rejects, String by, Instant time)
      throws IOException {
    try (RejectedRows rejected = RejectedRows.into(rejects, columns)) {
      boolean done = false;
      try {
        Outcome outcome = write(store, by, time, rejected, true);
        done = true;
        return outcome;
      } finally {
        if (!done) {
          rejected.withdraw();
        }
      }
    }
  }

  private Outcome write(
      RegisterStore store, String by, Instant time, @Nullable RejectedRows rejected, boolean keep)
      throws IOException {
    try (Counting in = new Counting(Files.newInputStream(columns.sheet().file()));
        SheetRows rows = columns.sheet().rows(in)) {
      long length = Math.max(1, Files.size(columns.sheet().file()));
      return store.write(
          by,
          time,
          book -> {
            Run run = new Run(book, rejected);
            run.all(rows, in, length);
            boolean stays = keep && (rejected != null || run.refused == 0);
            Outcome outcome = run.outcome(stays);
            if (!stays) {
              throw new TakenBack(outcome);
            }
            if (rejected != null && run.refused > 0) {
              // Before the register is: better a list of rows twice than a row nowhere.
              rejected.publish();
            }
            return outcome;
          });
    } catch (TakenBack back) {
      return back.outcome;
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** Counts the bytes that were read. */
  private static final class Counting extends FilterInputStream {
    private long read;

    Counting(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      int one = super.read();
      read += one < 0 ? 0 : 1;
      return one;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      int length = super.read(into, from, most);
      read += Math.max(0, length);
      return length;
    }
  }

  /** One pass through the table, over a book that is being written. */
  private final class Run {
    private final Book book;
    private final @Nullable RejectedRows rejected;
    private final SheetDates dates;
    private final SheetNumbers numbers;
    private final RowEntries entries;
    private final long before;
    private final Set<Caution> said = EnumSet.noneOf(Caution.class);
    private final List<Complaint> complaints = new ArrayList<>();
    private final List<Complaint> warnings = new ArrayList<>();
    private final List<Sample> samples = new ArrayList<>();
    private long line;
    private long taken;
    private long refused;
    private long blank;
    private long warned;

    Run(Book book, @Nullable RejectedRows rejected) {
      Mapping mapping = columns.mapping();
      this.book = book;
      this.rejected = rejected;
      this.before = book.size();
      this.dates = new SheetDates(mapping.dayOrder(), today.getYear());
      this.numbers = new SheetNumbers(mapping.decimal());
      this.entries = new RowEntries(book, mapping.rows(), before, today.getYear(), this::warn);
    }

    void all(SheetRows rows, Counting in, long length) {
      Optional<SheetRow> row = rows.next();
      while (row.isPresent()) {
        take(row.get());
        long read = taken + refused;
        if (read % TOLD_EVERY == 0 && read > 0) {
          progress.at(read, Math.min(1, (double) in.read / length));
        }
        row = rows.next();
      }
      progress.at(taken + refused, 1);
    }

    private void take(SheetRow row) {
      line = row.line();
      if (row.isBlank()) {
        blank++;
        return;
      }
      try {
        List<Statement> statements = entries.of(new RowReading(columns, row, dates, numbers));
        if (statements.size() == 1) {
          append(statements.get(0));
        } else {
          book.attempt(() -> statements.forEach(this::append));
        }
        taken++;
      } catch (CellRefusal e) {
        refuse(row, e.column(), String.valueOf(e.getMessage()));
      } catch (RegisterRefusal | IllegalArgumentException e) {
        refuse(row, "", String.valueOf(e.getMessage()));
      }
    }

    private void append(Statement statement) {
      Accepted accepted = book.append(statement);
      for (String warning : accepted.warnings()) {
        warn(warning);
      }
      mind(accepted, statement);
      PartialDate date = statement.date();
      if (date != null && date.earliest().isAfter(today)) {
        warn(date + " has not come yet; see whether that is a slip");
      }
      if (samples.size() < 3) {
        samples.add(new Sample(line, Telling.of(accepted.entry().statement())));
      }
    }

    /** Asked once for each caution, since the answer is the same for all rows that follow. */
    private void mind(Accepted accepted, Statement statement) {
      if (said.containsAll(Caution.of(statement))) {
        return;
      }
      for (String caution : Cautions.of(book, accepted.entry(), statement)) {
        warn(caution);
      }
      said.addAll(Caution.of(statement));
    }

    private void warn(String warning) {
      warned++;
      if (warnings.size() < listed) {
        warnings.add(new Complaint(line, "", warning));
      }
    }

    private void refuse(SheetRow row, String column, String why) {
      refused++;
      Complaint complaint = new Complaint(row.line(), column, why);
      if (complaints.size() < listed) {
        complaints.add(complaint);
      }
      if (rejected != null) {
        rejected.add(row, "line " + row.line() + ", " + complaint.inWords());
      }
    }

    Outcome outcome(boolean written) {
      return new Outcome(
          written,
          taken + refused,
          taken,
          refused,
          blank,
          book.size() > before ? before + 1 : 0,
          book.size(),
          complaints,
          warned,
          warnings,
          samples,
          columns.unmapped());
    }
  }
}

package dev.filial.core.store;

import dev.filial.core.register.Accepted;
import dev.filial.core.register.Clerk;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Entry;
import dev.filial.core.register.ForwardingView;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterTables;
import dev.filial.core.register.RegisterView;
import dev.filial.core.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A register in one SQLite file, with nothing beside it while no command runs.
 *
 * <p>Entries and what is derived from them change in one transaction, which is on the disk before
 * {@link #write} returns: rollback journal, {@code synchronous = EXTRA}, no write-ahead log. After
 * a crash the journal may lie beside the file; it must travel with it, and the next opening settles
 * it. Writers take the file in turn and wait ten seconds for each other.
 *
 * <p>While a store is open, nothing else in the same program may open and close the file by itself,
 * to copy it say: on POSIX systems that takes the store's locks away.
 */
public final class SqliteStore extends ForwardingView implements RegisterStore {

  private final Sql sql;
  private final SqliteReader reader;
  private final SqliteWriter writer;

  private SqliteStore(Sql sql) {
    this.sql = sql;
    this.reader = new SqliteReader(sql);
    this.writer = new SqliteWriter(sql);
  }

  /**
   * Makes a new register file with its opening entry, and opens it.
   *
   * @param opening whose it is
   * @throws StoreException if there is a file of that name already, or it cannot be written
   */
  public static SqliteStore create(Path file, RegisterOpened opening, Instant time) {
    Accepted unused = create(file, opening.grower(), time, book -> book.append(opening));
    return open(file);
  }

  /**
   * Makes a new register file that holds what {@code work} appends to it. When {@code work} throws,
   * there is no file; nobody ever sees one that is half made.
   *
   * @param by who writes
   * @param time the time the entries carry
   * @return what {@code work} returns
   * @throws dev.filial.core.register.RegisterRefusal if a rule refuses an entry
   * @throws StoreException if there is a file of that name already, or it cannot be written
   */
  public static <R> R create(Path file, String by, Instant time, Function<Book, R> work) {
    return make(file, store -> store.write(by, time, work));
  }

  /**
   * Makes a new register file out of entries kept elsewhere, each exactly as it was written.
   *
   * @param entries a whole book, from entry 1 without a gap
   * @return how many there were
   * @throws dev.filial.core.register.RegisterRefusal if an entry is not as it was sealed
   * @throws StoreException if there is a file of that name already, or it cannot be written
   */
  public static long restore(Path file, Iterable<Entry> entries) {
    return make(
        file,
        store ->
            store.sql.transaction(
                "BEGIN IMMEDIATE",
                () -> reread(entries, delta -> store.writer.apply(List.of(delta)))));
  }

  private static <R> R make(Path file, Function<SqliteStore, R> fill) {
    Path folder = file.toAbsolutePath().getParent();
    if (Files.exists(file) || folder == null) {
      throw exists(file, null);
    }
    if (!Files.isDirectory(folder)) {
      throw new StoreException(
          Reason.MISSING,
          file + " cannot be made: there is no folder " + folder + "; make it first");
    }
    if (!Files.isWritable(folder)) {
      throw new StoreException(
          Reason.READ_ONLY,
          file + " cannot be made: the folder " + folder + " is read-only; choose another");
    }
    try (PassingFile making = PassingFile.beside(file)) {
      R result;
      try (SqliteStore store = new SqliteStore(SqliteFile.make(making.path(), file))) {
        store.sql.run("BEGIN");
        SqliteSchema.layOut(store.sql);
        store.sql.run("COMMIT");
        result = fill.apply(store);
      }
      making.publish(file);
      return result;
    } catch (FileAlreadyExistsException e) {
      throw exists(file, e);
    } catch (IOException e) {
      throw new StoreException(
          Reason.FAILED, file + " cannot be made: " + e.getMessage() + "; see its folder", e);
    }
  }

  private static StoreException exists(Path file, @Nullable IOException cause) {
    String message = file + " is there already; choose another name, or go on using it";
    return cause == null
        ? new StoreException(Reason.EXISTS, message)
        : new StoreException(Reason.EXISTS, message, cause);
  }

  /**
   * Opens a register file. One of an older layout is brought up to date after a copy was laid
   * beside it; one that may not be written is opened for reading.
   *
   * @throws StoreException if there is none, it is something else, or a newer Filial wrote it
   */
  public static SqliteStore open(Path file) {
    boolean readOnly = Files.exists(file) && !Files.isWritable(file);
    SqliteStore store = new SqliteStore(SqliteFile.open(file, readOnly));
    try {
      if (store.layout() < SqliteSchema.VERSION) {
        store.bringUpToDate(file, readOnly);
      }
      return store;
    } catch (RuntimeException e) {
      store.close();
      throw e;
    }
  }

  private int layout() {
    return SqliteSchema.requireNotNewer(sql);
  }

  private void bringUpToDate(Path file, boolean readOnly) {
    if (readOnly) {
      throw new StoreException(
          Reason.READ_ONLY,
          file + " is of an older layout and cannot be brought up to date: it is read-only");
    }
    SqliteFile.beDurable(sql);
    SqliteCopy.beside(file, sql, ".layout-" + layout());
    boolean unused =
        sql.transaction(
            "BEGIN IMMEDIATE",
            () -> {
              // Another command may have done it while this one waited.
              boolean needed = layout() < SqliteSchema.VERSION;
              if (needed) {
                rebuild();
                sql.run("PRAGMA user_version = " + SqliteSchema.VERSION);
              }
              return needed;
            });
  }

  /** Makes all derived tables anew from the entries. */
  private void rebuild() {
    Iterable<Entry> entries = reader.entries();
    SqliteSchema.layOutDerived(sql);
    try {
      long unused = reread(entries, writer::writeDerived);
    } catch (RegisterRefusal | IllegalArgumentException e) {
      throw new StoreException(
          Reason.DAMAGED,
          sql.file() + " is damaged: " + e.getMessage() + ". It was not changed",
          e);
    }
  }

  /** Reads a book from the beginning, handing on what each entry changes. */
  static long reread(Iterable<Entry> entries, Consumer<Delta> taker) {
    RegisterTables tables = new RegisterTables();
    for (Entry entry : entries) {
      Delta delta = Clerk.of(tables).reread(entry);
      tables.apply(delta);
      taker.accept(delta);
    }
    return tables.size();
  }

  @Override
  protected RegisterView view() {
    return reader;
  }

  @Override
  public <R> R read(Function<RegisterView, R> work) {
    if (sql.inTransaction()) {
      return work.apply(reader);
    }
    try {
      return sql.transaction("BEGIN", () -> work.apply(reader));
    } catch (NoSuchElementException | IllegalStateException | IndexOutOfBoundsException e) {
      // What no sound register leads to; a byte that was flipped may.
      requireSound(e);
      throw e;
    }
  }

  private void requireSound(RuntimeException cause) {
    List<String> faults = verify().faults();
    if (!faults.isEmpty()) {
      throw new StoreException(
          Reason.DAMAGED,
          sql.file()
              + " is damaged: "
              + faults.get(0)
              + ". Restore it from a copy, or save what can still be read",
          cause);
    }
  }

  @Override
  public <R> R write(String by, Instant time, Function<Book, R> work) {
    if (sql.inTransaction()) {
      throw new IllegalStateException("this store is being read or written; append to its book");
    }
    SqliteFile.beDurable(sql);
    return sql.transaction(
        "BEGIN IMMEDIATE",
        () -> {
          int unused = layout(); // may be newer by now
          reader.requireSound();
          try (Writing writing = new Writing(by, time)) {
            R result = work.apply(writing);
            writing.settle();
            return result;
          }
        });
  }

  private final class Writing extends WritingBook {
    private final WriteBehind behind = new WriteBehind(writer::apply);
    private final RecentView recent = new RecentView(settled());

    Writing(String by, Instant time) {
      super(by, time);
    }

    /** The register, everything accepted being written before something is looked up. */
    private RegisterView settled() {
      return new ForwardingView() {
        @Override
        protected RegisterView view() {
          behind.settle();
          return reader;
        }
      };
    }

    @Override
    protected RegisterView view() {
      return recent;
    }

    @Override
    void apply(Delta delta) {
      behind.write(behind.isLong() ? recent.withoutUnchanged(delta) : delta);
      recent.remember(delta);
    }

    @Override
    public void attempt(Runnable work) {
      behind.settle();
      boolean done = false;
      try {
        sql.attempt(
            () -> {
              work.run();
              behind.settle();
            },
            behind::forget);
        done = true;
      } finally {
        if (!done) {
          recent.forget();
        }
      }
    }

    /** Has all of it written. */
    void settle() {
      behind.settle();
    }

    @Override
    public void close() {
      behind.close();
      super.close();
    }
  }

  @Override
  public Verification verify() {
    return read(view -> new SqliteVerification(sql, reader).verify());
  }

  @Override
  public void close() {
    sql.close();
  }
}

package dev.filial.core.store;

import dev.filial.core.register.Accepted;
import dev.filial.core.register.Clerk;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Entry;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterTables;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * A register in one SQLite file, with nothing beside it while no command runs.
 *
 * <p>Entries and what is derived from them change in one transaction, which is on the disk before
 * {@link #write} returns: rollback journal, {@code synchronous = EXTRA}, no write-ahead log. After
 * a crash the journal may lie beside the file; it must travel with it, and the next opening settles
 * it. Writers take the file in turn and wait ten seconds for each other.
 */
public final class SqliteStore extends ForwardingView implements RegisterStore {

  private static final int WAIT_MILLISECONDS = 10_000;

  private final Sql sql;
  private final SqliteReader reader;
  private final SqliteWriter writer;
  private final Path file;
  private boolean writing;

  private SqliteStore(Sql sql, Path file) {
    this.sql = sql;
    this.file = file;
    this.reader = new SqliteReader(sql, file.toString());
    this.writer = new SqliteWriter(sql);
  }

  /**
   * Makes a new register file.
   *
   * @param opening whose it is
   * @throws StoreException if there is a file of that name already, or it cannot be written
   */
  public static SqliteStore create(Path file, RegisterOpened opening, Instant time) {
    Path folder = file.toAbsolutePath().getParent();
    Path making = null;
    try {
      if (Files.exists(file)) {
        throw new FileAlreadyExistsException(file.toString());
      }
      // Made under another name and moved, so that a half-made register never bears this one.
      making = Files.createTempFile(folder, ".filial-", ".new");
      try (Sql sql = connect(making, false)) {
        sql.run("PRAGMA application_id = " + SqliteSchema.APPLICATION_ID);
        sql.run("PRAGMA user_version = " + SqliteSchema.VERSION);
        for (String table : SqliteSchema.ENTRIES) {
          sql.run(table);
        }
        for (String table : SqliteSchema.DERIVED) {
          sql.run(table);
        }
      }
      Files.move(making, file);
      making = null;
    } catch (FileAlreadyExistsException e) {
      throw new StoreException(
          Reason.EXISTS, file + " is there already; choose another name, or go on using it", e);
    } catch (IOException e) {
      throw new StoreException(
          Reason.FAILED,
          file
              + " cannot be made: see whether the folder "
              + folder
              + " is there and may be written",
          e);
    } finally {
      discard(making);
    }
    SqliteStore store = open(file);
    store.append(opening, opening.grower(), time);
    return store;
  }

  private static void discard(@org.jspecify.annotations.Nullable Path making) {
    if (making != null) {
      try {
        Files.deleteIfExists(making);
      } catch (IOException e) {
        // What is left over carries a name of its own and is in nobody's way.
        return;
      }
    }
  }

  /**
   * Opens a register file. One of an older layout is brought up to date after a copy was laid
   * beside it; one that may not be written is opened for reading.
   *
   * @throws StoreException if there is none, it is something else, or a newer Filial wrote it
   */
  public static SqliteStore open(Path file) {
    requireRegister(file);
    boolean readOnly = !Files.isWritable(file);
    Sql sql = connect(file, readOnly);
    SqliteStore store = new SqliteStore(sql, file);
    try {
      int version = (int) sql.number("PRAGMA user_version");
      if (version > SqliteSchema.VERSION) {
        throw new StoreException(
            Reason.NEWER,
            file
                + " was written by a newer Filial (layout "
                + version
                + "; this one knows "
                + SqliteSchema.VERSION
                + "); nothing was changed. Use the newer Filial");
      }
      if (version < SqliteSchema.VERSION) {
        store.migrate(version, readOnly);
      }
      return store;
    } catch (RuntimeException e) {
      sql.close();
      throw e;
    }
  }

  /** Looks at the file's first hundred bytes, so that nothing that is not ours is ever opened. */
  private static void requireRegister(Path file) {
    if (!Files.exists(file)) {
      throw new StoreException(
          Reason.MISSING, "there is no register " + file + "; make one, or name another file");
    }
    byte[] header;
    try (var in = Files.newInputStream(file)) {
      header = in.readNBytes(100);
    } catch (IOException e) {
      throw new StoreException(
          Reason.FAILED, file + " cannot be read: " + e.getMessage() + "; see its permissions", e);
    }
    if (!SqliteHeader.isRegister(header)) {
      throw new StoreException(
          Reason.FOREIGN,
          file + " is not a register: it is some other kind of file; nothing was changed");
    }
  }

  private static Sql connect(Path file, boolean readOnly) {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(readOnly);
    config.setBusyTimeout(WAIT_MILLISECONDS);
    SQLiteDataSource source = new SQLiteDataSource(config);
    // As a URI, or a question mark in the name would start options of the driver's own.
    source.setUrl("jdbc:sqlite:" + file.toAbsolutePath().toUri());
    try {
      Sql sql = new Sql(source.getConnection(), file.toString());
      // In KiB: the two megabytes SQLite grants itself are read over and over by one deep lineage.
      sql.run("PRAGMA cache_size = -65536");
      if (!readOnly) {
        sql.run("PRAGMA synchronous = EXTRA");
        sql.run("PRAGMA fullfsync = 1");
      }
      return sql;
    } catch (SQLException e) {
      throw SqliteFailure.of(e, file.toString());
    }
  }

  private void migrate(int version, boolean readOnly) {
    if (readOnly) {
      throw new StoreException(
          Reason.READ_ONLY,
          file + " is of an older layout and cannot be brought up to date: it is read-only");
    }
    Path copy = file.resolveSibling(file.getFileName() + ".layout-" + version);
    if (!Files.exists(copy)) {
      sql.update("VACUUM INTO ?", copy.toString());
    }
    inTransaction(
        () -> {
          rebuild();
          sql.run("PRAGMA user_version = " + SqliteSchema.VERSION);
          return copy;
        });
  }

  /** Makes all derived tables anew from the entries. */
  private void rebuild() {
    for (String name : SqliteSchema.DERIVED_NAMES) {
      sql.run("DROP " + name.replaceFirst(" ", " IF EXISTS "));
    }
    for (String table : SqliteSchema.DERIVED) {
      sql.run(table);
    }
    RegisterTables tables = new RegisterTables();
    long size = reader.size();
    for (long number = 1; number <= size; number++) {
      Entry entry = reader.entry(number).orElseThrow(() -> gap(file));
      Delta delta = Clerk.of(tables).reread(entry);
      tables.apply(delta);
      writer.derive(delta);
    }
  }

  private static StoreException gap(Path file) {
    return new StoreException(
        Reason.DAMAGED, file + " is damaged: entries are missing; restore it from a copy");
  }

  @Override
  RegisterView view() {
    return reader;
  }

  @Override
  public <R> R write(String by, Instant time, Function<Book, R> work) {
    return inTransaction(() -> work.apply(new Writing(by, time)));
  }

  private <R> R inTransaction(java.util.function.Supplier<R> work) {
    if (writing) {
      throw new IllegalStateException("a write is under way; append to its book instead");
    }
    sql.run("BEGIN IMMEDIATE");
    writing = true;
    boolean done = false;
    try {
      R result = work.get();
      sql.run("COMMIT");
      done = true;
      return result;
    } finally {
      writing = false;
      if (!done) {
        rollBack();
      }
    }
  }

  private void rollBack() {
    try {
      sql.run("ROLLBACK");
    } catch (StoreException e) {
      // SQLite rolls back by itself when the disk is full or fails, and then has nothing to undo;
      // what made the work fail is on its way to the caller.
      return;
    }
  }

  private final class Writing extends ForwardingView implements Book {
    private final String by;
    private final Instant time;

    Writing(String by, Instant time) {
      this.by = by;
      this.time = time;
    }

    @Override
    RegisterView view() {
      return reader;
    }

    @Override
    public Accepted append(Statement statement) {
      Clerk.Outcome outcome = Clerk.of(reader).accept(statement, by, time);
      writer.apply(outcome.delta());
      return outcome.accepted();
    }
  }

  @Override
  public Verification verify() {
    List<String> faults = new ArrayList<>();
    for (String fault : sql.all("PRAGMA integrity_check", row -> row.getString(1))) {
      if (!fault.equals("ok")) {
        faults.add("SQLite finds the file damaged: " + fault);
      }
    }
    RegisterTables tables = new RegisterTables();
    long size = reader.size();
    for (long number = 1; number <= size; number++) {
      Entry entry = reader.unchecked(number);
      if (entry == null) {
        faults.add("entry " + number + " is missing");
        return new Verification(number - 1, faults);
      }
      try {
        tables.apply(Clerk.of(tables).reread(entry));
      } catch (RuntimeException e) {
        faults.add("entry " + number + " cannot be read: " + e.getMessage());
        return new Verification(number - 1, faults);
      }
    }
    faults.addAll(Differences.between(tables, reader));
    return new Verification(size, faults);
  }

  @Override
  public void close() {
    sql.close();
  }
}

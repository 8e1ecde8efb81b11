package dev.filial.core.store;

import dev.filial.core.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;
import org.sqlite.jdbc4.JDBC4Connection;

/**
 * The file of a register, and how it is opened.
 *
 * <p>Only SQLite ever opens a register. On POSIX systems a program that closes any handle of a file
 * loses all its locks on it (https://www.sqlite.org/howtocorrupt.html, section 2.2), and another
 * store of the same program may be writing.
 */
final class SqliteFile {

  private static final int WAIT_MILLISECONDS = 10_000;

  /** Reads the file as it lies there: no locks, no journal played back, nothing written. */
  private static final String AS_IT_LIES = "?immutable=1";

  private static final List<String> BESIDE = List.of("-journal", "-wal");

  private SqliteFile() {}

  /**
   * Opens a register.
   *
   * @param readOnly whether it is opened for reading alone
   * @throws StoreException if there is none, it is something else, or a newer Filial wrote it
   */
  static Sql open(Path file, boolean readOnly) {
    requireThere(file);
    if (isAnythingBeside(file)) {
      // SQLite would settle what a crash left there as soon as it reads; not in a stranger's file.
      try (Sql sql = connect(file, file, true, AS_IT_LIES)) {
        requireRegister(sql);
      }
    }
    Sql sql = connect(file, file, readOnly, "");
    try {
      requireRegister(sql);
      requireWhole(sql, file);
      // In KiB: the two megabytes SQLite grants itself are read over and over by one deep lineage.
      sql.run("PRAGMA cache_size = -65536");
      return sql;
    } catch (RuntimeException e) {
      sql.close();
      throw e;
    }
  }

  /**
   * Opens a file that does not exist yet.
   *
   * @param named the name it will have, for messages
   */
  static Sql make(Path file, Path named) {
    Sql sql = connect(file, named, false, "");
    try {
      beDurable(sql);
      return sql;
    } catch (RuntimeException e) {
      sql.close();
      throw e;
    }
  }

  /** A database in memory, for comparison. */
  static Sql inMemory() {
    return connect(":memory:", new SQLiteConfig(), "memory");
  }

  private static Sql connect(String address, SQLiteConfig config, String named) {
    // The driver would ask for the number of every row it inserts, by a statement made for that.
    config.setGetGeneratedKeys(false);
    // The driver lets one thread at a time to a connection; SQLite need not see to it once more.
    config.setOpenMode(SQLiteOpenMode.NOMUTEX);
    try {
      // Not through the driver's class, which would first be entered into Java's list of drivers.
      return new Sql(
          new JDBC4Connection("jdbc:sqlite:" + address, address, config.toProperties()), named);
    } catch (SQLException e) {
      throw SqliteFailure.of(e, named);
    }
  }

  private static void requireThere(Path file) {
    if (!Files.exists(file)) {
      throw new StoreException(
          Reason.MISSING, "there is no register " + file + "; make one, or name another file");
    }
    if (Files.isDirectory(file)) {
      throw new StoreException(
          Reason.FOREIGN, file + " is a folder, not a register; name the file in it");
    }
    if (!Files.isReadable(file)) {
      throw new StoreException(Reason.FAILED, file + " cannot be read: see its permissions");
    }
    try {
      if (Files.size(file) == 0) {
        throw new StoreException(
            Reason.FOREIGN, file + " is empty, and so no register; nothing was changed");
      }
    } catch (IOException e) {
      throw new StoreException(Reason.FAILED, file + " cannot be read: " + e.getMessage(), e);
    }
  }

  private static boolean isAnythingBeside(Path file) {
    for (String end : BESIDE) {
      if (Files.exists(beside(file, end))) {
        return true;
      }
    }
    return false;
  }

  private static Path beside(Path file, String end) {
    return file.resolveSibling(file.getFileName() + end);
  }

  private static void requireRegister(Sql sql) {
    if (sql.number("PRAGMA application_id") != SqliteSchema.APPLICATION_ID) {
      throw new StoreException(
          Reason.FOREIGN,
          sql.file() + " is not a register: it is some other kind of file; nothing was changed");
    }
    SqliteSchema.requireNotNewer(sql);
  }

  /** SQLite takes a last page that is cut off for one of zeros. */
  private static void requireWhole(Sql sql, Path file) {
    try {
      if (Files.size(file) % sql.number("PRAGMA page_size") != 0 && !isAnythingBeside(file)) {
        throw new StoreException(
            Reason.DAMAGED,
            file
                + " is damaged: its end is cut off. It was not written to; restore it from a copy,"
                + " or save what can still be read");
      }
    } catch (IOException e) {
      throw new StoreException(Reason.FAILED, file + " cannot be read: " + e.getMessage(), e);
    }
  }

  private static Sql connect(Path file, Path named, boolean readOnly, String how) {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(readOnly);
    config.setBusyTimeout(WAIT_MILLISECONDS);
    // As a URI, or a question mark in the name would start options of the driver's own.
    return connect(file.toAbsolutePath().toUri() + how, config, named.toString());
  }

  /** Has every transaction on the disk before it is said to be done; called before the first. */
  static void beDurable(Sql sql) {
    // Another program may have left the file to a write-ahead log, which lies beside it.
    sql.all("PRAGMA journal_mode = DELETE", row -> row.getString(1));
    sql.run("PRAGMA synchronous = EXTRA");
    sql.run("PRAGMA fullfsync = 1");
    // Pages whose parts overlap are refused before anything is written to them.
    sql.run("PRAGMA cell_size_check = 1");
  }
}

package dev.filial.core.store;

import dev.filial.core.store.StoreException.Reason;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConnection;

/** Runs SQL on one connection, keeping prepared statements, and tells failures in our words. */
final class Sql implements AutoCloseable {

  /** Reads one row. */
  @FunctionalInterface
  interface Row<T> {
    T read(ResultSet row) throws SQLException;
  }

  private final SQLiteConnection connection;
  private final String file;
  private final Map<String, PreparedStatement> prepared = new HashMap<>();
  private boolean inTransaction;

  /** What went wrong in this transaction; SQLite may have ended it then, without being asked. */
  private @Nullable StoreException failure;

  Sql(SQLiteConnection connection, String file) {
    this.connection = connection;
    this.file = file;
  }

  /** The name of the file, for messages. */
  String file() {
    return file;
  }

  <T> List<T> all(String sql, Row<T> reader, @Nullable Object... values) {
    List<T> found = new ArrayList<>();
    each(sql, reader, found::add, values);
    return found;
  }

  /** Reads row after row without keeping any. */
  <T> void each(String sql, Row<T> reader, Consumer<T> taker, @Nullable Object... values) {
    try (ResultSet rows = bind(sql, values).executeQuery()) {
      while (rows.next()) {
        taker.accept(read(rows, reader));
      }
    } catch (SQLException e) {
      throw failed(e);
    }
  }

  <T> Optional<T> one(String sql, Row<T> reader, @Nullable Object... values) {
    try (ResultSet rows = bind(sql, values).executeQuery()) {
      return rows.next() ? Optional.of(read(rows, reader)) : Optional.empty();
    } catch (SQLException e) {
      throw failed(e);
    }
  }

  private <T> T read(ResultSet row, Row<T> reader) throws SQLException {
    try {
      return reader.read(row);
    } catch (StoreException e) {
      throw e;
    } catch (RuntimeException e) {
      // What we wrote we can read; so this is not what we wrote.
      throw new StoreException(
          Reason.DAMAGED,
          file
              + " is damaged: it says what cannot be ("
              + e.getMessage()
              + "). Restore it from a copy, or save what can still be read",
          e);
    }
  }

  long number(String sql, @Nullable Object... values) {
    return one(sql, row -> row.getLong(1), values).orElse(0L);
  }

  void update(String sql, @Nullable Object... values) {
    try {
      bind(sql, values).executeUpdate();
    } catch (SQLException e) {
      throw failed(e);
    }
  }

  /** Runs SQL that is not worth keeping prepared. */
  void run(String sql) {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    } catch (SQLException e) {
      throw failed(e);
    }
  }

  /** Whether a transaction is under way. */
  boolean inTransaction() {
    return inTransaction;
  }

  /**
   * Does {@code work} in one transaction, all of it or, when it throws, nothing. A failure of
   * SQLite's that {@code work} does not pass on undoes it all the same.
   *
   * @param begin the statement that begins it
   */
  <R> R transaction(String begin, Supplier<R> work) {
    failure = null;
    run(begin);
    within(true);
    boolean done = false;
    try {
      R result = work.get();
      requireUnbroken();
      within(false);
      run("COMMIT");
      done = true;
      return result;
    } finally {
      failure = null;
      within(false);
      if (!done) {
        rollBack();
      }
    }
  }

  /** Without being told, the driver tries after each statement whether a transaction is open. */
  private void within(boolean transaction) {
    inTransaction = transaction;
    connection.getConnectionConfig().setAutoCommit(!transaction);
  }

  /**
   * Does {@code work} within the transaction that is under way; when it throws, what it did is
   * undone and the transaction goes on.
   *
   * @param giveUp run before it is undone
   */
  void attempt(Runnable work, Runnable giveUp) {
    update("SAVEPOINT attempt");
    boolean done = false;
    try {
      work.run();
      requireUnbroken();
      done = true;
    } finally {
      if (!done) {
        giveUp.run();
      }
      // After a failure of SQLite's the whole transaction is undone, and with it the savepoint.
      if (failure == null) {
        if (!done) {
          update("ROLLBACK TO attempt");
        }
        update("RELEASE attempt");
      }
    }
  }

  private void requireUnbroken() {
    if (failure != null) {
      // After some failures SQLite has rolled back by itself, and what is written then would stay.
      throw failure;
    }
  }

  private void rollBack() {
    try {
      run("ROLLBACK");
    } catch (StoreException e) {
      // SQLite rolls back by itself when the disk is full or fails, and then has nothing to undo;
      // what made the work fail is on its way to the caller.
      return;
    } finally {
      failure = null;
    }
  }

  private StoreException failed(SQLException e) {
    StoreException told = SqliteFailure.of(e, file);
    if (inTransaction && failure == null) {
      failure = told;
    }
    return told;
  }

  private PreparedStatement bind(String sql, @Nullable Object... values) throws SQLException {
    requireUnbroken();
    PreparedStatement statement = prepared.get(sql);
    if (statement == null) {
      statement = connection.prepareStatement(sql);
      prepared.put(sql, statement);
    }
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
    return statement;
  }

  @Override
  public void close() {
    try {
      try {
        for (PreparedStatement statement : prepared.values()) {
          statement.close();
        }
      } finally {
        prepared.clear();
        connection.close();
      }
    } catch (SQLException e) {
      throw SqliteFailure.of(e, file);
    }
  }
}

package dev.filial.core.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Runs SQL on one connection, keeping prepared statements, and tells failures in our words. */
final class Sql implements AutoCloseable {

  /** Reads one row. */
  @FunctionalInterface
  interface Row<T> {
    T read(ResultSet row) throws SQLException;
  }

  private final Connection connection;
  private final String file;
  private final Map<String, PreparedStatement> prepared = new HashMap<>();

  Sql(Connection connection, String file) {
    this.connection = connection;
    this.file = file;
  }

  <T> List<T> all(String sql, Row<T> reader, @Nullable Object... values) {
    try (ResultSet rows = bind(sql, values).executeQuery()) {
      List<T> found = new ArrayList<>();
      while (rows.next()) {
        found.add(reader.read(rows));
      }
      return found;
    } catch (SQLException e) {
      throw SqliteFailure.of(e, file);
    }
  }

  <T> Optional<T> one(String sql, Row<T> reader, @Nullable Object... values) {
    try (ResultSet rows = bind(sql, values).executeQuery()) {
      return rows.next() ? Optional.of(reader.read(rows)) : Optional.empty();
    } catch (SQLException e) {
      throw SqliteFailure.of(e, file);
    }
  }

  long number(String sql, @Nullable Object... values) {
    return one(sql, row -> row.getLong(1), values).orElse(0L);
  }

  void update(String sql, @Nullable Object... values) {
    try {
      bind(sql, values).executeUpdate();
    } catch (SQLException e) {
      throw SqliteFailure.of(e, file);
    }
  }

  /** Runs SQL that is not worth keeping prepared. */
  void run(String sql) {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    } catch (SQLException e) {
      throw SqliteFailure.of(e, file);
    }
  }

  private PreparedStatement bind(String sql, @Nullable Object... values) throws SQLException {
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
      for (PreparedStatement statement : prepared.values()) {
        statement.close();
      }
      connection.close();
    } catch (SQLException e) {
      throw SqliteFailure.of(e, file);
    }
  }
}

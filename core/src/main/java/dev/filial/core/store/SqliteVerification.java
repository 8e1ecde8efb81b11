package dev.filial.core.store;

import dev.filial.core.register.Entry;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a register file over again: SQLite's own check of its pages, the digest of every entry, and
 * every row of the derived tables against what the entries give when they are read anew into tables
 * in memory.
 */
final class SqliteVerification {

  /** After so many, more of the same help nobody. */
  private static final int MOST = 20;

  private static final String SCHEMA =
      "SELECT name, type, tbl_name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_stat%'";

  private final Sql sql;
  private final SqliteReader reader;
  private final List<String> faults = new ArrayList<>();

  SqliteVerification(Sql sql, SqliteReader reader) {
    this.sql = sql;
    this.reader = reader;
  }

  Verification verify() {
    long sound = 0;
    try {
      for (String found : sql.all("PRAGMA integrity_check(20)", row -> row.getString(1))) {
        if (!found.equals("ok")) {
          fault("SQLite finds the file damaged: " + found.strip());
        }
      }
      sound = checkEntries();
      if (faults.isEmpty()) {
        checkDerived();
      }
    } catch (StoreException e) {
      if (e.reason() != StoreException.Reason.DAMAGED) {
        throw e;
      }
      fault(String.valueOf(e.getMessage()));
    }
    return new Verification(sound, faults);
  }

  private void fault(String fault) {
    if (faults.size() < MOST) {
      faults.add(fault);
    } else if (faults.size() == MOST) {
      faults.add("and more");
    }
  }

  /** Whether entries follow each other without a gap, each sealed onto the one before. */
  private long checkEntries() {
    Chain chain = new Chain();
    sql.each("SELECT * FROM entry ORDER BY number", SqliteRows::storedEntry, chain::check);
    if (chain.last == 0) {
      fault("there is no entry, not even the one that says whose register this is");
    }
    return chain.sound;
  }

  private final class Chain {
    private long last;
    private long sound;
    private String previous = Entry.NO_DIGEST;

    void check(SqliteRows.StoredEntry stored) {
      long number = stored.number();
      boolean follows = number == last + 1;
      if (!follows) {
        fault(
            number == last + 2
                ? "entry " + (last + 1) + " is missing"
                : "entries " + (last + 1) + " to " + (number - 1) + " are missing");
      }
      boolean intact =
          stored.entry().filter(entry -> !follows || entry.isIntact(previous)).isPresent();
      if (!intact) {
        fault("entry " + number + " is not as it was written: its digest does not fit");
      } else if (follows) {
        sound++;
      }
      last = number;
      previous = stored.digest();
    }
  }

  private void checkDerived() {
    try (Sql fresh = SqliteFile.inMemory()) {
      SqliteSchema.layOut(fresh);
      SqliteWriter writer = new SqliteWriter(fresh);
      try {
        long unused = SqliteStore.reread(reader.entries(), writer::writeDerived);
      } catch (RuntimeException e) {
        fault("the entries cannot be read: " + e.getMessage());
        return;
      }
      compare(fresh, SCHEMA, 1, "how this table or index is laid out");
      if (faults.isEmpty()) {
        for (SqliteSchema.Derived table : SqliteSchema.DERIVED) {
          compare(fresh, "SELECT * FROM " + table.name(), table.key(), table.what());
        }
      }
    }
  }

  private void compare(Sql fresh, String query, int key, String what) {
    Map<String, List<String>> right = new LinkedHashMap<>();
    fresh.each(query, row -> keyed(row, key), row -> right.put(row.getKey(), row.getValue()));
    sql.each(
        query,
        row -> keyed(row, key),
        row -> {
          List<String> expected = right.remove(row.getKey());
          if (expected == null) {
            fault(row.getKey() + ": the entries do not give " + what + ", yet it is kept");
          } else if (!expected.equals(row.getValue())) {
            fault(row.getKey() + ": " + what + " is not kept as the entries give it");
          }
        });
    right.keySet().forEach(missing -> fault(missing + ": " + what + " is not kept"));
  }

  private static Map.Entry<String, List<String>> keyed(ResultSet row, int key) throws SQLException {
    List<String> values = new ArrayList<>();
    for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
      values.add(String.valueOf(row.getString(column)));
    }
    return Map.entry(String.join(" ", values.subList(0, key)), values);
  }
}

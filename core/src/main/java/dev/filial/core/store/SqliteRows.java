package dev.filial.core.store;

import dev.filial.core.number.Fraction;
import dev.filial.core.register.Entry;
import dev.filial.core.register.Taxon;
import dev.filial.core.register.TaxonDeclared;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Rows of the register's tables as records.
 *
 * <p>Lists lie in one column, a line each: names and shares are few, are read with their row, and
 * cannot hold a line break. No JSON is read here, so that a question about ancestry starts fast.
 */
final class SqliteRows {

  private SqliteRows() {}

  static Entry entry(ResultSet row) throws SQLException {
    return new Entry(
        row.getLong("number"),
        Instant.parse(row.getString("time")),
        row.getString("writer"),
        row.getString("body"),
        row.getString("digest"));
  }

  /**
   * What stands in a row of entries, whether or not it is an entry.
   *
   * @param entry what it says; empty when its time is none
   */
  record StoredEntry(long number, String digest, Optional<Entry> entry) {}

  static StoredEntry storedEntry(ResultSet row) throws SQLException {
    Optional<Entry> entry;
    try {
      entry = Optional.of(entry(row));
    } catch (DateTimeException | NullPointerException e) {
      entry = Optional.empty();
    }
    return new StoredEntry(row.getLong("number"), String.valueOf(row.getString("digest")), entry);
  }

  static Taxon taxon(ResultSet row) throws SQLException {
    String declared = row.getString("declared");
    return new Taxon(
        row.getString("key"),
        row.getString("name"),
        row.getString("accepted_as"),
        lines(row.getString("read_also")),
        declared == null
            ? null
            : new TaxonDeclared(
                declared,
                lines(row.getString("synonyms")),
                row.getString("within"),
                integer(row, row.findColumn("ploidy")),
                row.getString("short_name"),
                row.getInt("hybrid") == 1,
                shares(row.getString("makeup")),
                row.getInt("self_incompatible") == 1,
                row.getString("remark")));
  }

  static @Nullable Integer integer(ResultSet row, int column) throws SQLException {
    int value = row.getInt(column);
    return row.wasNull() ? null : value;
  }

  static List<String> lines(@Nullable String text) {
    return text == null ? List.of() : List.of(text.split("\n", -1));
  }

  static @Nullable String lines(List<String> lines) {
    return lines.isEmpty() ? null : String.join("\n", lines);
  }

  static Map<String, Fraction> shares(@Nullable String text) {
    Map<String, Fraction> shares = new LinkedHashMap<>();
    for (String line : lines(text)) {
      int space = line.indexOf(' ');
      shares.put(line.substring(space + 1), Fraction.parse(line.substring(0, space)));
    }
    return shares;
  }

  static @Nullable String shares(Map<String, Fraction> shares) {
    return lines(
        shares.entrySet().stream().map(share -> share.getValue() + " " + share.getKey()).toList());
  }
}

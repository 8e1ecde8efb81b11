package dev.filial.core.store;

import dev.filial.core.register.Change;
import dev.filial.core.register.Concerns;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Entry;
import dev.filial.core.register.EntryJson;
import dev.filial.core.register.Item;
import dev.filial.core.register.Names;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Ploidies;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Taxon;
import dev.filial.core.register.TaxonDeclared;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;

/** Writes what a clerk accepted into the tables. */
final class SqliteWriter {

  /** The columns of an item that may be empty, or hold more than a yes or a no. */
  private static final List<String> COLUMNS =
      List.of(
          "code",
          "whole",
          "year",
          "number",
          "suffix",
          "kind",
          "entry",
          "since",
          "until",
          "fate",
          "count",
          "taxon",
          "cultivar",
          "makeup",
          "generation",
          "ploidy",
          "field_number",
          "names",
          "place",
          "same_as",
          "guess");

  private static final List<String> FLAGS =
      List.of("struck", "never_held", "unprotected", "not_diploid");

  private final Sql sql;
  private final RowLot entries;
  private final RowLot subjects;
  private final RowLot mentions;
  private final Map<Integer, RowLot> items = new HashMap<>();

  SqliteWriter(Sql sql) {
    this.sql = sql;
    this.entries = new RowLot(sql, "INSERT INTO entry", "(?, ?, ?, ?, ?)", 5);
    this.subjects = new RowLot(sql, "INSERT OR IGNORE INTO concerns", "(?, 0, ?)", 2);
    this.mentions = new RowLot(sql, "INSERT OR IGNORE INTO concerns", "(?, 1, ?)", 2);
  }

  /** Writes entries and what is derived from them. */
  void apply(List<Delta> deltas) {
    write(deltas, true);
  }

  /** Writes only what is derived; the entries of the delta are there already. */
  void derive(Delta delta) {
    write(List.of(delta), false);
  }

  private void write(List<Delta> deltas, boolean withEntries) {
    for (Delta delta : deltas) {
      Set<Long> added = new HashSet<>();
      for (Entry entry : delta.entries()) {
        added.add(entry.number());
        if (withEntries) {
          entries.add(entry.number(), entry.timeText(), entry.by(), entry.body(), entry.digest());
        }
      }
      derive(delta, added);
    }
    writeWaiting();
  }

  /** Before something is changed that may wait in one of the lots. */
  private void writeWaiting() {
    entries.write();
    subjects.write();
    mentions.write();
    items.values().forEach(RowLot::write);
  }

  private void derive(Delta delta, Set<Long> added) {
    for (Change change : delta.changes()) {
      if (change.before().isPresent()) {
        writeWaiting();
        unlink(change.entry(), change.concernedBefore());
      }
      link(change.entry(), change.concernedAfter());
      if (!added.contains(change.entry())) {
        sql.update(
            "INSERT OR REPLACE INTO in_force VALUES (?, ?)",
            change.entry(),
            change.after().map(EntryJson::write).orElse(null));
      }
    }
    delta.items().forEach(item -> put(item, !added.contains(item.entry())));
    delta.taxa().forEach(this::putTaxon);
    delta
        .traits()
        .forEach(
            (key, trait) -> {
              sql.update("DELETE FROM trait WHERE key = ?", key);
              trait.ifPresent(
                  now -> sql.update("INSERT INTO trait VALUES (?, ?)", key, EntryJson.write(now)));
            });
  }

  private void link(long entry, Concerns concerns) {
    concerns.subjects().forEach(subject -> subjects.add(SqliteReader.key(subject), entry));
    concerns.mentions().forEach(subject -> mentions.add(SqliteReader.key(subject), entry));
  }

  private void unlink(long entry, Concerns concerns) {
    concerns.subjects().forEach(subject -> unlink(subject, 0, entry));
    concerns.mentions().forEach(subject -> unlink(subject, 1, entry));
  }

  private void unlink(Subject subject, int leaning, long entry) {
    sql.update(
        "DELETE FROM concerns WHERE subject = ? AND leaning = ? AND entry = ?",
        SqliteReader.key(subject),
        leaning,
        entry);
  }

  /**
   * Writes what is true of a thing now.
   *
   * @param mayBeThere false of one that was given out just now
   */
  private void put(Item item, boolean mayBeThere) {
    String code = item.code().text();
    if (mayBeThere) {
      writeWaiting();
    }
    // What hung on the row before, if there was one, goes with it.
    if (mayBeThere && sql.number("SELECT EXISTS (SELECT 1 FROM item WHERE code = ?)", code) == 1) {
      sql.update("DELETE FROM descent WHERE code = ?", code);
      for (String names :
          sql.all(
              "SELECT names FROM item WHERE code = ? AND names IS NOT NULL",
              row -> row.getString(1),
              code)) {
        for (String name : names.split("\n", -1)) {
          sql.update(
              "DELETE FROM own_name WHERE folded = ? AND name = ? AND code = ?",
              Names.folded(name),
              name,
              code);
        }
      }
    }
    putRow(item, code, mayBeThere);
    int place = 0;
    for (Descent descent : item.descent()) {
      sql.update(
          "INSERT INTO descent VALUES (?,?,?,?,?,?,?,?,?)",
          code,
          place++,
          descent.form().name(),
          descent.route().name(),
          descent.share().toString(),
          descent.seed().text(),
          descent.seedSets(),
          descent.pollen() == null ? null : descent.pollen().text(),
          descent.pollenSets());
    }
    for (String name : item.names()) {
      sql.update("INSERT OR IGNORE INTO own_name VALUES (?, ?, ?)", Names.folded(name), name, code);
    }
  }

  private void putRow(Item item, String code, boolean mayBeThere) {
    int flags =
        (item.struck() ? 1 : 0)
            | (item.neverHeld() ? 2 : 0)
            | (item.unprotected() ? 4 : 0)
            | (Ploidies.isDiploid(item) ? 0 : 8);
    List<Object> values = new ArrayList<>();
    int columns = 0;
    for (Object value :
        new @Nullable Object[] {
          code,
          item.code().whole().text(),
          item.code().year(),
          item.code().number(),
          item.code().part().number(),
          item.kind().name(),
          item.entry(),
          text(item.since()),
          text(item.until()),
          item.fate().name(),
          item.count() == null ? null : item.count().toString(),
          item.determination().taxon(),
          item.determination().cultivar(),
          SqliteRows.shares(item.determination().makeup()),
          item.determination().generation(),
          item.determination().ploidy(),
          item.fieldNumber(),
          SqliteRows.lines(item.names()),
          item.place(),
          item.sameAs() == null ? null : item.sameAs().text(),
          item.guess()
        }) {
      columns <<= 1;
      if (value != null) {
        columns |= 1;
        values.add(value);
      }
    }
    lot(columns, flags, mayBeThere).add(values.toArray());
  }

  /**
   * The lot of rows of so many columns: most are empty of most things, and binding nothing costs as
   * much as binding something.
   *
   * @param columns which are not empty, a bit each, the last being the lowest
   * @param flags struck, never held, unprotected, not diploid: a bit each, the first the lowest
   */
  private RowLot lot(int columns, int flags, boolean mayBeThere) {
    int key = (columns << 5) | (flags << 1) | (mayBeThere ? 1 : 0);
    return items.computeIfAbsent(
        key,
        any -> {
          StringJoiner names = new StringJoiner(", ", " (", ")");
          StringJoiner values = new StringJoiner(", ", "(", ")");
          for (int i = 0; i < COLUMNS.size(); i++) {
            if ((columns >> (COLUMNS.size() - 1 - i) & 1) == 1) {
              names.add(COLUMNS.get(i));
              values.add("?");
            }
          }
          for (int i = 0; i < FLAGS.size(); i++) {
            names.add(FLAGS.get(i));
            values.add(Integer.toString(flags >> i & 1));
          }
          return new RowLot(
              sql,
              (mayBeThere ? "INSERT OR REPLACE" : "INSERT") + " INTO item" + names,
              values.toString(),
              Integer.bitCount(columns));
        });
  }

  private static @Nullable String text(@Nullable PartialDate date) {
    return date == null ? null : date.toString();
  }

  private void putTaxon(String key, Optional<Taxon> taxon) {
    sql.update("DELETE FROM taxon WHERE key = ?", key);
    if (taxon.isEmpty()) {
      return;
    }
    Taxon now = taxon.get();
    TaxonDeclared declared = now.declared();
    sql.update(
        "INSERT INTO taxon VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?)",
        key,
        now.name(),
        now.acceptedAs(),
        SqliteRows.lines(now.readAlso()),
        declared == null ? null : declared.name(),
        declared == null ? null : SqliteRows.lines(declared.synonyms()),
        declared == null ? null : declared.within(),
        declared == null ? null : declared.ploidy(),
        declared == null ? null : declared.shortName(),
        declared != null && declared.hybrid() ? 1 : 0,
        declared == null ? null : SqliteRows.shares(declared.makeup()),
        declared != null && declared.selfIncompatible() ? 1 : 0,
        declared == null ? null : declared.remark());
  }
}

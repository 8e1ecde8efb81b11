package dev.filial.core.store;

import dev.filial.core.register.Change;
import dev.filial.core.register.Concerns;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Entry;
import dev.filial.core.register.EntryJson;
import dev.filial.core.register.Fate;
import dev.filial.core.register.Item;
import dev.filial.core.register.Names;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Ploidies;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Taxon;
import dev.filial.core.register.TaxonDeclared;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;

/** Writes what a clerk accepted into the tables. */
final class SqliteWriter {

  /** The columns of an item that are handed in, the first of them never empty. */
  private static final List<String> COLUMNS =
      List.of(
          "code",
          "whole",
          "year",
          "number",
          "suffix",
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

  private final Sql sql;
  private final RowLot entries;
  private final RowLot subjects;
  private final RowLot mentions;
  private final Map<Item.Kind, Map<Integer, RowLot>> items = new EnumMap<>(Item.Kind.class);

  SqliteWriter(Sql sql) {
    this.sql = sql;
    this.entries =
        new RowLot(sql, "INSERT OR FAIL INTO entry", "column1, ?1, ?2, column2, column3", 3);
    this.subjects = new RowLot(sql, "INSERT OR IGNORE INTO concerns", "column1, 0, column2", 2);
    this.mentions = new RowLot(sql, "INSERT OR IGNORE INTO concerns", "column1, 1, column2", 2);
  }

  /** Writes entries and what is derived from them. */
  void apply(List<Delta> deltas) {
    write(deltas, true);
  }

  /** Writes only what is derived; the entries of the delta are there already. */
  void writeDerived(Delta delta) {
    write(List.of(delta), false);
  }

  private void write(List<Delta> deltas, boolean withEntries) {
    boolean done = false;
    try {
      for (Delta delta : deltas) {
        if (withEntries) {
          for (Entry entry : delta.entries()) {
            entries.share(entry.timeText(), entry.by());
            entries.add(entry.number(), entry.body(), entry.digest());
          }
        }
        derive(delta);
      }
      writeWaiting();
      done = true;
    } finally {
      if (!done) {
        forgetWaiting(); // or it would get into the next transaction
      }
    }
  }

  private void forgetWaiting() {
    entries.forget();
    subjects.forget();
    mentions.forget();
    items.clear();
  }

  /** Before something is changed that may wait in one of the lots. */
  private void writeWaiting() {
    entries.write();
    subjects.write();
    mentions.write();
    for (Map<Integer, RowLot> ofKind : items.values()) {
      for (RowLot lot : ofKind.values()) {
        lot.write();
      }
    }
  }

  private void derive(Delta delta) {
    long firstNew = delta.entries().isEmpty() ? Long.MAX_VALUE : delta.entries().get(0).number();
    for (Change change : delta.changes()) {
      if (change.before().isPresent()) {
        writeWaiting();
        unlink(change.entry(), change.concernedBefore());
      }
      link(change.entry(), change.concernedAfter());
      if (change.entry() < firstNew) {
        sql.update(
            "INSERT OR REPLACE INTO in_force VALUES (?, ?)",
            change.entry(),
            change.after().map(EntryJson::write).orElse(null));
      }
    }
    delta.items().forEach(item -> put(item, item.entry() < firstNew));
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
    for (Subject subject : concerns.subjects()) {
      subjects.add(SqliteReader.key(subject), entry);
    }
    for (Subject subject : concerns.mentions()) {
      mentions.add(SqliteReader.key(subject), entry);
    }
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
    @Nullable Object[] values = {
      code,
      item.code().isWhole() ? null : item.code().whole().text(),
      item.code().year(),
      item.code().number(),
      item.code().isWhole() ? null : item.code().part().number(),
      item.entry(),
      text(item.since()),
      text(item.until()),
      item.fate() == Fate.ALIVE ? null : item.fate().name(),
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
    };
    int form = 0;
    for (Object value : values) {
      form = form << 1 | (value == null ? 0 : 1);
    }
    form = form << 1 | (item.struck() ? 1 : 0);
    form = form << 1 | (item.neverHeld() ? 1 : 0);
    form = form << 1 | (item.unprotected() ? 1 : 0);
    form = form << 1 | (Ploidies.isDiploid(item) ? 0 : 1);
    form = form << 1 | (mayBeThere ? 1 : 0);
    Map<Integer, RowLot> ofKind = items.get(item.kind());
    if (ofKind == null) {
      ofKind = new HashMap<>();
      items.put(item.kind(), ofKind);
    }
    RowLot lot = ofKind.get(form);
    if (lot == null) {
      lot = lot(item, values, mayBeThere);
      ofKind.put(form, lot);
    }
    lot.add(values);
  }

  /**
   * The lot of rows like this one. Most columns are empty of most things, and many things have the
   * rest in common.
   */
  private RowLot lot(Item item, @Nullable Object[] values, boolean mayBeThere) {
    StringJoiner names = new StringJoiner(", ", " (", ")");
    StringJoiner taken = new StringJoiner(", ");
    int width = 0;
    for (int i = 0; i < COLUMNS.size(); i++) {
      if (values[i] != null) {
        names.add(COLUMNS.get(i));
        taken.add("column" + ++width);
      }
    }
    Map<String, String> rest = new LinkedHashMap<>();
    if (item.code().isWhole()) {
      rest.put("whole", "column1");
      rest.put("suffix", "0");
    }
    if (item.fate() == Fate.ALIVE) {
      rest.put("fate", "'ALIVE'");
    }
    rest.put("kind", "'" + item.kind().name() + "'");
    rest.put("struck", item.struck() ? "1" : "0");
    rest.put("never_held", item.neverHeld() ? "1" : "0");
    rest.put("unprotected", item.unprotected() ? "1" : "0");
    rest.put("not_diploid", Ploidies.isDiploid(item) ? "0" : "1");
    for (Map.Entry<String, String> column : rest.entrySet()) {
      names.add(column.getKey());
      taken.add(column.getValue());
    }
    return new RowLot(
        sql,
        (mayBeThere ? "INSERT OR REPLACE" : "INSERT OR FAIL") + " INTO item" + names,
        taken.toString(),
        width);
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

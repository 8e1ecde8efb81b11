package dev.filial.core.store;

import dev.filial.core.register.Change;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Entry;
import dev.filial.core.register.EntryJson;
import dev.filial.core.register.Item;
import dev.filial.core.register.Names;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Ploidies;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Taxon;
import dev.filial.core.register.TaxonDeclared;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Writes what a clerk accepted into the tables. */
final class SqliteWriter {

  private final Sql sql;

  SqliteWriter(Sql sql) {
    this.sql = sql;
  }

  void apply(Delta delta) {
    Set<Long> added = new HashSet<>();
    for (Entry entry : delta.entries()) {
      added.add(entry.number());
      sql.update(
          "INSERT INTO entry VALUES (?, ?, ?, ?, ?)",
          entry.number(),
          entry.time().toString(),
          entry.by(),
          entry.body(),
          entry.digest());
    }
    derive(delta, added);
  }

  /** Writes only what is derived; the entries of the delta are there already. */
  void derive(Delta delta) {
    Set<Long> added = new HashSet<>();
    delta.entries().forEach(entry -> added.add(entry.number()));
    derive(delta, added);
  }

  private void derive(Delta delta, Set<Long> added) {
    for (Change change : delta.changes()) {
      change.before().ifPresent(statement -> unlink(change.entry(), statement));
      change.after().ifPresent(statement -> link(change.entry(), statement));
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

  private void link(long entry, Statement statement) {
    statement.subjects().forEach(subject -> link(subject, 0, entry));
    statement.mentions().forEach(subject -> link(subject, 1, entry));
  }

  private void link(Subject subject, int leaning, long entry) {
    sql.update(
        "INSERT OR IGNORE INTO concerns VALUES (?, ?, ?)",
        SqliteReader.key(subject),
        leaning,
        entry);
  }

  private void unlink(long entry, Statement statement) {
    statement.subjects().forEach(subject -> unlink(subject, 0, entry));
    statement.mentions().forEach(subject -> unlink(subject, 1, entry));
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
    sql.update(
        "INSERT OR REPLACE INTO item VALUES"
            + " (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)",
        code,
        item.code().whole().text(),
        item.code().year(),
        item.code().number(),
        item.code().part().number(),
        item.kind().name(),
        item.entry(),
        item.struck() ? 1 : 0,
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
        item.neverHeld() ? 1 : 0,
        item.unprotected() ? 1 : 0,
        item.guess(),
        Ploidies.isDiploid(item) ? 0 : 1);
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

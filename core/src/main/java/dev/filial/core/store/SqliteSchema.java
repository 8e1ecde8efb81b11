package dev.filial.core.store;

import java.util.List;

/** The layout of a register file. */
final class SqliteSchema {

  /** "Fil1" in ASCII: marks the file as a register of ours. */
  static final int APPLICATION_ID = 0x46696C31;

  /** The layout this program writes. */
  static final int VERSION = 4;

  /**
   * A table whose rows are worked out from the entries and can be made anew.
   *
   * @param name its name
   * @param key how many of its first columns tell its rows apart
   * @param what what one of its rows says, for a reader
   */
  record Derived(String name, int key, String what) {}

  /** The entries: the only table that is not derived. */
  static final String ENTRY =
      """
      CREATE TABLE entry (
        number INTEGER PRIMARY KEY,
        time TEXT NOT NULL,
        writer TEXT NOT NULL,
        body TEXT NOT NULL,
        digest TEXT NOT NULL
      ) STRICT
      """;

  /** The tables that are derived from them. */
  static final List<Derived> DERIVED =
      List.of(
          new Derived("in_force", 1, "what this entry says now"),
          new Derived("concerns", 3, "that this thing is spoken of by that entry"),
          new Derived("item", 1, "what this code stands for"),
          new Derived("descent", 2, "what this thing comes of"),
          new Derived("own_name", 3, "which plant has this name"),
          new Derived("taxon", 1, "what is known of this taxon"),
          new Derived("trait", 1, "what is known of this trait"));

  /** How these are made, and the indexes and the view over them. */
  private static final List<String> MAKING =
      List.of(
          // What an entry says now that was ever amended or parted; null when it was struck. What
          // was
          // never touched has no row here.
          "CREATE TABLE in_force (entry INTEGER PRIMARY KEY, body TEXT) STRICT",
          """
    CREATE TABLE concerns (
      subject TEXT NOT NULL,
      leaning INTEGER NOT NULL,
      entry INTEGER NOT NULL,
      PRIMARY KEY (subject, leaning, entry)
    ) STRICT, WITHOUT ROWID
    """,
          """
    CREATE TABLE item (
      code TEXT PRIMARY KEY,
      whole TEXT NOT NULL,
      year INTEGER NOT NULL,
      number INTEGER NOT NULL,
      suffix INTEGER NOT NULL,
      kind TEXT NOT NULL,
      entry INTEGER NOT NULL,
      struck INTEGER NOT NULL,
      since TEXT,
      until TEXT,
      fate TEXT NOT NULL,
      count TEXT,
      taxon TEXT,
      cultivar TEXT,
      makeup TEXT,
      generation TEXT,
      ploidy INTEGER,
      field_number TEXT,
      names TEXT,
      place TEXT,
      same_as TEXT,
      never_held INTEGER NOT NULL,
      unprotected INTEGER NOT NULL,
      guess TEXT,
      not_diploid INTEGER NOT NULL
    ) STRICT, WITHOUT ROWID
    """,
          // Whole codes are found by the code itself; most of a long table have nothing under them.
          "CREATE INDEX item_family ON item (whole, kind, suffix) WHERE suffix > 0",
          "CREATE INDEX item_year ON item (year, number)",
          "CREATE INDEX item_not_diploid ON item (not_diploid) WHERE not_diploid = 1",
          """
    CREATE TABLE descent (
      code TEXT NOT NULL,
      place INTEGER NOT NULL,
      form TEXT NOT NULL,
      route TEXT NOT NULL,
      share TEXT NOT NULL,
      seed TEXT NOT NULL,
      seed_sets INTEGER NOT NULL,
      pollen TEXT,
      pollen_sets INTEGER NOT NULL,
      PRIMARY KEY (code, place)
    ) STRICT, WITHOUT ROWID
    """,
          """
    CREATE TABLE own_name (
      folded TEXT NOT NULL,
      name TEXT NOT NULL,
      code TEXT NOT NULL,
      PRIMARY KEY (folded, name, code)
    ) STRICT, WITHOUT ROWID
    """,
          """
    CREATE TABLE taxon (
      key TEXT PRIMARY KEY,
      name TEXT NOT NULL,
      accepted_as TEXT,
      read_also TEXT,
      declared TEXT,
      synonyms TEXT,
      within TEXT,
      ploidy INTEGER,
      short_name TEXT,
      hybrid INTEGER NOT NULL,
      makeup TEXT,
      self_incompatible INTEGER NOT NULL,
      remark TEXT
    ) STRICT, WITHOUT ROWID
    """,
          "CREATE TABLE trait (key TEXT PRIMARY KEY, body TEXT NOT NULL) STRICT, WITHOUT ROWID");

  private SqliteSchema() {}

  /** Makes all tables in an empty file. */
  static void layOut(Sql sql) {
    sql.run("PRAGMA application_id = " + APPLICATION_ID);
    sql.run("PRAGMA user_version = " + VERSION);
    sql.run(ENTRY);
    MAKING.forEach(sql::run);
  }

  /** Makes the derived tables anew, empty. */
  static void layOutDerived(Sql sql) {
    DERIVED.forEach(table -> sql.run("DROP TABLE IF EXISTS " + table.name()));
    MAKING.forEach(sql::run);
  }

  /**
   * The layout of the file.
   *
   * @throws StoreException if this program does not know it yet
   */
  static int requireNotNewer(Sql sql) {
    int version = (int) sql.number("PRAGMA user_version");
    if (version > VERSION) {
      throw new StoreException(
          StoreException.Reason.NEWER,
          sql.file()
              + " was written by a newer Filial (layout "
              + version
              + "; this one knows "
              + VERSION
              + "); nothing was changed. Use the newer Filial");
    }
    return version;
  }
}

package dev.filial.core.store;

/** The layout of a register file. */
final class SqliteSchema {

  /** "Fil1" in ASCII: marks the file as a register of ours. */
  static final int APPLICATION_ID = 0x46696C31;

  /** The layout this program writes. */
  static final int VERSION = 1;

  /** The entries: the only tables that are not derived. */
  static final String[] ENTRIES = {
    """
    CREATE TABLE entry (
      number INTEGER PRIMARY KEY,
      time TEXT NOT NULL,
      writer TEXT NOT NULL,
      body TEXT NOT NULL,
      digest TEXT NOT NULL
    ) STRICT
    """
  };

  /** What is derived from them, and can be made anew. */
  static final String[] DERIVED = {
    // What an amended entry says now; null when it was struck. Entries that stand as written have
    // no row here.
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
    "CREATE INDEX item_family ON item (whole, kind, suffix)",
    "CREATE INDEX item_year ON item (year, number)",
    "CREATE INDEX item_entry ON item (entry)",
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
    "CREATE TABLE trait (key TEXT PRIMARY KEY, body TEXT NOT NULL) STRICT, WITHOUT ROWID"
  };

  /** The derived tables, to be dropped before they are made anew. */
  static final String[] DERIVED_NAMES = {
    "TABLE in_force",
    "TABLE concerns",
    "TABLE item",
    "TABLE descent",
    "TABLE own_name",
    "TABLE taxon",
    "TABLE trait"
  };

  private SqliteSchema() {}
}

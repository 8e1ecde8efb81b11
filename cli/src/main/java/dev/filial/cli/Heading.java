package dev.filial.cli;

/** The groups in which help lists the verbs, in the order in which a grower meets them. */
public enum Heading {
  /** Making a register, trying one. */
  BEGIN("To begin"),
  /** Entries: plants, crosses, what became of them. */
  RECORD("Write down what happened"),
  /** Entries: seed, sowings, counts, seedlings. */
  SEED("Seed, sowings and seedlings"),
  /** Entries: treatments, bags, tags, places. */
  CARE("Care from day to day"),
  /** Entries: genes and what hangs on them. */
  GENES("Say how traits are inherited"),
  /** Entries by the evening: batches, forms, sheets. */
  MANY("Write down much at once"),
  /** Queries. */
  ASK("Ask the register"),
  /** What is due, in flower, in the tin; what came up. */
  SEASON("Ask about the season"),
  /** Odds of a cross, and counts against them. */
  EXPECT("What to expect, and whether it came"),
  /** Tags and other paper. */
  PAPER("Tags and paper"),
  /** Amending, undoing, renaming, history. */
  CORRECT("Put right"),
  /** Checking, importing, exporting. */
  KEEP("Keep and exchange"),
  /** The program itself. */
  PROGRAM("About Filial itself");

  private final String title;

  Heading(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }
}

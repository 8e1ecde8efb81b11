package dev.filial.cli;

/** The groups in which help lists the verbs, in the order in which a grower meets them. */
public enum Heading {
  /** Making a register, trying one. */
  BEGIN("To begin"),
  /** Entries: plants, crosses, harvests, sowings, counts. */
  RECORD("Write down what happened"),
  /** Queries. */
  ASK("Ask the register"),
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

package dev.filial.core.spreadsheet;

/** A cell, or what a row says altogether, that cannot be taken. */
final class CellRefusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String column;

  /**
   * A refusal.
   *
   * @param column the header of the column; empty where the row as a whole is refused
   */
  CellRefusal(String column, String message) {
    // Without a stack trace: there may be a million of them, and none is a defect.
    super(message, null, false, false);
    this.column = column;
  }

  String column() {
    return column;
  }
}

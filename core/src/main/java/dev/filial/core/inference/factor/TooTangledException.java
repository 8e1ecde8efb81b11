package dev.filial.core.inference.factor;

/** An exact answer would cost more than the caller was ready to pay; nothing has been computed. */
public final class TooTangledException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final double entries;
  private final double largestTable;
  private final int width;
  private final long bound;

  TooTangledException(double entries, double largestTable, int width, long bound) {
    super(
        "an exact answer takes tables of "
            + entries
            + " entries, the largest of "
            + largestTable
            + " over "
            + (width + 1)
            + " variables, and "
            + bound
            + " are allowed");
    this.entries = entries;
    this.largestTable = largestTable;
    this.width = width;
    this.bound = bound;
  }

  /** Entries of all tables together. */
  public double entries() {
    return entries;
  }

  /** Entries of the largest table. */
  public double largestTable() {
    return largestTable;
  }

  /** Variables of the largest clique, less one. */
  public int width() {
    return width;
  }

  /** How many entries were allowed. */
  public long bound() {
    return bound;
  }
}

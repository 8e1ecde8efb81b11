package dev.filial.core.spreadsheet;

/** Told now and then how far an import has come. */
@FunctionalInterface
public interface Progress {

  /** Says nothing to nobody. */
  Progress NONE = (rows, share) -> {};

  /**
   * Told after a row.
   *
   * @param rows how many rows were read
   * @param share how much of the file that is, 0 to 1
   */
  void at(long rows, double share);
}

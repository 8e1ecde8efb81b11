package dev.filial.core.trial;

/** The counts of one family. */
final class Counts {

  private Counts() {}

  /**
   * How many there are in all.
   *
   * @throws IllegalArgumentException if a count is negative or all are 0
   */
  static long total(long... counts) {
    long sum = 0;
    for (long count : counts) {
      if (count < 0) {
        throw new IllegalArgumentException("a count of " + count + "; counts are 0 or more");
      }
      sum = Math.addExact(sum, count);
    }
    if (sum == 0) {
      throw new IllegalArgumentException("a family of none; there is nothing to test");
    }
    return sum;
  }
}

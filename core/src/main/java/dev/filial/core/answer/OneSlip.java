package dev.filial.core.answer;

/** Whether two words differ by one slip of the pencil. */
final class OneSlip {

  private OneSlip() {}

  /**
   * Whether one becomes the other by one letter replaced, left out or put in, or two neighbours
   * swapped. Time in proportion to their length: what they begin and end alike with is taken off,
   * and what is left of each has to be next to nothing.
   */
  static boolean apart(String one, String other) {
    int shorter = Math.min(one.length(), other.length());
    int from = 0;
    while (from < shorter && one.charAt(from) == other.charAt(from)) {
      from++;
    }
    int back = 0;
    while (back < shorter - from
        && one.charAt(one.length() - 1 - back) == other.charAt(other.length() - 1 - back)) {
      back++;
    }
    int leftOfOne = one.length() - from - back;
    int leftOfOther = other.length() - from - back;
    if (Math.max(leftOfOne, leftOfOther) == 1) {
      return true;
    }
    return leftOfOne == 2
        && leftOfOther == 2
        && one.charAt(from) == other.charAt(from + 1)
        && one.charAt(from + 1) == other.charAt(from);
  }
}

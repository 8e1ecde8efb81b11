package dev.filial.core.register;

/**
 * More taken from a pot or a seed lot than was there.
 *
 * @param entry the entry that took it, or counted too few
 * @param form which of the two
 * @param had what was there, or was counted
 * @param taken what was taken
 */
record Overdraft(long entry, Form form, Count had, Count taken) {

  /** How it came out. */
  enum Form {
    /** More was taken than was there. */
    TAKEN,
    /** Fewer were counted to have come up than had already left. */
    COUNTED
  }
}

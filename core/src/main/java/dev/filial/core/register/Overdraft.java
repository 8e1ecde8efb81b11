package dev.filial.core.register;

/**
 * More taken from a pot or a seed lot than was there.
 *
 * @param entry the entry that took it
 * @param had what was there
 * @param taken what was taken
 */
record Overdraft(long entry, Count had, Count taken) {}

package dev.filial.core.answer;

import dev.filial.core.register.Count;
import org.jspecify.annotations.Nullable;

/**
 * A sum in which what was counted, what was guessed and what has no number are kept apart.
 *
 * @param counted the sum of the exact numbers
 * @param guessed the sum of the guesses, as of {@code ~50}; in no other number
 * @param guesses how many guesses that is the sum of
 * @param withoutNumber how often there was no number: few, many, not known, or nothing written
 */
public record SeasonSum(long counted, long guessed, long guesses, long withoutNumber) {

  /** Nothing at all. */
  public static final SeasonSum NONE = new SeasonSum(0, 0, 0, 0);

  /** So many, counted. */
  public static SeasonSum of(long number) {
    return new SeasonSum(number, 0, 0, 0);
  }

  /** One count; null for a number nobody wrote. */
  public static SeasonSum of(@Nullable Count count) {
    if (count == null || count.size().isEmpty()) {
      return new SeasonSum(0, 0, 0, 1);
    }
    long size = count.size().orElseThrow();
    return count.isExact() ? of(size) : new SeasonSum(0, size, 1, 0);
  }

  /** Both together. */
  public SeasonSum plus(SeasonSum other) {
    return new SeasonSum(
        counted + other.counted,
        guessed + other.guessed,
        guesses + other.guesses,
        withoutNumber + other.withoutNumber);
  }

  /** This without {@code other}, which is part of it. */
  SeasonSum less(SeasonSum other) {
    return new SeasonSum(
        counted - other.counted,
        guessed - other.guessed,
        guesses - other.guesses,
        withoutNumber - other.withoutNumber);
  }

  /** Whether there is nothing in it, not even something without a number. */
  public boolean hasNothing() {
    return equals(NONE);
  }

  /** Whether all of it was counted. */
  public boolean isExact() {
    return guesses == 0 && withoutNumber == 0;
  }
}

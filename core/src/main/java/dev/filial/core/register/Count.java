package dev.filial.core.register;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/**
 * How many seeds, seedlings or flowers: counted, or guessed and said to be.
 *
 * <p>Dust seed is not counted and a pot of fresh seedlings hardly; a guess is kept as a guess, so
 * that no percentage is ever worked out from it without saying so. Written {@code 80}, {@code ~80},
 * {@code few}, {@code many} or {@code ?}.
 */
public sealed interface Count {

  /** The largest number accepted: more seeds than any bench holds, and far from overflow. */
  long MOST = 1_000_000_000L;

  /**
   * A number that was counted.
   *
   * @param number 0 to {@link #MOST}
   */
  record Exact(long number) implements Count {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the number is negative or above {@link #MOST}
     */
    public Exact {
      requireInRange(number);
    }

    @Override
    public String toString() {
      return Long.toString(number);
    }
  }

  /**
   * A number that was guessed.
   *
   * @param number 0 to {@link #MOST}
   */
  record About(long number) implements Count {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the number is negative or above {@link #MOST}
     */
    public About {
      requireInRange(number);
    }

    @Override
    public String toString() {
      return "~" + number;
    }
  }

  /**
   * No number at all.
   *
   * @param word {@code few}, {@code many} or {@code ?}
   */
  record Vague(String word) implements Count {
    /**
     * Checks the word.
     *
     * @throws IllegalArgumentException if it is none of the three
     */
    public Vague {
      if (!word.equals("few") && !word.equals("many") && !word.equals("?")) {
        throw notACount(word);
      }
    }

    @Override
    public String toString() {
      return word;
    }
  }

  /** Nothing is known. */
  static Count unknown() {
    return new Vague("?");
  }

  /** A few. */
  static Count few() {
    return new Vague("few");
  }

  /** Many. */
  static Count many() {
    return new Vague("many");
  }

  /**
   * The counted number {@code number}.
   *
   * @throws IllegalArgumentException if it is negative or above {@link #MOST}
   */
  static Count of(long number) {
    return new Exact(number);
  }

  /**
   * The guessed number {@code number}.
   *
   * @throws IllegalArgumentException if it is negative or above {@link #MOST}
   */
  static Count about(long number) {
    return new About(number);
  }

  /**
   * Reads {@code 80}, {@code ~80}, {@code few}, {@code many} or {@code ?}, in either case.
   *
   * @throws IllegalArgumentException if the text is none of these
   */
  static Count parse(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    if (word.equals("few") || word.equals("many") || word.equals("?")) {
      return new Vague(word);
    }
    boolean guessed = word.startsWith("~");
    String digits = guessed ? word.substring(1).strip() : word;
    if (!digits.matches("-?\\d{1,18}")) {
      throw notACount(text);
    }
    long number = Long.parseLong(digits);
    return guessed ? new About(number) : new Exact(number);
  }

  /**
   * A guess worked out from a weight: about milligrams × seeds per gram / 1000; null unless both
   * are known.
   */
  static @Nullable Count byWeight(
      @Nullable BigDecimal milligrams, @Nullable BigDecimal seedsPerGram) {
    if (milligrams == null || seedsPerGram == null) {
      return null;
    }
    BigDecimal seeds = milligrams.multiply(seedsPerGram).movePointLeft(3);
    return about(seeds.min(BigDecimal.valueOf(MOST)).longValue());
  }

  private static IllegalArgumentException notACount(String text) {
    return new IllegalArgumentException(
        "\"" + text + "\" is not a count; write 80, or ~80, few, many or ? where nobody counted");
  }

  private static void requireInRange(long number) {
    if (number < 0 || number > MOST) {
      throw new IllegalArgumentException(
          number + " is not a count: it must lie between 0 and " + MOST);
    }
  }

  /** The number, counted or guessed; empty when there is none. */
  default OptionalLong size() {
    if (this instanceof Exact exact) {
      return OptionalLong.of(exact.number());
    }
    return this instanceof About about ? OptionalLong.of(about.number()) : OptionalLong.empty();
  }

  /** Whether somebody counted. */
  default boolean isExact() {
    return this instanceof Exact;
  }

  /**
   * What is left after {@code taken} has gone; a guess as soon as either is one, never below zero.
   * Few less some is still few: only a new count says otherwise.
   */
  default Count less(Count taken) {
    if (this instanceof Vague || taken.equals(of(0))) {
      return this;
    }
    if (taken instanceof Vague) {
      return unknown();
    }
    long left = Math.max(0, size().orElseThrow() - taken.size().orElseThrow());
    return isExact() && taken.isExact() ? of(left) : about(left);
  }

  /** This and {@code other} together; a guess as soon as either is one. */
  default Count plus(Count other) {
    if (this instanceof Vague || other instanceof Vague) {
      return unknown();
    }
    long sum = Math.min(MOST, size().orElseThrow() + other.size().orElseThrow());
    return isExact() && other.isExact() ? of(sum) : about(sum);
  }
}

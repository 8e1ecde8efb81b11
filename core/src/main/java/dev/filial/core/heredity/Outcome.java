package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * What becomes of a plant of some genotype.
 *
 * @param shows how often it shows each state; sums to 1, and is empty for a plant that never lives
 * @param lives how many live to be looked at, against those of an unharmed genotype; 0 to 1
 */
public record Outcome(Map<String, Fraction> shows, Fraction lives) {

  /**
   * Checks the chances.
   *
   * @throws IllegalArgumentException if one lies outside 0 to 1, or those of the states do not sum
   *     to 1
   */
  public Outcome {
    Objects.requireNonNull(lives, "lives");
    shows = Collections.unmodifiableMap(new LinkedHashMap<>(shows));
    Fraction sum = Fraction.ZERO;
    for (Map.Entry<String, Fraction> state : shows.entrySet()) {
      requireChance("showing " + state.getKey(), state.getValue());
      sum = sum.plus(state.getValue());
    }
    requireChance("living", lives);
    if (shows.isEmpty() ? !lives.isZero() : !sum.isOne()) {
      throw new IllegalArgumentException(
          "the chances of the states "
              + (shows.isEmpty() ? "" : String.join(", ", shows.keySet()) + " ")
              + "come to "
              + sum
              + "; together they are 1");
    }
  }

  /** Always that state. */
  public static Outcome of(String state) {
    return new Outcome(Map.of(state, Fraction.ONE), Fraction.ONE);
  }

  /** A genotype that dies before it can be looked at. */
  public static Outcome lethal() {
    return new Outcome(Map.of(), Fraction.ZERO);
  }

  /**
   * One state so often as stated, else the other.
   *
   * @param penetrance how often, 0 to 1
   * @throws IllegalArgumentException if it is not
   */
  public static Outcome penetrant(String state, Fraction penetrance, String otherwise) {
    Map<String, Fraction> shows = new LinkedHashMap<>();
    shows.put(state, penetrance);
    shows.put(otherwise, Fraction.ONE.minus(penetrance));
    return new Outcome(shows, Fraction.ONE);
  }

  /** The same of a genotype of which only so many live. */
  public Outcome withLives(Fraction share) {
    return new Outcome(shows, share);
  }

  private static void requireChance(String what, Fraction chance) {
    if (chance.signum() < 0 || chance.compareTo(Fraction.ONE) > 0) {
      throw new IllegalArgumentException(
          "a chance of " + chance + " of " + what + "; it lies between 0 and 1");
    }
  }

  boolean isCertain(String state) {
    return shows.getOrDefault(state, Fraction.ZERO).isOne();
  }
}

package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;

/**
 * What a cross is expected to segregate into.
 *
 * @param traits the traits, in the order in which each class names its states
 * @param classes what may come up, with its chance; these sum to exactly 1
 * @param lost the share of seedlings that die before they can be looked at, and are in no class
 * @param exact whether the chances are rational as they were asked; where map distances were turned
 *     into recombination they are the nearest there are
 */
public record Odds(List<String> traits, List<Share> classes, Fraction lost, boolean exact) {

  /** A ratio of larger numbers tells nobody anything. */
  private static final BigInteger LARGEST_TERM = BigInteger.valueOf(9999);

  /** Copies the lists. */
  public Odds {
    traits = List.copyOf(traits);
    classes = List.copyOf(classes);
  }

  /**
   * Seedlings that look alike.
   *
   * @param states the state of each trait
   * @param chance how likely a seedling is such a one, above 0 and at most 1
   */
  public record Share(List<String> states, Fraction chance) {
    /** Copies the states. */
    public Share {
      states = List.copyOf(states);
    }
  }

  /** The chance that a seedling shows these states, one a trait; 0 if none does. */
  public Fraction chanceOf(String... states) {
    List<String> asked = List.of(states);
    for (Share one : classes) {
      if (one.states().equals(asked)) {
        return one.chance();
      }
    }
    return Fraction.ZERO;
  }

  /**
   * The classes in the smallest whole numbers, as {@code 9:3:3:1}; empty if there is only one, if
   * the chances are not exact, or if the numbers are too large to be of use.
   */
  public Optional<String> ratio() {
    if (classes.size() < 2 || !exact) {
      return Optional.empty();
    }
    BigInteger common = BigInteger.ONE;
    for (Share one : classes) {
      BigInteger denominator = one.chance().denominator();
      common = common.divide(common.gcd(denominator)).multiply(denominator);
    }
    StringBuilder terms = new StringBuilder();
    for (Share one : classes) {
      BigInteger term =
          one.chance().numerator().multiply(common.divide(one.chance().denominator()));
      if (term.compareTo(LARGEST_TERM) > 0) {
        return Optional.empty();
      }
      terms.append(terms.isEmpty() ? "" : ":").append(term);
    }
    return Optional.of(terms.toString());
  }
}

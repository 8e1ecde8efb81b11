package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a cross is expected to segregate into.
 *
 * @param traits the traits, in the order in which each class names its states
 * @param classes what may come up, with its chance; these sum to exactly 1
 * @param lost the share of seedlings that die before they can be looked at, and are in no class
 * @param exact whether the chances are rational as they were asked; where map distances were turned
 *     into recombination in a linkage group that is asked about, they are the nearest there are
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

  /**
   * What a plant of known genotype shows: one class, unless a state fails to show now and then.
   *
   * @throws IllegalArgumentException as {@link Cross#odds(List)}
   */
  public static Odds ofPlant(Genotype plant, List<TraitModel> models) {
    return Segregation.of(plant.genome(), Seedlings.of(plant), models, Set.of());
  }

  /**
   * Of seed that came about in several ways.
   *
   * @param models the traits, by which the classes are put in order
   * @param shares the share of each way, in any unit; what dies in one way leaves the others more
   * @param ways the odds of each, of these traits
   * @throws IllegalArgumentException if there is none, their numbers differ, a share is below 0,
   *     all are 0, or they are not of these traits
   */
  public static Odds mixture(List<TraitModel> models, List<Fraction> shares, List<Odds> ways) {
    if (ways.isEmpty() || shares.size() != ways.size()) {
      throw new IllegalArgumentException(
          shares.size() + " shares for " + ways.size() + " ways; give one for each");
    }
    List<String> traits = models.stream().map(TraitModel::trait).toList();
    Fraction all = Fraction.ZERO;
    Fraction living = Fraction.ZERO;
    Map<List<String>, Fraction> sums = new LinkedHashMap<>();
    boolean exact = true;
    for (int i = 0; i < ways.size(); i++) {
      Odds way = ways.get(i);
      if (shares.get(i).signum() < 0 || !way.traits().equals(traits)) {
        throw new IllegalArgumentException(
            "the ways of a mixture have shares of 0 or more and are about the same traits");
      }
      Fraction alive = shares.get(i).times(Fraction.ONE.minus(way.lost()));
      all = all.plus(shares.get(i));
      living = living.plus(alive);
      exact &= way.exact();
      for (Share one : way.classes()) {
        sums.merge(one.states(), alive.times(one.chance()), Fraction::plus);
      }
    }
    if (living.isZero()) {
      throw new IllegalArgumentException(
          "no way of this mixture has any share of living seedlings");
    }
    List<Share> classes = new ArrayList<>();
    for (Map.Entry<List<String>, Fraction> sum : sums.entrySet()) {
      if (!sum.getValue().isZero()) {
        classes.add(new Share(sum.getKey(), sum.getValue().dividedBy(living)));
      }
    }
    classes.sort(Segregation.order(models.stream().map(TraitModel::states).toList()));
    return new Odds(traits, classes, Fraction.ONE.minus(living.dividedBy(all)), exact);
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

package dev.filial.core.answer;

import dev.filial.core.number.Fraction;
import dev.filial.core.trial.SeedsToSow;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How likely the wanted seedling is, and what it takes.
 *
 * @param what it, in words
 * @param chance how likely a seedling is such a one, 0 to 1
 * @param atLeast how many are wanted
 * @param certainty how sure that is to be
 * @param seedlings how many seedlings it takes; null if it cannot come up
 * @param seeds how many seeds it takes through the rates; null without rates, or if it cannot come
 *     up
 * @param rates the rates it was reckoned with
 */
public record Hope(
    String what,
    Fraction chance,
    int atLeast,
    double certainty,
    @Nullable Integer seedlings,
    @Nullable Integer seeds,
    List<SeedRate> rates) {

  /**
   * What it takes to have so many of a wanted type.
   *
   * @param what it, in words
   * @param chance how likely a seedling that can be looked at is such a one, 0 to 1
   * @param seen the share of seedlings that live to be looked at and are reckoned with, above 0
   * @param asked how many, how surely and through which rates
   * @throws IllegalArgumentException if a number lies outside its range, or more seeds would be
   *     needed than can be reckoned with
   */
  public static Hope of(String what, Fraction chance, Fraction seen, Wanted asked) {
    if (chance.isZero()) {
      return new Hope(what, chance, asked.atLeast(), asked.certainty(), null, null, asked.rates());
    }
    SeedsToSow sowing = SeedsToSow.of(chance.times(seen).toDouble());
    int seedlings = sowing.seeds(asked.atLeast(), asked.certainty());
    Integer seeds = null;
    if (!asked.rates().isEmpty()) {
      for (SeedRate rate : asked.rates()) {
        sowing = rate.in(sowing);
      }
      seeds = sowing.seeds(asked.atLeast(), asked.certainty());
    }
    return new Hope(
        what, chance, asked.atLeast(), asked.certainty(), seedlings, seeds, asked.rates());
  }
}

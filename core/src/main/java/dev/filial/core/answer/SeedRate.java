package dev.filial.core.answer;

import dev.filial.core.number.Fraction;
import dev.filial.core.trial.Proportion;
import dev.filial.core.trial.SeedsToSow;
import java.util.Optional;

/**
 * How many seeds come up, or how many seedlings live, and where that is known from.
 *
 * @param what what it is the rate of: germination, survival
 * @param share the share
 * @param counted the counts it was taken from; empty if it was given as a share, and then it is
 *     taken as certain
 * @param from where it is from, in a grower's words
 */
public record SeedRate(String what, Fraction share, Optional<Proportion> counted, String from) {

  /** A share that was given. */
  public static SeedRate given(String what, Fraction share) {
    return new SeedRate(what, share, Optional.empty(), "as given");
  }

  /** So many of so many. */
  public static SeedRate counted(String what, Proportion counted, String from) {
    return new SeedRate(
        what, Fraction.of(counted.some(), counted.all()), Optional.of(counted), from);
  }

  SeedsToSow in(SeedsToSow sowing) {
    return counted.isPresent() ? sowing.withRate(counted.get()) : sowing.withRate(share.toDouble());
  }

  /** As {@code 18 of 25} or {@code 72 %}. */
  public String text() {
    return counted
        .map(counts -> counts.some() + " of " + counts.all())
        .orElseGet(() -> share.toPercent(1));
  }
}

package dev.filial.core.answer;

import dev.filial.core.register.PartialDate;
import org.jspecify.annotations.Nullable;

/**
 * How much one entry moved an answer.
 *
 * @param entry its number
 * @param date the day it speaks of, or null
 * @param text what it says
 * @param without the chance that is answered, were this entry not there
 * @param with the chance with it
 */
public record Influence(
    long entry, @Nullable PartialDate date, String text, double without, double with) {

  /** How many times it raised the odds; below 1 where it lowered them. */
  public double oddsRatio() {
    return with / (1 - with) / (without / (1 - without));
  }
}

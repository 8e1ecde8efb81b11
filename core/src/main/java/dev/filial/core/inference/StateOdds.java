package dev.filial.core.inference;

import java.util.List;

/**
 * What a plant, or seedlings of a cross, will show of a trait.
 *
 * @param trait the trait
 * @param states each state with its chance, in the order of the trait's table; chances sum to 1
 * @param reckoning how they were worked out
 */
public record StateOdds(String trait, List<Chance> states, Reckoning reckoning) {

  /**
   * A state.
   *
   * @param error the standard error of the chance where it was sampled, else 0
   */
  public record Chance(String state, double chance, double error) {}

  /** Copies the list. */
  public StateOdds {
    states = List.copyOf(states);
  }

  /** The chance of a state; 0 for one that is none of the trait's. */
  public double of(String state) {
    return states.stream()
        .filter(one -> one.state().equals(state))
        .mapToDouble(Chance::chance)
        .sum();
  }
}

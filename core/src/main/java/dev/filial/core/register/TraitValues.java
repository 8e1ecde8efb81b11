package dev.filial.core.register;

import java.math.BigDecimal;

/** Whether a trait can take a value. */
final class TraitValues {

  private TraitValues() {}

  /**
   * Checks a state, score or measurement.
   *
   * @throws RegisterRefusal if the trait cannot show it
   */
  static void check(TraitDeclared trait, String value) {
    if (!trait.states().isEmpty()) {
      requireState(trait, value);
      return;
    }
    BigDecimal number;
    try {
      number = new BigDecimal(value.strip());
    } catch (NumberFormatException e) {
      throw new RegisterRefusal(
          "\"" + value + "\" is no number, and " + trait.trait() + " is scored or measured");
    }
    if ((trait.least() != null && number.compareTo(trait.least()) < 0)
        || (trait.most() != null && number.compareTo(trait.most()) > 0)) {
      throw new RegisterRefusal(
          trait.trait()
              + " goes from "
              + (trait.least() == null ? "any number" : trait.least().toPlainString())
              + " to "
              + (trait.most() == null ? "any number" : trait.most().toPlainString())
              + ", so "
              + value
              + " cannot be");
    }
  }

  /**
   * Checks a state.
   *
   * @throws RegisterRefusal if the trait has none of that name
   */
  static void requireState(TraitDeclared trait, String state) {
    if (!trait.states().contains(state)) {
      throw new RegisterRefusal(
          trait.trait()
              + " has no state \""
              + state
              + "\"; "
              + (trait.states().isEmpty()
                  ? "it is scored or measured, and cannot be tallied"
                  : "it is one of " + String.join(", ", trait.states())));
    }
  }
}

package dev.filial.core.register;

import java.math.BigDecimal;

/** Whether a trait can take a value. */
final class TraitValues {

  /** More than any scale or rule reads. */
  private static final BigDecimal MOST = BigDecimal.valueOf(999_999_999);

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
   * Checks that somebody can have measured so: no size is below 0 unless the trait was declared to
   * go there, and none is of more than nine digits.
   *
   * @throws RegisterRefusal if nobody can
   */
  static void requireMeasurable(TraitDeclared trait, String value) {
    if (!trait.states().isEmpty()) {
      return;
    }
    BigDecimal number = new BigDecimal(value.strip());
    String unit = trait.unit();
    if (unit != null && trait.least() == null && number.signum() < 0 && !isTemperature(unit)) {
      throw new RegisterRefusal(
          trait.trait()
              + " is measured in "
              + unit
              + ", and "
              + value
              + " is below 0; see the sign, or declare the least that the trait can be");
    }
    boolean tooLong = number.scale() > 30 || number.precision() > 30;
    if (tooLong
        || (trait.most() == null && number.signum() > 0 && number.compareTo(MOST) > 0)
        || (trait.least() == null && number.signum() < 0 && number.negate().compareTo(MOST) > 0)) {
      throw new RegisterRefusal(
          value
              + (unit == null ? "" : " " + unit)
              + " is no "
              + trait.trait()
              + " that anybody can have measured; write it in full, with up to nine digits before"
              + " the point");
    }
  }

  private static boolean isTemperature(String unit) {
    return unit.contains("°") || unit.equals("C") || unit.equals("F");
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

package dev.filial.core.register;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A trait that plants are looked at for: states, a score, or a measurement.
 *
 * @param trait its name
 * @param states its states; empty for a score or a measurement
 * @param least the least score or measurement, or null
 * @param most the greatest, or null
 * @param unit the unit of a measurement, or null
 * @param remark anything else, or null
 */
public record TraitDeclared(
    String trait,
    List<String> states,
    @Nullable BigDecimal least,
    @Nullable BigDecimal most,
    @Nullable String unit,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if it has no name, the states are not at least two different
   *     ones, or the range is empty
   */
  public TraitDeclared {
    Require.text("trait", trait);
    states = List.copyOf(states);
    Require.texts("states", states);
    Require.measure("least value of " + trait, least);
    Require.measure("greatest value of " + trait, most);
    if (states.stream().map(String::strip).distinct().count() != states.size()
        || states.size() == 1) {
      throw new IllegalArgumentException(
          "the states of " + trait + " are at least two, and differ");
    }
    if (states.isEmpty() && least == null && most == null && unit == null) {
      throw new IllegalArgumentException(
          "say the states of " + trait + ", or its least and greatest score, or its unit");
    }
    if (least != null && most != null && least.compareTo(most) >= 0) {
      throw new IllegalArgumentException(
          "the least value of " + trait + ", " + least + ", is not below the greatest, " + most);
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.trait(trait));
  }
}

package dev.filial.core.register;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
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
   * @throws IllegalArgumentException if the states are not at least two different ones, or the
   *     range is empty
   */
  public TraitDeclared {
    Objects.requireNonNull(trait, "trait");
    states = List.copyOf(states);
    if (trait.isBlank()) {
      throw new IllegalArgumentException("a trait has a name");
    }
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

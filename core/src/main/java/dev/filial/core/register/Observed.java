package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What one plant, or one of a group, showed on a day.
 *
 * @param code the plant or group
 * @param trait the trait
 * @param value the state, score or measurement
 * @param date the day, or null when not known
 * @param photograph a picture of it, or null
 * @param remark anything else, or null
 */
public record Observed(
    Code code,
    String trait,
    String value,
    @Nullable PartialDate date,
    @Nullable Photograph photograph,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if trait or value is empty
   */
  public Observed {
    Objects.requireNonNull(code, "code");
    Require.text("trait", trait);
    Require.text("value", value);
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(code));
  }

  @Override
  public Set<Subject> mentions() {
    return Set.of(Subject.trait(trait));
  }
}

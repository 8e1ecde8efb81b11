package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How many seedlings of a sowing or group showed which state on a day.
 *
 * @param code the sowing or group
 * @param trait the trait
 * @param counts how many showed each state
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record Tallied(
    Code code,
    String trait,
    Map<String, Long> counts,
    @Nullable PartialDate date,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if no state is counted or a number is below zero
   */
  public Tallied {
    Objects.requireNonNull(code, "code");
    Require.text("trait", trait);
    counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    if (counts.isEmpty()) {
      throw new IllegalArgumentException(
          "a tally of " + code.text() + " counts at least one state");
    }
    counts.forEach(
        (state, number) -> {
          if (number < 0 || number > Count.MOST) {
            throw new IllegalArgumentException(
                number + " seedlings of state " + state + "; a tally counts from 0 upwards");
          }
        });
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

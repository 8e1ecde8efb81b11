package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;

/**
 * Two records that were found to be one plant.
 *
 * @param keep the record whose origin holds
 * @param other the record that is from now on read as the first
 * @param why how that came out
 */
public record Joined(Code keep, Code other, String why) implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if both are one record
   */
  public Joined {
    Objects.requireNonNull(keep, "keep");
    Objects.requireNonNull(other, "other");
    Require.text("why", why);
    if (keep.equals(other)) {
      throw new IllegalArgumentException(keep.text() + " is joined with itself; name two records");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(keep), Subject.of(other));
  }
}

package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Two records that were found to be one plant.
 *
 * @param keep the record whose origin holds
 * @param other the record that is from now on read as the first
 * @param why how that came out
 * @param fate what became of the plant, where the two records told it differently; null where what
 *     the first says holds ({@link JoinedFates} finds out which)
 * @param until the day it left or died, with such a fate, or null when not known
 */
public record Joined(
    Code keep, Code other, String why, @Nullable Fate fate, @Nullable PartialDate until)
    implements Statement {

  /** What the first record says of what became of the plant holds. */
  public Joined(Code keep, Code other, String why) {
    this(keep, other, why, null, null);
  }

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if both are one record, or no plant comes to such an end
   */
  public Joined {
    Objects.requireNonNull(keep, "keep");
    Objects.requireNonNull(other, "other");
    Require.text("why", why);
    if (keep.equals(other)) {
      throw new IllegalArgumentException(keep.text() + " is joined with itself; name two records");
    }
    if (fate == Fate.USED_UP) {
      throw new IllegalArgumentException(
          "a plant is not used up: it is alive, kept, dead, given or discarded");
    }
    if (until != null && (fate == null || fate.isHere())) {
      throw new IllegalArgumentException(
          "the day " + until + " is that on which a plant left or died; say which it was");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(keep), Subject.of(other));
  }
}

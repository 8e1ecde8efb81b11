package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What became of plants, groups or seed lots on a day, or of some of a group or lot.
 *
 * @param codes which
 * @param fate what became of them
 * @param date the day, or null when not known
 * @param count how many of each group or lot; null for the plant itself or all of it
 * @param to who has it now, or null
 * @param cause why, or null
 * @param remark anything else, or null
 */
public record FateRecorded(
    List<Code> codes,
    Fate fate,
    @Nullable PartialDate date,
    @Nullable Count count,
    @Nullable String to,
    @Nullable String cause,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if nothing is named, or a number is given for a single plant
   *     or for what did not leave
   */
  public FateRecorded {
    codes = Require.named(codes, "say which plant, pot or seed lot");
    Objects.requireNonNull(fate, "fate");
    Require.numbered(codes, count);
    if (count != null && (fate == Fate.ALIVE || fate == Fate.KEPT)) {
      throw new IllegalArgumentException(
          "a number goes with what left (dead, given, discarded); count what is alive instead");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Subject.of(codes);
  }

  @Override
  public Set<Subject> mentions() {
    return Mentions.with(Caution.of(this));
  }
}

package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Unnumbered seedlings put in a pot or tray of their own: a new group.
 *
 * @param group the code of the new group
 * @param from the group or sowing they came from, or the whole code when none was recorded
 * @param date the day, or null when not known
 * @param count how many
 * @param place where it stands, or null
 * @param remark anything else, or null
 */
public record Potted(
    Code group,
    Code from,
    @Nullable PartialDate date,
    Count count,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if these are not two things of one code
   */
  public Potted {
    Objects.requireNonNull(group, "group");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(count, "count");
    Require.group(group);
    if (!group.whole().equals(from.whole()) || group.equals(from)) {
      throw new IllegalArgumentException(
          group.text()
              + " cannot be potted from "
              + from.text()
              + ": it takes another pot number of the same code");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(group), Subject.of(from));
  }

  @Override
  public Set<Subject> mentions() {
    return Set.of(Subject.of(group.whole()));
  }
}

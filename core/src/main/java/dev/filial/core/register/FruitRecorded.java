package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How the flowers of a cross fared.
 *
 * @param cross the cross
 * @param date the day, or null when not known
 * @param set flowers that set fruit, or null
 * @param failed flowers that failed, or null
 * @param aborted of those that set, how many dropped their fruit unripe, or null
 * @param eaten flowers or fruit that were eaten, so that nobody can tell, or null
 * @param why why they failed, or null
 * @param remark anything else, or null
 */
public record FruitRecorded(
    Code cross,
    @Nullable PartialDate date,
    @Nullable Count set,
    @Nullable Count failed,
    @Nullable Count aborted,
    @Nullable Count eaten,
    @Nullable String why,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if no number is given or the code carries a suffix
   */
  public FruitRecorded {
    Objects.requireNonNull(cross, "cross");
    Require.whole(cross);
    if (set == null && failed == null && aborted == null && eaten == null) {
      throw new IllegalArgumentException(
          "say how many flowers of "
              + cross.text()
              + " set, or how many failed, aborted or were eaten");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(cross));
  }
}

package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Plants, pots or packets now stand somewhere else.
 *
 * @param codes which
 * @param place where they stand now
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record Moved(
    List<Code> codes, String place, @Nullable PartialDate date, @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if nothing is named
   */
  public Moved {
    codes = Require.named(codes, "say what was moved");
    Require.text("place", place);
  }

  @Override
  public Set<Subject> subjects() {
    return Subject.of(codes);
  }
}

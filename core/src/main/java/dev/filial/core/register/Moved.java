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
    codes = List.copyOf(codes);
    Require.distinct(codes);
    Require.text("place", place);
    if (codes.isEmpty()) {
      throw new IllegalArgumentException("say what was moved");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return codes.stream().map(Subject::of).collect(java.util.stream.Collectors.toUnmodifiableSet());
  }
}

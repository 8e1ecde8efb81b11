package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Plants seen in flower, or seen to be over, on a day.
 *
 * @param codes which plants, or pots with one in flower
 * @param bloom how their flowers stood
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record Flowered(
    List<Code> codes, Bloom bloom, @Nullable PartialDate date, @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if nothing is named
   */
  public Flowered {
    codes = Require.named(codes, "say which plant was in flower");
    Objects.requireNonNull(bloom, "bloom");
  }

  @Override
  public Set<Subject> subjects() {
    return Subject.of(codes);
  }
}

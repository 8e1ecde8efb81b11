package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A remark about a plant, a cross, a lot or a pot.
 *
 * @param code which
 * @param text the remark
 * @param date the day, or null when not known
 */
public record Noted(Code code, String text, @Nullable PartialDate date) implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the remark is empty
   */
  public Noted {
    Objects.requireNonNull(code, "code");
    Require.text("text", text);
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(code));
  }
}

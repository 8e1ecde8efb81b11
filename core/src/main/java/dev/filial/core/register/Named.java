package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A further name of a plant: its own, or its code in an old notebook. A seedling never inherits its
 * parent's.
 *
 * @param code the plant
 * @param name the name
 * @param remark anything else, or null
 */
public record Named(Code code, String name, @Nullable String remark) implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the name is empty
   */
  public Named {
    Objects.requireNonNull(code, "code");
    Require.text("name", name);
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(code));
  }
}

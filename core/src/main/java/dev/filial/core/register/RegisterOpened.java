package dev.filial.core.register;

import dev.filial.core.name.GrowersMark;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The first entry of a book: whose it is.
 *
 * @param mark the grower's mark, two to four letters, that stands before a code when it leaves the
 *     house
 * @param grower who keeps the register
 * @param remark anything else, or null
 */
public record RegisterOpened(String mark, String grower, @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the mark is not two to four letters
   */
  public RegisterOpened {
    Objects.requireNonNull(mark, "mark");
    Require.text("grower", grower);
    mark = new GrowersMark(mark).letters();
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of();
  }
}

package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A picture of plants, pots, fruit or seed, of no trait in particular.
 *
 * @param codes what is on it
 * @param photograph the picture
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record Photographed(
    List<Code> codes, Photograph photograph, @Nullable PartialDate date, @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if nothing is named
   */
  public Photographed {
    codes = Require.named(codes, "say what is on the picture");
    Objects.requireNonNull(photograph, "photograph");
  }

  @Override
  public Set<Subject> subjects() {
    return Subject.of(codes);
  }
}

package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Seed, seedlings or plants promised to somebody. It is kept once as many were given to the same
 * person; one that is off is struck.
 *
 * @param codes what
 * @param count how many of each pot or lot; null for the plant itself or all of it
 * @param to whom
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record Promised(
    List<Code> codes,
    @Nullable Count count,
    String to,
    @Nullable PartialDate date,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if nothing or nobody is named, or a number is given for a
   *     single plant
   */
  public Promised {
    codes = Require.named(codes, "say which plant, pot or seed lot");
    Require.text("to", to);
    Require.numbered(codes, count);
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

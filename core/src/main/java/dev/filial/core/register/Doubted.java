package dev.filial.core.register;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A mark on an entry: what it says is a guess, and whose.
 *
 * @param entry the number of the entry
 * @param by whose guess it is
 * @param remark anything else, or null
 */
public record Doubted(long entry, String by, @Nullable String remark) implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if it names no entry or nobody
   */
  public Doubted {
    Require.entry(entry);
    Require.text("by", by);
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.entry(entry));
  }
}

package dev.filial.core.register;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A correction: what an earlier entry says is replaced, in place, or struck.
 *
 * @param entry the number of the earlier entry
 * @param replacement what it should have said, or null when it should not have been made
 * @param why the reason
 */
public record Amended(long entry, @Nullable Statement replacement, String why)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if it names no entry or no reason, or the replacement is
   *     itself an amendment
   */
  public Amended {
    Require.entry(entry);
    Require.text("why", why);
    if (replacement instanceof Amended) {
      throw new IllegalArgumentException(
          "an amendment is put right by amending entry "
              + entry
              + " again, or by striking the amendment");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.entry(entry));
  }
}

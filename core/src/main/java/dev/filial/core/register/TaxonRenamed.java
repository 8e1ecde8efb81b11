package dev.filial.core.register;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A corrected name: all that was recorded under the one is from now on read under the other.
 * History stays: each entry still says what was written.
 *
 * @param from the name it was recorded under
 * @param to the name it should have
 * @param remark anything else, or null
 */
public record TaxonRenamed(String from, String to, @Nullable String remark) implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if a name cannot be read, or both are one name
   */
  public TaxonRenamed {
    Require.text("from", from);
    Require.text("to", to);
    if (Subject.taxon(from).equals(Subject.taxon(to))) {
      throw new IllegalArgumentException(
          "\"" + from + "\" and \"" + to + "\" are already one name to this register");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.taxon(from), Subject.taxon(to));
  }
}

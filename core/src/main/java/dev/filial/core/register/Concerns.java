package dev.filial.core.register;

import java.util.Optional;
import java.util.Set;

/**
 * What a statement is about and what it leans on. It is worked out once and handed on, since it
 * takes reading names, and one statement may number ten thousand seedlings.
 *
 * @param subjects what the statement says something about
 * @param mentions what it only leans on
 */
public record Concerns(Set<Subject> subjects, Set<Subject> mentions) {

  /** Of an entry that says nothing, being struck or not there yet. */
  public static final Concerns NONE = new Concerns(Set.of(), Set.of());

  /** What {@code statement} is about and leans on. */
  static Concerns of(Optional<Statement> statement) {
    return statement.isEmpty()
        ? NONE
        : new Concerns(statement.get().subjects(), statement.get().mentions());
  }
}

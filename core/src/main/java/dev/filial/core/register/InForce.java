package dev.filial.core.register;

import java.util.Optional;

/** What an entry says once the amendments of it and the partings of its plants are read. */
final class InForce {

  private InForce() {}

  /** The statement of entry {@code number} that now holds; empty when it was struck. */
  static Optional<Statement> statement(RegisterView view, long number) {
    Optional<Statement> said = view.entry(number).map(Entry::statement);
    // Of several amendments the last one holds: each replaces the whole body.
    for (long later : view.entriesOn(Subject.entry(number))) {
      if (view.effective(later).orElse(null) instanceof Amended amended) {
        said = Optional.ofNullable(amended.replacement());
      }
    }
    for (long later : view.entriesOn(Subject.entry(number))) {
      if (said.isPresent() && view.effective(later).orElse(null) instanceof Parted parted) {
        said = said.map(it -> EntryJson.replace(it, parted.code(), parted.into()));
      }
    }
    return said;
  }
}

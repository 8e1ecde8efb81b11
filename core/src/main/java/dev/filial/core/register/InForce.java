package dev.filial.core.register;

import java.util.List;
import java.util.Optional;

/** What an entry says once the amendments of it and the partings of its plants are read. */
final class InForce {

  private InForce() {}

  /**
   * The statement of entry {@code number} that now holds; empty when it was struck.
   *
   * @throws RegisterRefusal if a parting makes it say what cannot be
   */
  static Optional<Statement> statement(RegisterView view, long number) {
    return statement(view, number, 0);
  }

  /** The same, but for the parting of entry {@code without}. */
  static Optional<Statement> statement(RegisterView view, long number, long without) {
    Optional<Statement> said = view.entry(number).map(Entry::statement);
    List<Long> later = view.entriesOn(Subject.entry(number));
    // Of several amendments the last one holds: each replaces the whole body.
    for (long entry : later) {
      if (view.effective(entry).orElse(null) instanceof Amended amended) {
        said = Optional.ofNullable(amended.replacement());
      }
    }
    for (long entry : later) {
      if (entry != without
          && said.isPresent()
          && view.effective(entry).orElse(null) instanceof Parted parted) {
        said = Optional.of(parted(number, said.get(), entry, parted));
      }
    }
    return said;
  }

  private static Statement parted(long number, Statement said, long entry, Parted parted) {
    try {
      return EntryJson.replace(said, parted.code(), parted.into());
    } catch (IllegalArgumentException e) {
      throw new RegisterRefusal(
          "entry "
              + number
              + " is read of "
              + parted.into().text()
              + " since the parting in entry "
              + entry
              + ", and cannot be: "
              + e.getMessage()
              + "; amend the parting first",
          List.of(entry));
    }
  }
}

package dev.filial.core.register;

import java.util.List;
import java.util.Optional;

/**
 * Whether an entry about earlier entries (an amendment, a parting, a doubt) or about two records
 * names ones that it can be about. Asked on the day of writing only: what it names may be struck
 * later without harm.
 */
final class Amending {

  private final RegisterView book;

  /** Over the register before the entry. */
  Amending(RegisterView book) {
    this.book = book;
  }

  /**
   * Checks which entries are named.
   *
   * @throws RegisterRefusal if it cannot be about these
   */
  void check(Statement statement) {
    if (statement instanceof Amended amended) {
      checkAmended(amended);
    } else if (statement instanceof Parted parted) {
      checkParted(parted, book.size() + 1);
    } else if (statement instanceof Doubted doubted) {
      checkDoubted(doubted, book.size() + 1);
    } else if (statement instanceof Joined joined) {
      JoinRules.requireNotAncestor(book, joined);
    }
  }

  private void checkAmended(Amended amended) {
    long target = amended.entry();
    Statement replacement = amended.replacement();
    Entry entry =
        book.entry(target)
            .orElseThrow(
                () ->
                    new RegisterRefusal(
                        "there is no entry " + target + "; the last one is " + book.size()));
    if (target == 1 && !(replacement instanceof RegisterOpened)) {
      throw new RegisterRefusal(
          "entry 1 says whose register this is: it can be replaced by another such entry, not"
              + " struck");
    }
    if (target != 1 && replacement instanceof RegisterOpened) {
      throw new RegisterRefusal("only entry 1 says whose register this is; amend that one");
    }
    if (replacement == null) {
      if (book.effective(target).isEmpty()) {
        throw new RegisterRefusal(
            "entry " + target + " has been struck already; strike the striking to have it back");
      }
      return;
    }
    if (entry.statement() instanceof Amended) {
      throw new RegisterRefusal(
          "entry " + target + " is itself an amendment; amend the entry it names, or strike it");
    }
    if (replacement instanceof Parted parted) {
      checkParted(parted, target);
    } else if (replacement instanceof Doubted doubted) {
      checkDoubted(doubted, target);
    }
  }

  private void checkParted(Parted parted, long number) {
    Subject subject = Subject.of(parted.code());
    for (long entry : parted.entries()) {
      Optional<Statement> said =
          entry == number ? Optional.empty() : InForce.statement(book, entry, number);
      if (said.isEmpty()) {
        throw new RegisterRefusal(
            "there is no entry " + entry + " in force to part from " + parted.code().text());
      }
      Statement statement = said.get();
      if (!statement.subjects().contains(subject) && !statement.mentions().contains(subject)) {
        throw new RegisterRefusal(
            "entry "
                + entry
                + " does not speak of "
                + parted.code().text()
                + "; leave it out of the parting");
      }
      if (statement instanceof Parted) {
        throw new RegisterRefusal(
            "entry " + entry + " is itself a parting; amend it instead of parting it");
      }
      if (Introduction.kind(statement, parted.code()).isPresent()) {
        throw new RegisterRefusal(
            "entry "
                + entry
                + " is where "
                + parted.code().text()
                + " was first recorded; it stays with that code");
      }
      try {
        EntryJson.replace(statement, parted.code(), parted.into());
      } catch (IllegalArgumentException e) {
        throw new RegisterRefusal(
            "entry "
                + entry
                + " cannot be said of "
                + parted.into().text()
                + ": "
                + e.getMessage()
                + "; leave it out of the parting",
            List.of(entry));
      }
    }
  }

  private void checkDoubted(Doubted doubted, long number) {
    long entry = doubted.entry();
    Optional<Statement> said = entry == number ? Optional.empty() : book.effective(entry);
    if (said.isEmpty()) {
      throw new RegisterRefusal(
          "there is no entry " + entry + " in force to be marked a guess; see the history");
    }
    if (said.get() instanceof Amended amended) {
      throw new RegisterRefusal(
          "entry " + entry + " puts entry " + amended.entry() + " right; mark that one as a guess");
    }
  }
}

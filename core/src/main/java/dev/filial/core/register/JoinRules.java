package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The rules of two records that are one plant. */
final class JoinRules {

  private JoinRules() {}

  static void check(RegisterView book, long number, Joined joined) {
    Item keep = References.plant(book, joined.keep());
    Item other = References.plant(book, joined.other());
    for (long entry : book.entriesOn(Subject.of(joined.other()))) {
      if (entry != number
          && book.effective(entry).orElse(null) instanceof Joined before
          && before.other().equals(joined.other())) {
        throw new RegisterRefusal(
            joined.other().text()
                + " was joined with "
                + before.keep().text()
                + " in entry "
                + entry
                + "; join "
                + before.keep().text()
                + " with "
                + joined.keep().text()
                + ", or strike that entry",
            List.of(entry));
      }
    }
    CrossRules.requireNoLoop(book, joined.keep());
    List<Code> roots = new ArrayList<>();
    for (Descent descent : other.descent()) {
      roots.add(descent.seed());
      if (descent.pollen() != null) {
        roots.add(descent.pollen());
      }
    }
    if (!other.code().isWhole()) {
      roots.add(other.code().whole());
    }
    if (book.lineage(roots).containsKey(keep.code())) {
      throw new RegisterRefusal(
          References.described(book, keep.code())
              + " is an ancestor of "
              + References.described(book, other.code())
              + ", so they cannot be one plant; see who the parents were");
    }
  }

  /**
   * Whether the record that {@code code} is read as is one in the end.
   *
   * @throws RegisterRefusal if joins lead in a circle
   */
  static void requireNoCircle(RegisterView book, Code code) {
    Set<Code> seen = new HashSet<>();
    Code here = code;
    while (seen.add(here)) {
      Code next = book.item(here).map(Item::sameAs).orElse(null);
      if (next == null) {
        return;
      }
      here = next;
    }
    throw new RegisterRefusal(
        code.text()
            + " would be read as itself in a circle, through "
            + book.item(code).map(Item::sameAs).map(Code::text).orElse("")
            + "; they are joined already");
  }
}

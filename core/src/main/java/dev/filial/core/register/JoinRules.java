package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The rules of two records that are one plant. */
final class JoinRules {

  private JoinRules() {}

  static void check(RegisterView book, long number, Joined joined) {
    Item keep = References.plant(book, joined.keep());
    References.plant(book, joined.other());
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
    if (keep.descent().stream().anyMatch(descent -> isCopyOf(descent, joined.other()))) {
      throw new RegisterRefusal(
          joined.keep().text()
              + " was recorded as coming of "
              + joined.other().text()
              + "; keep "
              + joined.other().text()
              + " and join "
              + joined.keep().text()
              + " with it");
    }
    CrossRules.requireNoLoop(book, joined.keep());
  }

  /** A join that tells how a plant ended goes on telling it when the entry it was read in goes. */
  static void warnOfEndsStillTold(RegisterView before, Amended amended, List<String> warnings) {
    if (!(before.effective(amended.entry()).orElse(null) instanceof FateRecorded gone)
        || gone.fate().isHere()) {
      return;
    }
    for (Code code : gone.codes()) {
      for (long entry : before.entriesOn(Subject.of(code))) {
        if (before.effective(entry).orElse(null) instanceof Joined joined
            && joined.fate() == gone.fate()) {
          warnings.add(
              "entry "
                  + entry
                  + " joined "
                  + joined.other().text()
                  + " with "
                  + joined.keep().text()
                  + " as one plant that is gone, and still says so; put that one right too if it is"
                  + " not");
        }
      }
    }
  }

  /** What became of the other record is not read any more, and may be what became of the plant. */
  static void warnIfFatesDiffer(RegisterView book, Joined joined, List<String> warnings) {
    if (joined.fate() != null) {
      return;
    }
    JoinedFates fates = JoinedFates.of(book, joined.keep(), joined.other());
    Item keep = References.resolved(book, joined.keep());
    Item other = References.thing(book, joined.other());
    if (keep.fate().isHere() && !other.fate().isHere()) {
      warnings.add(
          other.code().text()
              + " was gone"
              + (other.until() == null ? "" : " " + other.until().inWords())
              + ", and is read as "
              + keep.code().text()
              + " from now on, which is still here; if the plant is gone, say so of "
              + keep.code().text());
    } else if (fates.isConflict()) {
      warnings.add(
          fates.words().orElseThrow()
              + "; what "
              + keep.code().text()
              + " says is read from now on, so see which is right");
    }
  }

  /** One plant is of one taxon and one place, so either a name is wrong or the join is. */
  static void warnIfKindsDiffer(RegisterView book, Joined joined, List<String> warnings) {
    Item keep = References.thing(book, joined.keep());
    Item other = References.thing(book, joined.other());
    String kept = keep.determination().taxon();
    String left = other.determination().taxon();
    if (kept != null && left != null && !sameTaxon(book, kept, left)) {
      warnings.add(
          keep.code().text()
              + " is "
              + kept
              + " and "
              + other.code().text()
              + " is "
              + left
              + "; "
              + kept
              + " is read from now on, so see which is right, or strike the join");
    } else if (keep.fieldNumber() != null
        && other.fieldNumber() != null
        && !book.population(keep.fieldNumber()).contains(other.fieldNumber().strip())) {
      warnings.add(
          keep.code().text()
              + " bears the field number "
              + keep.fieldNumber()
              + " and "
              + other.code().text()
              + " "
              + other.fieldNumber()
              + "; see which is right, or strike the join");
    }
  }

  private static boolean sameTaxon(RegisterView book, String one, String other) {
    return book.accepted(one).key().equals(book.accepted(other).key());
  }

  /**
   * Whether the one record stands among the ancestors of the other, by the register before they are
   * joined. Asked on the day of writing only: afterwards the origin of the other is not read.
   *
   * @throws RegisterRefusal if it does
   */
  static void requireNotAncestor(RegisterView before, Joined joined) {
    Optional<Item> other = before.item(joined.other());
    if (other.isEmpty()
        || !other.get().kind().isPlant()
        || before.effective(other.get().entry()).orElse(null) instanceof TagLost) {
      return; // where a lost tag belongs was a guess, and the join says better
    }
    // What it was taken from is no ancestor: that the two are one is the news.
    List<Code> roots =
        Lineage.next(other.get()).stream()
            .filter(
                next ->
                    other.get().descent().stream().noneMatch(descent -> isCopyOf(descent, next)))
            .toList();
    if (before.lineage(roots).containsKey(joined.keep())) {
      throw new RegisterRefusal(
          References.described(before, joined.keep())
              + " is an ancestor of "
              + References.described(before, joined.other())
              + ", so they cannot be one plant; see who the parents were");
    }
  }

  private static boolean isCopyOf(Descent descent, Code plant) {
    return descent.form() == Descent.Form.COPY && descent.seed().equals(plant);
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

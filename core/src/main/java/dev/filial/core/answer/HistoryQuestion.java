package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Entry;
import dev.filial.core.register.EntryJson;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** What was written in the book, and what became of it. */
public final class HistoryQuestion {

  private final RegisterView view;

  private HistoryQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static HistoryQuestion of(RegisterView view) {
    return new HistoryQuestion(view);
  }

  /**
   * One entry and all that was said of it since.
   *
   * @param said the entry as it now stands
   * @param firstText what it said when it was written
   * @param firstBody what it said when it was written, as JSON
   * @param body what it says now, or said last, as JSON
   * @param digest its digest
   * @param later the entries that amend it, part its plant or call it a guess, in order
   */
  public record History(
      Said said, String firstText, String firstBody, String body, String digest, List<Said> later) {

    /** Whether the entry itself puts an earlier one right; it can then be struck, not amended. */
    public boolean corrects() {
      return EntryJson.read(body) instanceof Amended;
    }
  }

  /**
   * The history of entry {@code number}.
   *
   * @throws RegisterRefusal if there is no such entry
   */
  public History entry(long number) {
    Entry entry =
        view.entry(number)
            .orElseThrow(
                () ->
                    new RegisterRefusal(
                        "there is no entry " + number + "; the last one is " + view.size()));
    Optional<Statement> now = view.effective(number);
    return new History(
        Said.of(view, number),
        Telling.of(entry.statement()),
        entry.body(),
        now.map(EntryJson::write).orElse(entry.body()),
        entry.digest(),
        view.entriesOn(Subject.entry(number)).stream().map(n -> Said.of(view, n)).toList());
  }

  /**
   * The entries that say something of one thing, oldest first: those that change something about
   * it, and those that lean on it, such as the crosses it is a parent of.
   */
  public List<Said> about(Code code) {
    TreeSet<Long> numbers = new TreeSet<>(view.entriesOn(Subject.of(code)));
    numbers.addAll(view.entriesMentioning(Subject.of(code)));
    numbers.addAll(view.taken(code).map(item -> List.of(item.entry())).orElse(List.of()));
    return numbers.stream().map(number -> Said.of(view, number)).toList();
  }

  /** The last {@code most} entries, oldest first. */
  public List<Said> last(int most) {
    List<Said> entries = new ArrayList<>();
    for (long number = Math.max(1, view.size() - most + 1); number <= view.size(); number++) {
      entries.add(Said.of(view, number));
    }
    return entries;
  }

  /**
   * The entry that undoing strikes: the last one in force, entries that themselves struck another
   * left out, so that undoing twice goes back two entries.
   *
   * @throws RegisterRefusal if there is nothing to undo
   */
  public Said undoable() {
    for (long number = view.size(); number > 1; number--) {
      Optional<Statement> statement = view.effective(number);
      boolean strikes =
          statement.orElse(null) instanceof Amended amended && amended.replacement() == null;
      if (statement.isPresent() && !strikes) {
        return Said.of(view, number);
      }
    }
    throw new RegisterRefusal("there is nothing to undo");
  }
}

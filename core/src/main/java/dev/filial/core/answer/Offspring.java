package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Introduction;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What directly came of something: crosses with it, plants propagated from it, seed and seedlings.
 */
final class Offspring {

  private Offspring() {}

  /** The codes given out by entries that lean on any of {@code parents} as a parent, in order. */
  static List<Code> of(RegisterView view, Collection<Code> parents) {
    TreeSet<Long> entries = new TreeSet<>();
    parents.forEach(parent -> entries.addAll(view.entriesMentioning(Subject.of(parent))));
    Set<Code> found = new LinkedHashSet<>();
    for (long entry : entries) {
      Statement statement = view.effective(entry).orElseThrow();
      for (Code code : Introduction.codes(statement)) {
        if (code.isWhole()) {
          found.add(code);
        }
      }
    }
    return List.copyOf(found);
  }

  /** Everything that came of {@code thing} by one step, whether its child or standing under it. */
  static Set<Code> next(RegisterView view, Code thing) {
    Set<Code> found = new LinkedHashSet<>();
    TreeSet<Long> entries = new TreeSet<>(view.entriesMentioning(Subject.of(thing)));
    entries.addAll(view.entriesOn(Subject.of(thing)));
    for (long entry : entries) {
      found.addAll(Introduction.codes(view.effective(entry).orElseThrow()));
    }
    if (thing.isWhole()) {
      found.addAll(view.codesUnder(thing));
    } else {
      found.remove(thing.whole());
    }
    found.remove(thing);
    return found;
  }
}

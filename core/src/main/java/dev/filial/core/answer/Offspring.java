package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Introduction;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What directly came of something: crosses with it, plants propagated from it, seed and seedlings.
 */
final class Offspring {

  private Offspring() {}

  /** The whole codes given out by entries that lean on any of {@code parents}, in order. */
  static List<Code> of(RegisterView view, Collection<Code> parents) {
    Set<Code> found = new LinkedHashSet<>();
    TreeSet<Long> entries = new TreeSet<>();
    for (Code parent : parents) {
      entries.addAll(view.entriesMentioning(Subject.of(parent)));
      entries.addAll(view.entriesOn(Subject.of(parent)));
    }
    for (long entry : entries) {
      for (Code code : Introduction.codes(view.effective(entry).orElseThrow())) {
        if (code.isWhole() && parents.stream().noneMatch(parent -> parent.whole().equals(code))) {
          found.add(code);
        }
      }
    }
    return List.copyOf(found);
  }

  /**
   * Everything that came of {@code thing} by one step: its offspring, what was taken from it or
   * stands under it, and the record that is read as it.
   */
  static Set<Code> next(RegisterView view, Code thing) {
    Set<Code> found = new LinkedHashSet<>();
    TreeSet<Long> entries = new TreeSet<>(view.entriesMentioning(Subject.of(thing)));
    entries.addAll(view.entriesOn(Subject.of(thing)));
    // What was introduced together with it, as pots of one sowing, stands beside it.
    Optional<Item> item = view.item(thing);
    item.ifPresent(introduced -> entries.remove(introduced.entry()));
    for (long entry : entries) {
      found.addAll(Introduction.codes(view.effective(entry).orElseThrow()));
    }
    found.addAll(joined(view, thing));
    if (thing.isWhole()) {
      found.addAll(view.codesUnder(thing));
    } else {
      found.remove(thing.whole());
    }
    found.remove(thing);
    return found;
  }

  /** The records that were joined with {@code kept} and are read as it. */
  static List<Code> joined(RegisterView view, Code kept) {
    List<Code> others = new ArrayList<>();
    for (long entry : view.entriesOn(Subject.of(kept))) {
      if (view.effective(entry).orElseThrow() instanceof Joined joined
          && joined.keep().equals(kept)) {
        others.add(joined.other());
      }
    }
    return others;
  }
}

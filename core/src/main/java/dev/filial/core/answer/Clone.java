package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * All recorded plants of one genotype: a plant, its offsets, theirs, and records joined with them.
 */
final class Clone {

  private Clone() {}

  /** The codes, the plant's own first; those whose chromosomes were doubled are not among them. */
  static Set<Code> of(RegisterView view, Code plant) {
    Set<Code> clone = new LinkedHashSet<>();
    Deque<Code> open = new ArrayDeque<>();
    open.add(plant);
    while (!open.isEmpty()) {
      Code here = open.remove();
      if (!clone.add(here)) {
        continue;
      }
      propagation(view, here)
          .filter(ramet -> !ramet.doubled())
          .ifPresent(ramet -> open.add(ramet.of()));
      for (long entry : view.entriesMentioning(Subject.of(here))) {
        Statement statement = view.effective(entry).orElseThrow();
        if (statement instanceof Propagated ramet && ramet.of().equals(here) && !ramet.doubled()) {
          open.add(ramet.code());
        }
      }
      open.addAll(Offspring.joined(view, here));
      view.resolved(here).ifPresent(item -> open.add(item.code()));
    }
    return clone;
  }

  /** Whether an offset is a sport for the trait, and so says nothing of its source. */
  static boolean isSport(RegisterView view, Code plant, String trait) {
    LastSeen seen = LastSeen.of(view, trait);
    return propagation(view, plant)
        .filter(ramet -> ramet.sportFor().stream().anyMatch(seen::isOf))
        .isPresent();
  }

  private static Optional<Propagated> propagation(RegisterView view, Code plant) {
    return view.item(plant)
        .flatMap(item -> view.effective(item.entry()))
        .filter(Propagated.class::isInstance)
        .map(Propagated.class::cast)
        .filter(ramet -> ramet.code().equals(plant));
  }
}

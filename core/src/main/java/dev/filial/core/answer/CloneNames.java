package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One code for all plants of a clone. Remembers what it looked up. */
final class CloneNames {

  private final RegisterView view;

  /** What each plant was taken from, joined with, or the source of; null to look it up. */
  private final @Nullable Map<Code, List<Code>> kin;

  private final Map<Code, Code> names = new HashMap<>();

  /** Looks each plant up, as is best for a few. */
  CloneNames(RegisterView view) {
    this(view, null);
  }

  private CloneNames(RegisterView view, @Nullable Map<Code, List<Code>> kin) {
    this.view = view;
    this.kin = kin;
  }

  /** Names for many plants: what makes one plant of a clone of another is {@link #read} to it. */
  static CloneNames toBeRead(RegisterView view) {
    return new CloneNames(view, new HashMap<>());
  }

  /** Takes a statement that may say that two plants are of one clone, before any name is asked. */
  void read(Statement statement) {
    if (statement instanceof Propagated ramet && !ramet.doubled()) {
      link(ramet.code(), ramet.of());
    } else if (statement instanceof Joined joined) {
      link(joined.keep(), joined.other());
    }
  }

  private void link(Code one, Code other) {
    if (kin == null) {
      throw new IllegalStateException("these names are looked up");
    }
    kin.computeIfAbsent(one, any -> new ArrayList<>()).add(other);
    kin.computeIfAbsent(other, any -> new ArrayList<>()).add(one);
  }

  /** A clone is called after the first of its plants; of records joined, after the one kept. */
  Code of(Code plant) {
    Code known = names.get(plant);
    if (known != null) {
      return known;
    }
    Set<Code> clone = kin == null ? Clone.of(view, plant) : reached(kin, plant);
    Code first = clone.stream().min(Comparator.naturalOrder()).orElse(plant);
    // Of one that was never joined nothing has to be looked up.
    Code name =
        kin != null && clone.size() == 1
            ? plant
            : view.resolved(first).map(Item::code).orElse(first);
    clone.forEach(ramet -> names.put(ramet, name));
    return name;
  }

  private static Set<Code> reached(Map<Code, List<Code>> kin, Code plant) {
    Set<Code> clone = new LinkedHashSet<>();
    Deque<Code> open = new ArrayDeque<>(List.of(plant));
    while (!open.isEmpty()) {
      Code here = open.remove();
      if (clone.add(here)) {
        open.addAll(kin.getOrDefault(here, List.of()));
      }
    }
    return clone;
  }
}

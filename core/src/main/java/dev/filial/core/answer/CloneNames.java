package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** One code for all plants of a clone. Remembers what it looked up. */
final class CloneNames {

  private final RegisterView view;
  private final Map<Code, Code> names = new HashMap<>();

  CloneNames(RegisterView view) {
    this.view = view;
  }

  /** A clone is called after the first of its plants; of records joined, after the one kept. */
  Code of(Code plant) {
    Code known = names.get(plant);
    if (known != null) {
      return known;
    }
    Set<Code> clone = Clone.of(view, plant);
    Code first = clone.stream().min(Comparator.naturalOrder()).orElse(plant);
    Code name = view.resolved(first).map(Item::code).orElse(first);
    clone.forEach(ramet -> names.put(ramet, name));
    return name;
  }
}

package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The crosses made between single plants, those of one clone counting as one plant. */
final class Crossed {

  private final RegisterView view;
  private final Map<Code, Code> clones = new HashMap<>();
  private final Map<Code, Map<String, Tries>> borne = new HashMap<>();

  Crossed(RegisterView view) {
    this.view = view;
  }

  boolean isOneClone(Code one, Code other) {
    return clone(one).equals(clone(other));
  }

  /** What came of crosses of these two, the first being the seed parent. */
  Tries tries(Code seed, Code pollen) {
    Code bearer = clone(seed);
    return borne
        .computeIfAbsent(bearer, this::borneBy)
        .getOrDefault(clone(pollen).text(), Tries.NONE);
  }

  /** A clone is called after the first of its plants. */
  private Code clone(Code plant) {
    Code known = clones.get(plant);
    if (known == null) {
      known = Clone.of(view, plant).stream().min(Comparator.naturalOrder()).orElse(plant);
      clones.put(plant, known);
    }
    return known;
  }

  private Map<String, Tries> borneBy(Code bearer) {
    List<Item> crosses =
        Offspring.of(view, Clone.of(view, bearer)).stream()
            .flatMap(code -> view.item(code).stream())
            .filter(item -> item.kind() == Item.Kind.CROSS)
            .sorted(Item.IN_ORDER)
            .toList();
    String name = bearer.text();
    Map<String, Tries> tries = new HashMap<>();
    for (SetsQuestion.Row row :
        SetsQuestion.of(view).ask(crosses, plant -> clone(plant).text()).rows()) {
      if (row.one().equals(name)) {
        tries.put(row.other(), row.oneBears());
      } else if (row.other().equals(name)) {
        tries.put(row.one(), row.otherBears());
      }
    }
    return tries;
  }
}

package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The crosses made between single plants, those of one clone counting as one plant. */
final class Crossed {

  private final RegisterView view;
  private final CloneNames clones;
  private final Map<Code, Map<String, Tries>> borne = new HashMap<>();

  Crossed(RegisterView view) {
    this.view = view;
    this.clones = new CloneNames(view);
  }

  boolean isOneClone(Code one, Code other) {
    return clones.of(one).equals(clones.of(other));
  }

  /** What came of crosses of these two, the first being the seed parent. */
  Tries tries(Code seed, Code pollen) {
    Code bearer = clones.of(seed);
    return borne
        .computeIfAbsent(bearer, this::borneBy)
        .getOrDefault(clones.of(pollen).text(), Tries.NONE);
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
        SetsQuestion.of(view).ask(crosses, plant -> clones.of(plant).text(), clones).rows()) {
      if (row.one().equals(name)) {
        tries.merge(row.other(), row.oneBears(), (some, more) -> Tries.sum(List.of(some, more)));
      } else if (row.other().equals(name)) {
        tries.merge(row.one(), row.otherBears(), (some, more) -> Tries.sum(List.of(some, more)));
      }
    }
    return tries;
  }
}

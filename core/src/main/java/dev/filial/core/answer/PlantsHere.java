package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Plants that can be pollinated, or give pollen.
 *
 * @param plants those that stand here
 * @param gone how many of those that were looked at do not, or never did
 */
record PlantsHere(List<Item> plants, int gone) {

  PlantsHere {
    plants = List.copyOf(plants);
  }

  /**
   * Those of the register.
   *
   * @param named the only ones to be looked at; all plants and numbered seedlings if none is named
   * @throws RegisterRefusal if what is named is no single plant
   */
  static PlantsHere of(RegisterView view, List<Code> named) {
    Map<Code, Item> looked = new LinkedHashMap<>();
    for (Code code : named) {
      Item item = Things.required(view, code);
      if (!item.kind().isPlant()) {
        throw new RegisterRefusal(
            item.code().text() + " is a " + item.kind().word() + "; name single plants");
      }
      looked.put(item.code(), item);
    }
    if (named.isEmpty()) {
      for (Item item : view.items(Set.of(Item.Kind.PLANT, Item.Kind.SEEDLING))) {
        if (item.sameAs() == null) {
          looked.put(item.code(), item);
        }
      }
    }
    List<Item> plants = new ArrayList<>(looked.values());
    plants.removeIf(item -> !item.fate().isHere() || item.neverHeld());
    return new PlantsHere(plants, looked.size() - plants.size());
  }
}

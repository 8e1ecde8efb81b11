package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.TraitDeclared;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The plants and the trait of a question about scores and measurements. */
final class Ranked {

  private Ranked() {}

  /**
   * A trait that is scored or measured.
   *
   * @throws RegisterRefusal if it is not declared, or has states
   */
  static TraitDeclared measurable(RegisterView view, String trait) {
    TraitDeclared declared = view.requiredTrait(trait);
    if (!declared.states().isEmpty()) {
      throw new RegisterRefusal(
          declared.trait()
              + " has states ("
              + String.join(", ", declared.states())
              + ") and no numbers; name a trait that is scored or measured");
    }
    return declared;
  }

  /**
   * The plants meant, each once: the seedlings of a cross or packet, a plant itself; all of the
   * register for an empty list.
   *
   * @throws RegisterRefusal if a code is none of this register, or a lot, a sowing or a pot
   */
  static Collection<Item> plants(RegisterView view, List<Code> what) {
    Map<Code, Item> plants = new LinkedHashMap<>();
    if (what.isEmpty()) {
      view.items(EnumSet.of(Item.Kind.PLANT, Item.Kind.SEEDLING)).stream()
          .filter(item -> item.sameAs() == null)
          .forEach(item -> plants.put(item.code(), item));
    }
    for (Code code : what) {
      Item item = Things.required(view, code);
      if (item.kind().isPlant()) {
        plants.put(item.code(), item);
      } else if (item.kind().isFamily()) {
        view.codesUnder(item.code()).stream()
            .filter(Code::isSeedling)
            .sorted()
            .flatMap(seedling -> view.item(seedling).stream())
            .filter(seedling -> seedling.sameAs() == null)
            .forEach(seedling -> plants.put(seedling.code(), seedling));
      } else {
        throw new RegisterRefusal(
            item.code().text()
                + " is a "
                + item.kind().word()
                + ", and only single plants are scored and measured; name the cross "
                + item.code().whole().text()
                + ", or plants");
      }
    }
    return plants.values();
  }
}

package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The sowings a question is about. */
final class SowingsMeant {

  private SowingsMeant() {}

  /**
   * The sowings of a cross or packet, of a seed lot, the sowing itself, or the one a pot was filled
   * from; all of the register for null. In order of entry, those of one cross in order of their
   * number.
   *
   * @throws RegisterRefusal if the register has no such code, it is a plant that came from
   *     elsewhere, or nothing of it was sown
   */
  static List<Sown> of(RegisterView view, @Nullable Code what) {
    if (what == null) {
      List<Sown> all = new ArrayList<>();
      view.items(Set.of(Item.Kind.SOWING)).forEach(item -> add(view, item, all));
      return all;
    }
    Item item = Things.required(view, what);
    if (item.kind() == Item.Kind.PLANT) {
      throw new RegisterRefusal(
          item.code().text()
              + " is a plant, and only seed is sown; name a cross, a packet, a seed lot, a sowing or"
              + " a pot");
    }
    List<Sown> sowings = new ArrayList<>();
    view.codesUnder(item.code().whole()).stream()
        .filter(Code::isSowing)
        .sorted()
        .forEach(code -> view.item(code).ifPresent(sowing -> add(view, sowing, sowings)));
    sowings.removeIf(
        sown ->
            switch (item.kind()) {
              case LOT -> !sown.lot().equals(item.code());
              case SOWING -> !sown.sowing().equals(item.code());
              case GROUP -> !isFilled(view, sown, item.code());
              case CROSS, SEED, MIXTURE, SEEDLING, PLANT -> false;
            });
    if (sowings.isEmpty()) {
      throw new RegisterRefusal("no sowing of " + item.code().text() + " is recorded");
    }
    return sowings;
  }

  private static boolean isFilled(RegisterView view, Sown sown, Code pot) {
    return view.item(pot).map(Item::entry).equals(view.item(sown.sowing()).map(Item::entry))
        && sown.groups().stream().anyMatch(filled -> filled.group().equals(pot));
  }

  private static void add(RegisterView view, Item item, List<Sown> sowings) {
    if (view.effective(item.entry()).orElse(null) instanceof Sown sown) {
      sowings.add(sown);
    }
  }
}

package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.ForwardingView;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A register of which many things are at hand, for questions that come back to them one by one. It
 * serves only as long as nothing is written.
 */
final class ItemsAtHand extends ForwardingView {

  private final RegisterView view;
  private final Map<Code, Item> known = new HashMap<>();

  ItemsAtHand(RegisterView view) {
    this.view = view;
  }

  @Override
  protected RegisterView view() {
    return view;
  }

  /** Keeps what was read already. */
  void keep(Collection<Item> items) {
    items.forEach(item -> known.put(item.code(), item));
  }

  /** Has those of {@code codes} at hand that are not yet; they are looked up together. */
  void fetch(Iterable<Code> codes) {
    Set<Code> missing = new LinkedHashSet<>();
    for (Code code : codes) {
      if (!known.containsKey(code)) {
        missing.add(code);
      }
    }
    if (!missing.isEmpty()) {
      known.putAll(view.itemsOf(missing));
    }
  }

  @Override
  public Optional<Item> item(Code code) {
    Item item = known.get(code);
    return item == null ? view.item(code) : Optional.of(item);
  }
}

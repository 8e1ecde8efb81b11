package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Whole codes that were given out while a register was being written, with all that was put under
 * them since: that nothing else stands there is known without looking it up.
 */
final class NewFamilies {

  /** A family of more is looked up: there are few of those, and they would take the room. */
  private static final int LARGEST = 64;

  private final Lately<Code, Map<String, Item>> families = new Lately<>();

  /** Takes note of a whole code under which nothing stood before. */
  void begin(Item whole) {
    // Most of a long table stay alone, and a map that can grow is not made for them.
    families.put(whole.code(), Map.of(whole.code().text(), whole));
  }

  /** Takes note of what was given out, or is otherwise now. */
  void put(Item item) {
    Code whole = item.code().whole();
    Map<String, Item> family = families.known(whole);
    if (family == null) {
      return;
    }
    Map<String, Item> growing = family instanceof TreeMap ? family : new TreeMap<>(family);
    growing.put(item.code().text(), item);
    if (growing.size() > LARGEST) {
      families.forget(whole);
    } else if (growing != family) {
      families.put(whole, growing);
    }
  }

  /** All under the code, itself included, by their text; null where that is not known here. */
  @Nullable Map<String, Item> under(Code code) {
    return families.known(code.whole());
  }

  void forget() {
    families.forget();
  }
}

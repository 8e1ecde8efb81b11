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

  private final Lately<Code, TreeMap<String, Item>> families = new Lately<>();

  /** Takes note of a whole code under which nothing stood before. */
  void begin(Code whole) {
    families.put(whole, new TreeMap<>());
  }

  /** Takes note of what was given out, or is otherwise now. */
  void put(Item item) {
    Code whole = item.code().whole();
    TreeMap<String, Item> family = families.known(whole);
    if (family != null) {
      family.put(item.code().text(), item);
      if (family.size() > LARGEST) {
        families.forget(whole);
      }
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

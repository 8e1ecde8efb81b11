package dev.filial.core.store;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The newest of what was looked up. When there is too much of it, what was not asked for since that
 * was last so falls out: in two heaps, which costs less than keeping all of it in order.
 */
final class Lately<K, V> {

  /** What is folded again with each entry about one thing has to fit, or all of it is looked up. */
  private static final int KEPT = 4096;

  private Map<K, V> kept = new HashMap<>();
  private Map<K, V> older = new HashMap<>();

  /** What is at hand, or else what {@code lookUp} says, which is then at hand. */
  V get(K key, Function<K, V> lookUp) {
    V value = known(key);
    if (value == null) {
      value = lookUp.apply(key);
      put(key, value);
    }
    return value;
  }

  /** What is at hand; null where nothing is. */
  @Nullable V known(K key) {
    V value = kept.get(key);
    if (value == null) {
      value = older.get(key);
      if (value != null) {
        put(key, value);
      }
    }
    return value;
  }

  void put(K key, V value) {
    if (kept.size() == KEPT) {
      Map<K, V> oldest = older;
      older = kept;
      oldest.clear();
      kept = oldest;
    }
    kept.put(key, value);
  }

  void forget(K key) {
    kept.remove(key);
    older.remove(key);
  }

  void forget() {
    kept.clear();
    older.clear();
  }
}

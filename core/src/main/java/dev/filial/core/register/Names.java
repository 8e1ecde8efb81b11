package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How plants are found by their own names: case and outer spaces do not count. */
public final class Names {

  private Names() {}

  /** The form in which names are compared. */
  public static String folded(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  /** Whether {@code name} begins with {@code beginning}. */
  static boolean begins(String name, String beginning) {
    return folded(name).startsWith(folded(beginning));
  }

  /** The first {@code most} of a sorted map. */
  static Map<String, List<Code>> first(Map<String, ? extends Collection<Code>> names, int most) {
    Map<String, List<Code>> first = new LinkedHashMap<>();
    for (Map.Entry<String, ? extends Collection<Code>> name : names.entrySet()) {
      if (first.size() == most) {
        break;
      }
      first.put(name.getKey(), List.copyOf(name.getValue()));
    }
    return Collections.unmodifiableMap(first);
  }
}

package dev.filial.core.register;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What an entry says, property by property, under the names by which it is put right. */
public final class EntryProperties {

  private static final JsonMapper MAPPER = new JsonMapper();

  private EntryProperties() {}

  /**
   * The properties of an entry's body in their order, one within another under its own name with a
   * dot before it ({@code readings.2.alive}, counted from 1).
   *
   * @throws tools.jackson.core.JacksonException if the text is no JSON
   */
  public static Map<String, String> of(String body) {
    Map<String, String> properties = new LinkedHashMap<>();
    gather("", MAPPER.readTree(body), properties);
    return Collections.unmodifiableMap(properties);
  }

  private static void gather(String path, JsonNode node, Map<String, String> into) {
    if (node.isObject()) {
      node.forEachEntry((name, part) -> gather(within(path, name), part, into));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        gather(within(path, Integer.toString(i + 1)), node.get(i), into);
      }
    } else {
      into.put(path, node.asString());
    }
  }

  private static String within(String path, String name) {
    return path.isEmpty() ? name : path + "." + name;
  }
}

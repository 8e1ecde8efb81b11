package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A statement with some of its properties put right, each named as {@link EntryJson} names it.
 *
 * <p>A property within another is written with a dot: {@code determination.taxon}, {@code
 * readings.2.alive} for the second of a list, {@code makeup.Echeveria laui}. Its own name is enough
 * where only one is called so: {@code taxon}, and {@code alive} where the list has one part. Of a
 * cross, {@code seed} stands for {@code seedParent}, and {@code pollen} may be a code, {@code
 * itself} or {@code open}. A value is written as text; lists of texts have commas between them;
 * anything larger is JSON. An empty value takes the property away.
 */
public final class Corrections {

  /** Of a long list the parts are not all named. */
  private static final int MOST_NAMED = 40;

  private static final JsonMapper MAPPER = JsonMapper.shared();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Class<?> kind;
  private final ObjectNode tree;
  private final Function<String, PartialDate> dates;
  private final Function<String, Code> codes;

  private Corrections(
      Class<?> kind,
      ObjectNode tree,
      Function<String, PartialDate> dates,
      Function<String, Code> codes) {
    this.kind = kind;
    this.tree = tree;
    this.dates = dates;
    this.codes = codes;
  }

  /** Corrections of {@code said}, dates and codes being read as they are kept. */
  public static Corrections of(Statement said) {
    return new Corrections(
        said.getClass(),
        (ObjectNode) MAPPER.readTree(EntryJson.write(said)),
        PartialDate::parse,
        Code::parse);
  }

  /** The same, dates being read so. */
  public Corrections withDates(Function<String, PartialDate> reading) {
    return new Corrections(kind, tree, reading, codes);
  }

  /** The same, codes being read so. */
  public Corrections withCodes(Function<String, Code> reading) {
    return new Corrections(kind, tree, dates, reading);
  }

  /**
   * Corrections with one property set, or taken away by an empty value.
   *
   * @throws IllegalArgumentException if there is no such property or it cannot be that; the message
   *     names those there are
   */
  public Corrections set(String property, String value) {
    ObjectNode copy = tree.deepCopy();
    new Setting(property.strip(), value.strip()).into(copy);
    return new Corrections(kind, copy, dates, codes);
  }

  /**
   * The statement as corrected.
   *
   * @throws IllegalArgumentException if what it would say cannot be
   */
  public Statement statement() {
    return EntryJson.read(tree.toString());
  }

  /** The properties that a statement of this kind may have. */
  public List<String> properties() {
    return properties(kind);
  }

  private static List<String> properties(Class<?> type) {
    List<String> names = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      if (component.getType().isRecord() && !isText(component.getType())) {
        properties(component.getType())
            .forEach(inner -> names.add(component.getName() + "." + inner));
      } else {
        names.add(component.getName());
      }
    }
    return names;
  }

  /** Whether values of that type are one text, however many parts they have in the program. */
  private static boolean isText(Class<?> type) {
    return type == Code.class
        || type == Count.class
        || type == PartialDate.class
        || type == dev.filial.core.number.Fraction.class;
  }

  /** The same as they can be named of what was said, a list of parts by the parts that it has. */
  private static List<String> named(Class<?> type, JsonNode said) {
    List<String> names = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      Class<?> inner = component.getType();
      JsonNode value = said.path(component.getName());
      Class<?> part = part(component);
      if (inner.isRecord() && !isText(inner)) {
        named(inner, value).forEach(name -> names.add(component.getName() + "." + name));
      } else if (part != null && value.size() > 0) {
        for (int i = 0; i < value.size(); i++) {
          String place = component.getName() + "." + (i + 1) + ".";
          named(part, value.get(i)).forEach(name -> names.add(place + name));
        }
      } else {
        names.add(component.getName());
      }
    }
    return names;
  }

  /** What a list is of, where that has parts; else null. */
  private static @Nullable Class<?> part(RecordComponent list) {
    return list.getType() == List.class
            && list.getGenericType() instanceof ParameterizedType generic
            && generic.getActualTypeArguments()[0] instanceof Class<?> element
            && element.isRecord()
            && !isText(element)
        ? element
        : null;
  }

  private static @Nullable RecordComponent component(Class<?> type, String name) {
    for (RecordComponent component : type.getRecordComponents()) {
      if (component.getName().equals(name)) {
        return component;
      }
    }
    return null;
  }

  /** The setting of one property. */
  private final class Setting {
    private final String property;
    private final String value;

    Setting(String property, String value) {
      this.property = property;
      this.value = value;
    }

    void into(ObjectNode root) {
      String path = property;
      if (kind == Pollinated.class && path.equals("seed")) {
        path = "seedParent";
      }
      int dot = path.indexOf('.');
      String first = dot < 0 ? path : path.substring(0, dot);
      if (component(kind, first) == null) {
        List<String> inner =
            named(kind, root).stream().filter(one -> one.endsWith("." + first)).toList();
        if (inner.size() == 1) {
          path = inner.get(0) + path.substring(first.length());
        }
      }
      set(root, kind, path);
    }

    private void set(ObjectNode node, Class<?> type, String path) {
      int dot = path.indexOf('.');
      String name = dot < 0 ? path : path.substring(0, dot);
      RecordComponent component = component(type, name);
      if (component == null) {
        throw unknown(type == kind ? few(named(kind, node)) : properties(type));
      }
      if (dot < 0) {
        put(node, name, component.getGenericType());
        return;
      }
      String rest = path.substring(dot + 1);
      Class<?> inner = component.getType();
      if (inner == Map.class) {
        putInMap(
            child(node, name),
            rest,
            ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[1]);
      } else if (inner == List.class) {
        setInList(node.path(name), component, rest);
      } else if (inner == Pollen.class) {
        setPollen(child(node, name), rest);
      } else if (inner.isRecord() && !isText(inner)) {
        set(child(node, name), inner, rest);
      } else {
        throw new IllegalArgumentException(
            "\"" + property + "\": " + name + " is one value and has no parts");
      }
    }

    /** A map within a map goes by the last dot: names may have dots in them, symbols have none. */
    private void putInMap(ObjectNode map, String key, Type value) {
      int dot = key.lastIndexOf('.');
      if (dot > 0 && value instanceof ParameterizedType inner && inner.getRawType() == Map.class) {
        put(
            child(map, key.substring(0, dot)),
            key.substring(dot + 1),
            inner.getActualTypeArguments()[1]);
      } else {
        put(map, key, value);
      }
    }

    private ObjectNode child(ObjectNode node, String name) {
      return node.get(name) instanceof ObjectNode there ? there : node.putObject(name);
    }

    private void setPollen(ObjectNode node, String rest) {
      Class<?> source =
          switch (node.path("from").asString("")) {
            case "plant" -> Pollen.OnePlant.class;
            case "mix" -> Pollen.Mix.class;
            case "open" -> Pollen.Open.class;
            default -> Pollen.Itself.class;
          };
      if (source == Pollen.Itself.class) {
        throw new IllegalArgumentException(
            "\"" + property + "\": this is a selfing; write pollen=CODE for the pollen of a plant");
      }
      set(node, source, rest);
    }

    private void setInList(JsonNode list, RecordComponent component, String rest) {
      int dot = rest.indexOf('.');
      String place = dot < 0 ? rest : rest.substring(0, dot);
      int size = list.size();
      if (!place.matches("[1-9]\\d{0,5}") || Integer.parseInt(place) > size) {
        throw new IllegalArgumentException(
            "\""
                + property
                + "\": "
                + component.getName()
                + (size == 0
                    ? " is empty; write the whole list"
                    : " has numbers 1 to " + size + ", as " + component.getName() + ".1"));
      }
      ArrayNode array = (ArrayNode) list;
      int index = Integer.parseInt(place) - 1;
      Type element = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
      if (dot >= 0 && element instanceof Class<?> type && type.isRecord() && !isText(type)) {
        set((ObjectNode) array.get(index), type, rest.substring(dot + 1));
      } else if (dot >= 0) {
        throw new IllegalArgumentException("\"" + property + "\" has no parts");
      } else if (value.isEmpty()) {
        array.remove(index);
      } else {
        array.set(index, node(element));
      }
    }

    private void put(ObjectNode node, String name, Type type) {
      if (value.isEmpty()) {
        node.remove(name);
      } else {
        node.set(name, node(type));
      }
    }

    private JsonNode node(Type type) {
      if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
        Type element = generic.getActualTypeArguments()[0];
        boolean structured = element instanceof Class<?> one && one.isRecord() && !isText(one);
        return structured || value.startsWith("[") ? json(generic) : list(element);
      }
      if (!(type instanceof Class<?> plain)) {
        return json(type);
      }
      if (plain == Pollen.class) {
        return value.startsWith("{") ? json(type) : pollen();
      }
      if (plain.isRecord() && !isText(plain)) {
        return json(type);
      }
      return scalar(plain, value);
    }

    private ArrayNode list(Type element) {
      ArrayNode array = NODES.arrayNode();
      for (String part : value.split(",", -1)) {
        array.add(scalar((Class<?>) element, part.strip()));
      }
      return array;
    }

    private JsonNode scalar(Class<?> type, String text) {
      if (type == boolean.class) {
        return switch (text.toLowerCase(Locale.ROOT)) {
          case "yes", "true" -> NODES.booleanNode(true);
          case "no", "false" -> NODES.booleanNode(false);
          default ->
              throw new IllegalArgumentException(property + " is yes or no, not \"" + text + "\"");
        };
      }
      if (type == BigDecimal.class
          || type == int.class
          || type == long.class
          || (Number.class.isAssignableFrom(type) && !isText(type))) {
        boolean whole = type != BigDecimal.class;
        if (!text.matches(whole ? "-?\\d{1,18}" : "-?\\d{1,18}(\\.\\d{1,18})?")) {
          throw new IllegalArgumentException(
              property + " is a " + (whole ? "whole number" : "number") + ", not \"" + text + "\"");
        }
        return whole
            ? NODES.numberNode(Long.parseLong(text))
            : NODES.numberNode(new BigDecimal(text));
      }
      if (type == PartialDate.class) {
        return NODES.stringNode(dates.apply(text).toString());
      }
      return NODES.stringNode(type == Code.class ? codes.apply(text).text() : text);
    }

    private ObjectNode pollen() {
      ObjectNode pollen = NODES.objectNode();
      switch (value.toLowerCase(Locale.ROOT)) {
        case "itself", "self", "selfed" -> pollen.put("from", "itself");
        case "open" -> pollen.put("from", "open").put("unknown", "1");
        default -> pollen.put("from", "plant").put("plant", codes.apply(value).text());
      }
      return pollen;
    }

    private JsonNode json(Type type) {
      boolean list =
          type instanceof ParameterizedType generic && generic.getRawType() == List.class;
      if (value.startsWith(list ? "[" : "{")) {
        try {
          return MAPPER.readTree(value);
        } catch (JacksonException e) {
          throw new IllegalArgumentException(
              property + " cannot be read as JSON: " + JsonWords.of(e.getOriginalMessage()), e);
        }
      }
      throw new IllegalArgumentException(
          property
              + " has parts; name one of them ("
              + property
              + (list ? ".1" : ".…")
              + "), or write it whole as JSON, in "
              + (list ? "[ ]" : "{ }"));
    }

    private List<String> few(List<String> names) {
      return names.size() <= MOST_NAMED ? names : properties(kind);
    }

    private IllegalArgumentException unknown(List<String> there) {
      return new IllegalArgumentException(
          "there is no \""
              + property
              + "\" in an entry of this kind; there is "
              + String.join(", ", there));
    }
  }
}

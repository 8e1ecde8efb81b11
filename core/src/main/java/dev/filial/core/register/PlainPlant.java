package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Acquired plants as JSON, where nothing but texts is said of them and no text needs escaping: a
 * long table is nearly all such plants. It is a shorter way to what {@link EntryJson} writes and
 * reads, letter by letter, and leaves everything else to it.
 */
final class PlainPlant {

  private static final String BEGINNING = "{\"kind\":\"plant\",\"code\":\"";

  private final String json;
  private int at;

  private PlainPlant(String json) {
    this.json = json;
  }

  /** The plant as JSON, or null where that takes more than texts. */
  static @Nullable String write(PlantAcquired plant) {
    Determination is = plant.determination();
    if (is.cultivar() != null
        || !is.makeup().isEmpty()
        || is.generation() != null
        || is.ploidy() != null
        || !plant.names().isEmpty()
        || plant.neverHeld()) {
      return null;
    }
    Provenance from = plant.provenance();
    StringBuilder json = new StringBuilder(256).append(BEGINNING);
    json.append(plant.code().text()).append('"');
    boolean plain = true;
    if (is.taxon() != null) {
      json.append(",\"determination\":{");
      plain = text(json, "taxon", is.taxon());
      json.append('}');
    }
    if (from.donor() != null
        || from.donorCode() != null
        || from.fieldNumber() != null
        || from.locality() != null) {
      json.append(",\"provenance\":{");
      plain &= text(json, "donor", from.donor());
      plain &= text(json, "donorCode", from.donorCode());
      plain &= text(json, "fieldNumber", from.fieldNumber());
      plain &= text(json, "locality", from.locality());
      json.append('}');
    }
    if (plant.date() != null) {
      json.append(",\"date\":\"").append(plant.date()).append('"');
    }
    plain &= text(json, "place", plant.place());
    plain &= text(json, "remark", plant.remark());
    return plain ? json.append('}').toString() : null;
  }

  /** Adds a property, if there is one; whether it is plain. */
  private static boolean text(StringBuilder json, String property, @Nullable String text) {
    if (text == null) {
      return true;
    }
    if (json.charAt(json.length() - 1) != '{') {
      json.append(',');
    }
    json.append('"').append(property).append("\":\"").append(text).append('"');
    for (int i = 0; i < text.length(); i++) {
      if (!isPlain(text.charAt(i))) {
        return false;
      }
    }
    return !text.isEmpty(); // which JSON leaves out
  }

  /** Whether a character stands in JSON as it is; pairs of them are left alone. */
  private static boolean isPlain(char c) {
    return c >= ' ' && c != '"' && c != '\\' && !Character.isSurrogate(c);
  }

  /** The plant that the text speaks of, or null where it is not written so, be it one or not. */
  static @Nullable PlantAcquired read(String json) {
    if (!json.startsWith(BEGINNING)) {
      return null;
    }
    try {
      return new PlainPlant(json).read();
    } catch (IllegalArgumentException e) {
      return null; // the longer way says where in the text it is wrong
    }
  }

  private @Nullable PlantAcquired read() {
    at = BEGINNING.length();
    String code = rest();
    String taxon = null;
    if (goes(",\"determination\":{\"taxon\":\"")) {
      taxon = rest();
      if (taxon == null || !goes("}")) {
        return null;
      }
    }
    Provenance from = Provenance.UNKNOWN;
    if (goes(",\"provenance\":{")) {
      from =
          new Provenance(
              property("donor"),
              property("donorCode"),
              property("fieldNumber"),
              property("locality"));
      if (!goes("}")) {
        return null;
      }
    }
    String date = goes(",\"date\":\"") ? rest() : null;
    String place = property("place");
    String remark = property("remark");
    if (code == null || !goes("}") || at != json.length()) {
      return null;
    }
    return new PlantAcquired(
        Code.parse(code),
        taxon == null
            ? Determination.UNKNOWN
            : new Determination(taxon, null, Map.of(), null, null),
        from,
        date == null ? null : PartialDate.parse(date),
        List.of(),
        false,
        place,
        remark);
  }

  /** The text of a property, if it comes next. */
  private @Nullable String property(String name) {
    int before = at;
    boolean first = json.charAt(at - 1) == '{';
    if ((first || goes(",")) && goes("\"") && goes(name) && goes("\":\"")) {
      return rest();
    }
    at = before;
    return null;
  }

  private boolean goes(String text) {
    if (!json.startsWith(text, at)) {
      return false;
    }
    at += text.length();
    return true;
  }

  /** The text up to the next quote; null where it needs escaping, nothing more being read then. */
  private @Nullable String rest() {
    for (int end = at; end < json.length(); end++) {
      char c = json.charAt(end);
      if (c == '"') {
        String text = json.substring(at, end);
        at = end + 1;
        return text;
      }
      if (!isPlain(c)) {
        break;
      }
    }
    at = json.length();
    return null;
  }
}

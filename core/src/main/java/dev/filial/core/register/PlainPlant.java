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

  private PlainPlant() {}

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
      plain = PlainJson.add(json, "taxon", is.taxon());
      json.append('}');
    }
    if (from.donor() != null
        || from.donorCode() != null
        || from.fieldNumber() != null
        || from.locality() != null) {
      json.append(",\"provenance\":{");
      plain &= PlainJson.add(json, "donor", from.donor());
      plain &= PlainJson.add(json, "donorCode", from.donorCode());
      plain &= PlainJson.add(json, "fieldNumber", from.fieldNumber());
      plain &= PlainJson.add(json, "locality", from.locality());
      json.append('}');
    }
    if (plant.date() != null) {
      json.append(",\"date\":\"").append(plant.date()).append('"');
    }
    plain &= PlainJson.add(json, "place", plant.place());
    plain &= PlainJson.add(json, "remark", plant.remark());
    return plain ? json.append('}').toString() : null;
  }

  /** The plant that the text speaks of, or null where it is not written so, be it one or not. */
  static @Nullable PlantAcquired read(String json) {
    if (!json.startsWith(BEGINNING)) {
      return null;
    }
    try {
      return read(new PlainJson(json, BEGINNING));
    } catch (IllegalArgumentException e) {
      return null; // the longer way says where in the text it is wrong
    }
  }

  private static @Nullable PlantAcquired read(PlainJson text) {
    String code = text.rest();
    String taxon = null;
    if (text.goes(",\"determination\":{\"taxon\":\"")) {
      taxon = text.rest();
      if (taxon == null || !text.goes("}")) {
        return null;
      }
    }
    Provenance from = Provenance.UNKNOWN;
    if (text.goes(",\"provenance\":{")) {
      from =
          new Provenance(
              text.property("donor"),
              text.property("donorCode"),
              text.property("fieldNumber"),
              text.property("locality"));
      if (!text.goes("}")) {
        return null;
      }
    }
    String date = text.goes(",\"date\":\"") ? text.rest() : null;
    String place = text.property("place");
    String remark = text.property("remark");
    if (code == null || !text.goes("}") || !text.isAtEnd()) {
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
}

package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Crosses of one plant with another or with itself as JSON, where no shares are stated and no text
 * needs escaping. It is a shorter way to what {@link EntryJson} writes and reads, letter by letter,
 * and leaves everything else to it.
 */
final class PlainCross {

  private static final String BEGINNING = "{\"kind\":\"cross\",\"code\":\"";
  private static final String BY_A_PLANT = ",\"pollen\":{\"from\":\"plant\",\"plant\":\"";
  private static final String BY_ITSELF = ",\"pollen\":{\"from\":\"itself\"}";

  private PlainCross() {}

  /** The cross as JSON, or null where that takes more than texts. */
  static @Nullable String write(Pollinated cross) {
    if (!cross.protection().isEmpty()
        || !cross.selfs().isZero()
        || !cross.strays().isZero()
        || !cross.apomixis().isZero()
        || cross.seedSets() != null
        || cross.pollenSets() != null
        || cross.storedPollen()) {
      return null;
    }
    StringBuilder json = new StringBuilder(256).append(BEGINNING);
    json.append(cross.code().text()).append('"');
    PlainJson.add(json, "seedParent", cross.seedParent().text());
    if (cross.pollen() instanceof Pollen.OnePlant one) {
      json.append(BY_A_PLANT).append(one.plant().text()).append("\"}");
    } else if (cross.pollen() instanceof Pollen.Itself) {
      json.append(BY_ITSELF);
    } else {
      return null;
    }
    boolean plain =
        (cross.date() == null || PlainJson.add(json, "date", cross.date().toString()))
            && (cross.flowers() == null
                || PlainJson.add(json, "flowers", cross.flowers().toString()))
            && PlainJson.add(json, "place", cross.place())
            && PlainJson.add(json, "remark", cross.remark());
    return plain ? json.append('}').toString() : null;
  }

  /** The cross that the text speaks of, or null where it is not written so, be it one or not. */
  static @Nullable Pollinated read(String json) {
    if (!json.startsWith(BEGINNING)) {
      return null;
    }
    try {
      return read(new PlainJson(json, BEGINNING));
    } catch (IllegalArgumentException e) {
      return null; // the longer way says where in the text it is wrong
    }
  }

  private static @Nullable Pollinated read(PlainJson text) {
    String code = text.rest();
    String seedParent = text.property("seedParent");
    Pollen pollen;
    if (text.goes(BY_A_PLANT)) {
      String plant = text.rest();
      if (plant == null || !text.goes("}")) {
        return null;
      }
      pollen = new Pollen.OnePlant(Code.parse(plant));
    } else if (text.goes(BY_ITSELF)) {
      pollen = new Pollen.Itself();
    } else {
      return null;
    }
    String date = text.property("date");
    String flowers = text.property("flowers");
    String place = text.property("place");
    String remark = text.property("remark");
    if (code == null || seedParent == null || !text.goes("}") || !text.isAtEnd()) {
      return null;
    }
    return new Pollinated(
        Code.parse(code),
        Code.parse(seedParent),
        pollen,
        date == null ? null : PartialDate.parse(date),
        flowers == null ? null : Count.parse(flowers),
        List.of(),
        Fraction.ZERO,
        Fraction.ZERO,
        Fraction.ZERO,
        null,
        null,
        false,
        place,
        remark);
  }
}

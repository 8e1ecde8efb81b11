package dev.filial.core.register;

import dev.filial.core.name.Code;
import org.jspecify.annotations.Nullable;

/**
 * Seedlings that were given numbers as JSON, read with each of them that becomes a parent; a
 * shorter way to what {@link EntryJson} reads.
 */
final class PlainNumbered {

  private static final String BEGINNING = "{\"kind\":\"number\"";

  private PlainNumbered() {}

  /** What the text says, or null where it is not written so, be it that or not. */
  static @Nullable Numbered read(String json) {
    if (!json.startsWith(BEGINNING)) {
      return null;
    }
    PlainJson text = new PlainJson(json, BEGINNING);
    String from = text.property("from");
    int first = text.number("first");
    int last = text.number("last");
    String date = text.property("date");
    String pickedFor = text.property("pickedFor");
    String place = text.property("place");
    String remark = text.property("remark");
    if (from == null || first < 0 || last < 0 || !text.goes("}") || !text.isAtEnd()) {
      return null;
    }
    try {
      return new Numbered(
          Code.parse(from),
          first,
          last,
          date == null ? null : PartialDate.parse(date),
          pickedFor,
          place,
          remark);
    } catch (IllegalArgumentException e) {
      return null; // the longer way says what is wrong
    }
  }
}

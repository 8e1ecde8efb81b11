package dev.filial.core.register;

import org.jspecify.annotations.Nullable;

/**
 * The first entry as JSON, read by every command that writes; a shorter way to what {@link
 * EntryJson} reads.
 */
final class PlainOpening {

  private static final String BEGINNING = "{\"kind\":\"register\"";

  private PlainOpening() {}

  /** Whose register the text says it is, or null where it is not written so, be it that or not. */
  static @Nullable RegisterOpened read(String json) {
    if (!json.startsWith(BEGINNING)) {
      return null;
    }
    PlainJson text = new PlainJson(json, BEGINNING);
    String mark = text.property("mark");
    String grower = text.property("grower");
    String remark = text.property("remark");
    if (mark == null || grower == null || !text.goes("}") || !text.isAtEnd()) {
      return null;
    }
    try {
      return new RegisterOpened(mark, grower, remark);
    } catch (IllegalArgumentException e) {
      return null; // the longer way says what is wrong
    }
  }
}

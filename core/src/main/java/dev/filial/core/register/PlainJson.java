package dev.filial.core.register;

import org.jspecify.annotations.Nullable;

/**
 * JSON of texts that need no escaping and small numbers, read from left to right. The few kinds of
 * entry that a register is nearly all made of are read and written so: a long table takes half the
 * time, and a command that writes one of them does not have to set up the whole of {@link
 * EntryJson}.
 */
final class PlainJson {

  private final String json;
  private int at;

  /** Reads on behind a beginning that was seen. */
  PlainJson(String json, String beginning) {
    this.json = json;
    at = beginning.length();
  }

  /** Whether this comes next; then it is gone past. */
  boolean goes(String text) {
    if (!json.startsWith(text, at)) {
      return false;
    }
    at += text.length();
    return true;
  }

  /** Whether nothing comes any more. */
  boolean isAtEnd() {
    return at == json.length();
  }

  /** The text of a property, if it comes next. */
  @Nullable String property(String name) {
    int before = at;
    boolean first = json.charAt(at - 1) == '{';
    if ((first || goes(",")) && goes("\"") && goes(name) && goes("\":\"")) {
      return rest();
    }
    at = before;
    return null;
  }

  /** The whole number of a property, of at most nine digits, if it comes next; otherwise -1. */
  int number(String name) {
    int before = at;
    int number = -1;
    if (goes(",") && goes("\"") && goes(name) && goes("\":")) {
      int from = at;
      while (at < json.length() && json.charAt(at) >= '0' && json.charAt(at) <= '9') {
        at++;
      }
      boolean plain = at > from && at - from <= 9 && json.charAt(from) != '0';
      number = plain ? Integer.parseInt(json.substring(from, at)) : -1;
    }
    if (number < 0) {
      at = before;
    }
    return number;
  }

  /** The text up to the next quote; null where it needs escaping, nothing more being read then. */
  @Nullable String rest() {
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

  /** Adds a property, if there is one; whether it is plain. */
  static boolean add(StringBuilder json, String property, @Nullable String text) {
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
}

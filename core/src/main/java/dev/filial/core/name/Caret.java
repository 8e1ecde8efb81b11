package dev.filial.core.name;

/** Shows where in a text something is: the text, and below it a caret under the place. */
final class Caret {
  private static final int BEFORE = 40;
  private static final int AFTER = 30;

  private Caret() {}

  /**
   * Two lines, each indented by two spaces; a long text is shown around the column only.
   *
   * @param text the whole text
   * @param column counted in characters (code points) from 1; one past the end is allowed
   */
  static String under(String text, int column) {
    int at = text.offsetByCodePoints(0, column - 1);
    int from = back(text, at);
    int to = forth(text, at);
    String start = from > 0 ? "…" : "";
    String before = start + printable(text.substring(from, at));
    return "\n  "
        + before
        + printable(text.substring(at, to))
        + (to < text.length() ? "…" : "")
        + "\n  "
        + " ".repeat(Columns.width(before))
        + "^";
  }

  private static int back(String text, int at) {
    int from = at;
    for (int i = 0; i < BEFORE && from > 0; i++) {
      from = text.offsetByCodePoints(from, -1);
    }
    return from;
  }

  private static int forth(String text, int at) {
    int to = at;
    for (int i = 0; i < AFTER && to < text.length(); i++) {
      to = text.offsetByCodePoints(to, 1);
    }
    return to;
  }

  private static String printable(String text) {
    return text.replaceAll("[\\s\\p{Cntrl}]", " ");
  }
}

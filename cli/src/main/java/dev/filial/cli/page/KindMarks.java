package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.heredity.Odds;
import java.util.List;

/**
 * How the kinds of seedlings of a family are told apart: each has a small letter, and a colour of
 * {@link Palette}. From the eighth kind on the colours come again, and the letter alone tells.
 *
 * @param kinds what the seedlings of each kind show, in the order in which they get letters
 */
record KindMarks(List<List<String>> kinds) {

  private static final int LETTERS = 26;

  /** Of the classes that a cross is expected to throw. */
  static KindMarks of(List<Odds.Share> classes) {
    return new KindMarks(classes.stream().map(Odds.Share::states).toList());
  }

  /** The letter of a kind: a to z, then aa and so on. */
  static String letter(int kind) {
    String last = String.valueOf((char) ('a' + kind % LETTERS));
    return kind < LETTERS ? last : (char) ('a' + (kind / LETTERS - 1) % LETTERS) + last;
  }

  /** Its colour. */
  static String colour(int kind) {
    return Palette.COLOURS.get(kind % Palette.COLOURS.size());
  }

  /** What it shows, in words. */
  String words(int kind) {
    return String.join(", ", kinds.get(kind));
  }

  /** A small field of the colour with the letter and the words behind it. */
  void write(Markup html, int kind) {
    swatch(html, kind);
    html.text(" ")
        .element("span", letter(kind), "class", "code")
        .text(" ")
        .element("bdi", words(kind));
  }

  /** The field alone, which says nothing to whoever listens: the letter stands beside it. */
  static void swatch(Markup html, int kind) {
    html.open(
            "svg",
            "xmlns",
            "http://www.w3.org/2000/svg",
            "class",
            "swatch",
            "aria-hidden",
            "true",
            "width",
            "12",
            "height",
            "12",
            "viewBox",
            "0 0 12 12")
        .empty(
            "rect",
            "class",
            "edge",
            "x",
            "1",
            "y",
            "1",
            "width",
            "10",
            "height",
            "10",
            "fill",
            colour(kind))
        .close();
  }
}

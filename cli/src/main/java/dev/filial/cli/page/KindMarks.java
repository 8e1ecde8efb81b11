package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.heredity.Odds;
import java.util.List;

/**
 * How the kinds of seedlings of a family are told apart: each has a small letter, and a colour of
 * {@link Palette}. From the eighth kind on the colours come again, and the letter alone tells.
 *
 * <p>Letters and colours are others than those that the first species of a page have: a kind that
 * looks like one species need not have come from it.
 *
 * @param kinds what the seedlings of each kind show, in the order in which they get letters
 */
record KindMarks(List<List<String>> kinds) {

  private static final int LETTERS = 26;

  /** The place of p in the alphabet. */
  private static final int FIRST = 15;

  /** The colours from the end, those that lie beside each other being far apart. */
  private static final List<Integer> ORDER = List.of(6, 4, 5, 3, 2, 1, 0);

  /** Of the classes that a cross is expected to throw. */
  static KindMarks of(List<Odds.Share> classes) {
    return new KindMarks(classes.stream().map(Odds.Share::states).toList());
  }

  /** The letter of a kind: p to z, a to o, then pp and so on. */
  static String letter(int kind) {
    String letter = String.valueOf((char) ('a' + (kind + FIRST) % LETTERS));
    return letter.repeat(1 + kind / LETTERS);
  }

  /** Its colour. */
  static String colour(int kind) {
    return Palette.COLOURS.get(ORDER.get(kind % ORDER.size()));
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

package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import java.util.List;

/**
 * How taxa are told apart: each has a letter, and a fill of a colour that people with any of the
 * common kinds of colour blindness can tell from the others, with stripes where the colours begin
 * again.
 *
 * <p>The colours are those of Okabe and Ito, "Color universal design", without the black.
 *
 * @param taxa the taxa, in the order in which they get letters
 */
record Palette(List<String> taxa) {

  /** What nobody knows. */
  static final String UNKNOWN = "unknown";

  static final List<String> COLOURS =
      List.of("#E69F00", "#56B4E9", "#009E73", "#F0E442", "#0072B2", "#D55E00", "#CC79A7");

  /** Under the stripes that stand for what nobody knows. */
  static final String PALE = "#FFFFFF";

  /** Of stripes and of the edge of each field, dark enough beside every colour. */
  static final String EDGE = "#1A1A1A";

  private static final int LETTERS = 26;
  private static final int STRIPES = 4;

  /** The letter of a taxon: A to Z, then AA and so on; a question mark for the unknown. */
  String letter(String taxon) {
    int at = taxa.indexOf(taxon);
    if (at < 0) {
      return "?";
    }
    String last = String.valueOf((char) ('A' + at % LETTERS));
    return at < LETTERS ? last : (char) ('A' + (at / LETTERS - 1) % LETTERS) + last;
  }

  /** The fill of a taxon, as an attribute has it. */
  String fill(String taxon) {
    int at = taxa.indexOf(taxon);
    if (at < 0) {
      return "url(#fp-unknown)";
    }
    return at < COLOURS.size() ? COLOURS.get(at) : "url(#fp-fill-" + at + ")";
  }

  /** The patterns that fills name. */
  void define(Markup svg) {
    pattern(svg, "fp-unknown", PALE, 1);
    for (int at = COLOURS.size(); at < taxa.size(); at++) {
      pattern(
          svg,
          "fp-fill-" + at,
          COLOURS.get(at % COLOURS.size()),
          (at / COLOURS.size()) % STRIPES + 1);
    }
  }

  /** Slanting, upright, level stripes, and slanting ones the other way. */
  private static void pattern(Markup svg, String id, String colour, int stripes) {
    String slant =
        switch (stripes) {
          case 1 -> "rotate(45)";
          case 2 -> "rotate(0)";
          case 3 -> "rotate(90)";
          default -> "rotate(-45)";
        };
    svg.open(
            "pattern",
            "id",
            id,
            "width",
            "5",
            "height",
            "5",
            "patternUnits",
            "userSpaceOnUse",
            "patternTransform",
            slant)
        .empty("rect", "width", "5", "height", "5", "fill", colour)
        .empty("rect", "width", "1.5", "height", "5", "fill", EDGE)
        .close()
        .line();
  }
}

package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.name.ItalicNames;
import java.util.ArrayList;
import java.util.List;

/** What the fills and strokes of a drawing mean, in as many lines as they take. */
final class DrawingLegend {

  private static final double LINE = 22;
  private static final double SWATCH = 30;
  private static final double GAP = 18;

  private record Item(String text, String stroke, String taxon, double x, int row) {}

  private final List<Item> items = new ArrayList<>();
  private final Palette palette;
  private final double width;
  private double x;
  private int row;

  DrawingLegend(PlantsBehind behind, Palette palette, double width) {
    this.palette = palette;
    this.width = width;
    for (String taxon : behind.taxa()) {
      add(palette.letter(taxon) + "  " + taxon, "", taxon);
    }
    if (behind.plants().stream()
        .flatMap(plant -> plant.parts().stream())
        .anyMatch(part -> part.taxon().equals(Palette.UNKNOWN))) {
      add("?  unknown", "", Palette.UNKNOWN);
    }
    if (!behind.parents().isEmpty()) {
      x = 0;
      row++;
    }
    behind.parents().stream()
        .map(LineStroke::of)
        .distinct()
        .sorted()
        .forEach(stroke -> add(stroke.meaning(), stroke.look(), ""));
  }

  private void add(String text, String stroke, String taxon) {
    String fitted =
        PedigreeLayout.LETTERS.regular().fit(text, PedigreeDrawing.WORD_SIZE, width - SWATCH - 6);
    double needed =
        SWATCH + 6 + PedigreeLayout.LETTERS.regular().width(fitted, PedigreeDrawing.WORD_SIZE);
    if (x > 0 && x + needed > width) {
      x = 0;
      row++;
    }
    items.add(new Item(fitted, stroke, taxon, x, row));
    x += needed + GAP;
  }

  /** How high it is, in pixels. */
  double height() {
    return (row + 1) * LINE;
  }

  /**
   * Writes it.
   *
   * @param names the scientific names, for italics
   * @param edge its left edge
   * @param top its upper edge
   */
  void write(Markup svg, ItalicNames names, double edge, double top) {
    for (Item item : items) {
      double left = edge + item.x();
      double middle = top + item.row() * LINE + LINE / 2;
      if (item.stroke().isEmpty()) {
        svg.empty(
            "rect",
            "class",
            "fp-part",
            "x",
            PedigreeDrawing.number(left),
            "y",
            PedigreeDrawing.number(middle - 6),
            "width",
            PedigreeDrawing.number(SWATCH),
            "height",
            "12",
            "fill",
            palette.fill(item.taxon()));
      } else {
        String path =
            "M"
                + PedigreeDrawing.number(left)
                + " "
                + PedigreeDrawing.number(middle)
                + "h"
                + PedigreeDrawing.number(SWATCH);
        svg.empty("path", "class", item.stroke(), "d", path);
        if (item.stroke().equals(LineStroke.SELF.look())) {
          svg.empty("path", "class", "fp-self-in", "d", path);
        }
      }
      svg.open(
          "text",
          "class",
          "fp-word",
          "x",
          PedigreeDrawing.number(left + SWATCH + 6),
          "y",
          PedigreeDrawing.number(middle + 4));
      PedigreeDrawing.words(svg, names, item.text());
      svg.close().line();
    }
  }
}

package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;

/** The part of a page with the pedigree drawn. */
final class PedigreeSection {

  private PedigreeSection() {}

  /** Writes it. */
  static void write(PageWriter page, PlantsBehind behind) {
    Markup html = page.html();
    page.section("pedigree", "Pedigree");
    html.open("figure");
    page.wide("pedigree", "drawing");
    html.line();
    PedigreeDrawing.into(behind, page.links(), html);
    html.close()
        .open("figcaption")
        .text("Parents stand to the left of their offspring, each plant once. ")
        .element("span", "What is wider than the page can be moved sideways.", "class", "screen")
        .close()
        .close()
        .line()
        .close()
        .line();
  }
}

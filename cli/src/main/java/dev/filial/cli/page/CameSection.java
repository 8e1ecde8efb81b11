package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import java.util.List;

/** The part of a page that tells what came of a thing. */
final class CameSection {

  private CameSection() {}

  /** Writes it. */
  static void write(PageWriter page, List<PlantPage.Came> things) {
    Markup html = page.html();
    page.section("came", "What came of it");
    if (things.isEmpty()) {
      html.element("p", "Nothing so far.");
    } else {
      html.open("ul", "class", "came");
      for (PlantPage.Came one : things) {
        html.open("li");
        page.code(one.code());
        html.text(" ");
        page.words(one.what());
        html.close().line();
      }
      html.close();
    }
    html.line().close().line();
  }
}

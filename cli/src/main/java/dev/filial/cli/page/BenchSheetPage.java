package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.name.ItalicNames;
import java.util.List;

/**
 * A bench sheet as a page of HTML, for a browser to print: letters of one width, 12 to the inch, 6
 * lines to the inch, each sheet on a page of its own. It fits A4 and Letter.
 */
public final class BenchSheetPage {

  private static final String FORM_FEED = "\f";

  private BenchSheetPage() {}

  /**
   * The page as the text of a file.
   *
   * @param text the sheets, a form feed between them
   */
  public static String of(String text) {
    PageWriter page = new PageWriter("Bench sheet", PageLinks.NONE, ItalicNames.NONE);
    Markup html = page.html();
    html.open("main").line().element("h1", "Bench sheet", "class", "screen").line();
    List<String> sheets = List.of(text.split(FORM_FEED, -1));
    for (int i = 0; i < sheets.size(); i++) {
      String id = "sheet-" + (i + 1);
      html.open("section", "class", "paper", "aria-labelledby", id)
          .element("h2", "Sheet " + (i + 1) + " of " + sheets.size(), "id", id, "class", "screen");
      page.wide(id);
      html.element("pre", sheets.get(i), "class", "sheet").close().close().line();
    }
    html.close().line();
    return page.end();
  }
}

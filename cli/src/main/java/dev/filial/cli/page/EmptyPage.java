package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.name.ItalicNames;

/** A page of something that no page can be made of, so that no link leads nowhere. */
public final class EmptyPage {

  private EmptyPage() {}

  /**
   * The page as the text of a file.
   *
   * @param code whose page it would be
   * @param why why there is none
   * @param links where other pages lie
   */
  public static String of(String code, String why, PageLinks links) {
    PageWriter page = new PageWriter(code, links, ItalicNames.NONE);
    Markup html = page.html();
    html.open("header")
        .open("h1")
        .element("span", code, "class", "code")
        .close()
        .close()
        .line()
        .open("main")
        .open("p");
    page.text("There is nothing more on this page: " + why + ".");
    html.close().close().line();
    return page.end();
  }
}

package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.name.CodesInText;
import dev.filial.core.name.ItalicNames;
import java.util.List;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/**
 * What all pages have in common: their head with the style sheet, sections that a heading names,
 * tables that move sideways by themselves where the page is narrow, and the foot.
 */
final class PageWriter {

  /**
   * Who goes through a page with the Tab key stops only at what can be moved sideways, and is told
   * what that is; where no scripts run, at all that might be. Written without signs that a page
   * would escape.
   */
  private static final String STOPS =
      """

      (function () {
        var wide = Array.from(document.querySelectorAll('.wide'));
        var names = wide.map(function (one) { return one.getAttribute('aria-labelledby'); });
        function stops() {
          wide.forEach(function (one, at) {
            if (Math.max(one.scrollWidth, one.clientWidth) === one.clientWidth) {
              ['tabindex', 'role', 'aria-labelledby'].forEach(function (name) {
                one.removeAttribute(name);
              });
            } else {
              one.setAttribute('tabindex', '0');
              one.setAttribute('role', 'group');
              one.setAttribute('aria-labelledby', names[at]);
            }
          });
        }
        stops();
        var sizes = new ResizeObserver(stops);
        wide.forEach(function (one) {
          sizes.observe(one);
          sizes.observe(one.firstElementChild);
        });
      })();
      """;

  private final Markup html = new Markup();
  private final PageLinks links;
  private final ItalicNames names;
  private boolean anyWide;

  /**
   * Begins a page, up to the inside of its body.
   *
   * @param title what the browser calls it
   * @param links where other pages lie
   * @param names scientific names, which are set in italics wherever they stand
   */
  PageWriter(String title, PageLinks links, ItalicNames names) {
    this.links = links;
    this.names = names;
    html.open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml")
        .line()
        .open("head")
        .line()
        .empty("meta", "charset", "utf-8")
        .empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
        .empty("meta", "name", "color-scheme", "content", "light dark")
        .line()
        .element("title", title)
        .line()
        .element("style", PageStyle.sheet())
        .close()
        .line()
        .open("body")
        .line();
  }

  /** Where the page is written. */
  Markup html() {
    return html;
  }

  /** Where other pages lie. */
  PageLinks links() {
    return links;
  }

  /** Begins a section with its heading. */
  void section(String id, String heading) {
    html.open("section", "aria-labelledby", id).element("h2", heading, "id", id).line();
  }

  /** Ends a section. */
  void endSection() {
    html.close().line();
  }

  /** Begins a part that moves sideways by itself where it is wider than the page. */
  void wide(String labelledBy, String... classes) {
    html.open(
        "div",
        "class",
        String.join(" ", "wide", String.join(" ", classes)).strip(),
        "role",
        "group",
        "aria-labelledby",
        labelledBy,
        "tabindex",
        "0");
    anyWide = true;
  }

  /** Begins a table, up to the inside of its body. */
  void table(String labelledBy, List<Column> columns) {
    wide(labelledBy);
    html.open("table", "aria-labelledby", labelledBy);
    head(columns);
  }

  /** Begins a table of a style of its own. */
  void table(String labelledBy, List<Column> columns, String style) {
    wide(labelledBy);
    html.open("table", "class", style, "aria-labelledby", labelledBy);
    head(columns);
  }

  private void head(List<Column> columns) {
    html.open("thead").open("tr");
    for (Column column : columns) {
      if (column.numbers()) {
        html.element("th", column.heading(), "scope", "col", "class", "number");
      } else {
        html.element("th", column.heading(), "scope", "col");
      }
    }
    html.close().close().line().open("tbody").line();
  }

  /** Ends a table. */
  void endTable() {
    html.close().close().close().line();
  }

  /**
   * Begins a bar, one pixel wider on either side so that its edges are not cut.
   *
   * @param told what it shows, in words
   */
  void bar(String told, double width, double height) {
    String wide = PedigreeDrawing.number(width + 2);
    String high = PedigreeDrawing.number(height);
    html.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "bar",
        "role",
        "img",
        "aria-label",
        told,
        "width",
        wide,
        "height",
        high,
        "viewBox",
        "-1 0 " + wide + " " + high,
        // On a telephone it is made narrower and no lower.
        "preserveAspectRatio",
        "none");
  }

  /** One line of a list of terms, if there is anything to say. */
  void fact(String term, @Nullable Object value) {
    if (value != null && !value.toString().isEmpty()) {
      html.element("dt", term).open("dd");
      words(value.toString());
      html.close().line();
    }
  }

  /** The doubts and the like that a part of the page leans on. */
  void notes(List<String> notes) {
    if (notes.isEmpty()) {
      return;
    }
    html.element("h3", "What this leans on").open("ul");
    notes.forEach(this::item);
    html.close().line();
  }

  /** A sentence of a list. */
  void item(String sentence) {
    html.open("li");
    text(sentence);
    html.close().line();
  }

  /** A cell of a table with words; an empty one for none. */
  void cell(@Nullable String text) {
    html.open("td");
    words(text == null ? "" : text);
    html.close();
  }

  /** A cell of a table with a number, or with what is read as one; an empty one for none. */
  void number(@Nullable Object number) {
    html.element("td", number == null ? "" : number.toString(), "class", "number");
  }

  /** Words that somebody wrote, which may run from right to left. */
  void words(String words) {
    html.open("bdi");
    text(words);
    html.close();
  }

  /**
   * Text in which no code is parted at the end of a line, half of one being no code, and scientific
   * names are italic.
   */
  void text(String text) {
    Matcher code = CodesInText.in(text);
    int from = 0;
    while (code.find()) {
      withItalics(text.substring(from, code.start()));
      html.element("span", code.group(), "class", "whole");
      from = code.end();
    }
    withItalics(text.substring(from));
  }

  private void withItalics(String text) {
    for (ItalicNames.Run run : names.runs(text)) {
      if (run.italic()) {
        html.element("i", run.text());
      } else {
        html.text(run.text());
      }
    }
  }

  /** The scientific names that are set in italics. */
  ItalicNames names() {
    return names;
  }

  /** A code, which leads to the page of its thing where that lies beside this one. */
  void code(String code) {
    String to = links.to(code);
    if (to == null) {
      html.element("span", code, "class", "code");
    } else {
      html.element("a", code, "class", "code", "href", to);
    }
  }

  /** Whether there is a page of that thing to lead to. */
  boolean leadsTo(String code) {
    return links.to(code) != null;
  }

  /**
   * Ends the page.
   *
   * @param grower whose register it is of
   * @param entries after how many entries it was written
   * @return the text of the file
   */
  String end(String grower, long entries) {
    return end("From the register of " + grower + ", as it stood after entry " + entries + ".");
  }

  /** Ends a page that tells of no entry. */
  String end() {
    return end("");
  }

  private String end(String foot) {
    String index = links.index();
    if (index != null || !foot.isEmpty()) {
      html.open("footer").text(foot);
      if (index != null) {
        html.text(" ").element("a", "All there is", "class", "screen", "href", index);
      }
      html.close().line();
    }
    if (anyWide) {
      html.element("script", STOPS).line();
    }
    html.close().line().close();
    return "<!DOCTYPE html>\n" + html.written() + "\n";
  }
}

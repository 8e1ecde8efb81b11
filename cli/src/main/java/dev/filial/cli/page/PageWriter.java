package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.name.CodesInText;
import java.util.List;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/**
 * What all pages have in common: their head with the style sheet, sections that a heading names,
 * tables that move sideways by themselves where the page is narrow, and the foot.
 */
final class PageWriter {

  private final Markup html = new Markup();
  private final PageLinks links;

  /** Begins a page, up to the inside of its body. */
  PageWriter(String title, PageLinks links) {
    this.links = links;
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
  }

  /** Begins a table, up to the inside of its body. */
  void table(String labelledBy, List<String> columns) {
    wide(labelledBy);
    html.open("table");
    head(columns);
  }

  /** Begins a table of a style of its own. */
  void table(String labelledBy, List<String> columns, String style) {
    wide(labelledBy);
    html.open("table", "class", style);
    head(columns);
  }

  private void head(List<String> columns) {
    html.open("thead").open("tr");
    columns.forEach(column -> html.element("th", column, "scope", "col"));
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
        "-1 0 " + wide + " " + high);
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

  /** Words that somebody wrote, which may run from right to left. */
  void words(String words) {
    html.open("bdi");
    text(words);
    html.close();
  }

  /** Text in which no code is parted at the end of a line: half of one is no code. */
  void text(String text) {
    Matcher code = CodesInText.in(text);
    int from = 0;
    while (code.find()) {
      html.text(text.substring(from, code.start())).element("span", code.group(), "class", "whole");
      from = code.end();
    }
    html.text(text.substring(from));
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
    html.close().line().close();
    return "<!DOCTYPE html>\n" + html.written() + "\n";
  }
}

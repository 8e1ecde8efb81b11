package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.ListQuestion.Line;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a register holds on one page of HTML, to search and to sort by any column. Where scripts are
 * not run it is a table to read.
 */
public final class IndexPage {

  /** Keeps what it finds in the document itself; written without signs that a page would escape. */
  private static final String SCRIPT =
      """

      (function () {
        var table = document.querySelector('table');
        var heads = Array.from(table.tHead.rows[0].cells);
        var body = table.tBodies[0];
        var rows = Array.from(body.rows);
        var search = document.getElementById('search');
        function text(row) {
          return Array.from(row.cells, function (cell) { return cell.textContent; })
            .join(' ').toLocaleLowerCase();
        }
        function find() {
          var words = search.value.toLocaleLowerCase().split(/\\s+/);
          var found = 0;
          rows.forEach(function (row) {
            var all = text(row);
            row.hidden = !words.every(function (word) { return all.includes(word); });
            if (!row.hidden) { found++; }
          });
          document.getElementById('found').textContent = found + ' of ' + rows.length;
        }
        heads.forEach(function (head, at) {
          head.querySelector('button').addEventListener('click', function () {
            var down = head.getAttribute('aria-sort') === 'ascending';
            heads.forEach(function (other) { other.removeAttribute('aria-sort'); });
            head.setAttribute('aria-sort', down ? 'descending' : 'ascending');
            rows.slice().sort(function (one, other) {
              var order = one.cells[at].textContent.localeCompare(
                other.cells[at].textContent, undefined, { numeric: true });
              return down ? -order : order;
            }).forEach(function (row) { body.appendChild(row); });
          });
        });
        search.addEventListener('input', find);
        document.querySelector('.finder').hidden = false;
        find();
      })();
      """;

  private IndexPage() {}

  /**
   * The page as the text of a file.
   *
   * @param lines what the register holds
   * @param grower whose register it is
   * @param entries how many entries it had
   */
  public static String of(List<Line> lines, String grower, long entries) {
    String title = "The register of " + grower;
    PageWriter page = new PageWriter(title, PageLinks.NONE);
    Markup html = page.html();
    html.open("header")
        .element("h1", title)
        .close()
        .line()
        .open("main")
        .line()
        .open("div", "class", "finder", "role", "search", "hidden", "hidden")
        .element("label", "Show only what holds all of these words", "for", "search")
        .empty("input", "id", "search", "type", "search", "autocomplete", "off")
        .element("p", "", "id", "found", "class", "said", "role", "status")
        .close()
        .line()
        .open(
            "div", "class", "wide", "role", "region", "aria-label", "All there is", "tabindex", "0")
        .open("table")
        .open("thead")
        .open("tr");
    for (String head :
        List.of("code", "name", "kind", "what it is", "field number", "since", "place", "state")) {
      html.open("th", "scope", "col").element("button", head, "type", "button").close();
    }
    html.close().close().line().open("tbody").line();
    lines.forEach(line -> row(html, line));
    html.close().close().close().line().close().line();
    html.element("script", SCRIPT).line();
    return page.end(grower, entries);
  }

  private static void row(Markup html, Line line) {
    html.open("tr").element("th", line.code().text(), "scope", "row", "class", "code");
    cell(html, String.join(", ", line.names()));
    cell(html, line.kind());
    cell(html, line.what());
    cell(html, line.fieldNumber());
    html.element("td", line.since() == null ? "" : line.since().toString(), "class", "day");
    cell(html, line.place());
    cell(html, line.fate());
    html.close().line();
  }

  private static void cell(Markup html, @Nullable String text) {
    html.open("td").element("bdi", text == null ? "" : text).close();
  }
}

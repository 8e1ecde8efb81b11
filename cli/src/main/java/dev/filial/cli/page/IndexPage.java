package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.ListQuestion.Line;
import dev.filial.core.answer.SeasonsQuestion.Seasons;
import dev.filial.core.name.Code;
import dev.filial.core.name.ItalicNames;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What a register holds on one page of HTML: how many of each kind are in which state, and a list
 * to narrow by words, by kind and by state, and to sort by any column.
 *
 * <p>All of it stands in the page as a table, to be read where scripts are not run, but only the
 * first few hundred lines of what is asked for are laid out: a browser takes seconds over a table
 * of ten thousand.
 */
public final class IndexPage {

  /** So many lines are shown at first, and so many more at each asking. */
  static final int SHOWN = 200;

  /** As long as "packet of seed". */
  private static final int SHORT = 14;

  private static final String NUMBERS = "how many";

  private static final List<String> COLUMNS =
      List.of(
          "code", "name", "kind", "what it is", NUMBERS, "field number", "since", "place", "state");

  /** Where no script takes the rest away and brings it back. */
  private static final String WITHOUT_SCRIPTS = "tbody.rest{display:table-row-group}";

  /**
   * Keeps what it finds in the document itself; written without signs that a page would escape.
   *
   * <p>Rows wait in a body that is not laid out. Their words are gathered a few hundred at a time,
   * so that typing is never kept waiting.
   */
  private static final String SCRIPT =
      """

      (function () {
        var SLICE = 500;
        var table = document.querySelector('table.list');
        var heads = Array.from(table.tHead.rows[0].cells);
        var shown = table.tBodies[0];
        var rest = table.tBodies[1];
        var more = document.getElementById('more');
        var status = document.getElementById('found');
        var search = document.getElementById('search');
        var choices = ['kind', 'state'].map(function (name) {
          return document.getElementById(name);
        });
        var first = Number(table.dataset.first);
        var limit = first;
        var order = Array.from(shown.rows).concat(Array.from(rest.rows));
        var texts = new Map();
        var numbers = new Intl.NumberFormat('en');

        function cell(row, at) { return row.cells[at].textContent; }
        function text(row) {
          var known = texts.get(row);
          if (known === undefined) {
            known = Array.from(row.cells, function (one) { return one.textContent; })
              .concat(row.dataset.parents || '').join(' ').toLocaleLowerCase();
            texts.set(row, known);
          }
          return known;
        }
        function lay(rows) {
          var keep = new Set(rows);
          Array.from(shown.rows).forEach(function (row) {
            if (!keep.has(row)) { rest.appendChild(row); }
          });
          rows.forEach(function (row) { shown.appendChild(row); });
        }
        // What is kept was picked out of what is alive, and lives.
        function isIn(state, wanted) {
          return state === wanted || (wanted === 'alive' ? state === 'kept' : false);
        }
        function found() {
          var words = search.value.toLocaleLowerCase().split(/\\s+/);
          var wanted = choices.map(function (choice) { return choice.value; });
          return order.filter(function (row) {
            return (wanted[0] === '' || cell(row, 2) === wanted[0])
              ? (wanted[1] === '' || isIn(cell(row, 8), wanted[1]))
                ? words.every(function (word) { return text(row).includes(word); })
                : false
              : false;
          });
        }
        function show() {
          var all = found();
          var rows = all.slice(0, limit);
          lay(rows);
          var left = all.length - rows.length;
          status.textContent = numbers.format(all.length) + ' of ' + numbers.format(order.length)
            + (left === 0 ? '' : ', of which the first ' + numbers.format(rows.length)
              + ' are shown');
          more.hidden = left === 0;
          more.textContent = 'Show ' + numbers.format(Math.min(left, first)) + ' more';
        }
        function ask() { limit = first; show(); }

        heads.forEach(function (head, at) {
          head.querySelector('button').addEventListener('click', function () {
            var down = head.getAttribute('aria-sort') === 'ascending';
            heads.forEach(function (other) { other.removeAttribute('aria-sort'); });
            head.setAttribute('aria-sort', down ? 'descending' : 'ascending');
            var collator = new Intl.Collator();
            // Numbers filled up to one length, so that 9 comes before 10.
            var keyed = order.map(function (row) {
              return [cell(row, at).toLocaleLowerCase().replace(/\\d+/g, function (digits) {
                return digits.padStart(9, '0');
              }), row];
            });
            keyed.sort(function (one, other) {
              var way = collator.compare(one[0], other[0]);
              return down ? -way : way;
            });
            order = keyed.map(function (one) { return one[1]; });
            ask();
          });
        });
        search.addEventListener('input', ask);
        choices.forEach(function (choice) { choice.addEventListener('change', ask); });
        more.addEventListener('click', function () { limit += first; show(); });
        // On paper there is nothing to press: all that was found is printed.
        window.addEventListener('beforeprint', function () { lay(found()); });
        window.addEventListener('afterprint', show);
        document.querySelector('.finder').hidden = false;
        show();
        (function gather(from) {
          order.slice(from, from + SLICE).forEach(text);
          if (order[from + SLICE]) {
            window.setTimeout(gather, 0, from + SLICE);
          }
        })(0);
      })();
      """;

  /**
   * What the page tells.
   *
   * @param lines what it lists
   * @param parents by its code, what the parents of a line are called: it is found by that too
   * @param all everything there is or was, for the number of each kind in each state
   * @param seasons what happened year by year
   * @param grower whose register it is
   * @param entries how many entries it had
   * @param links where other pages lie
   */
  public record Content(
      List<Line> lines,
      Map<Code, List<String>> parents,
      List<Line> all,
      Seasons seasons,
      String grower,
      long entries,
      PageLinks links) {}

  private final Content content;
  private final PageWriter page;
  private final Markup html;

  private IndexPage(Content content) {
    this.content = content;
    this.page = new PageWriter(title(content), content.links(), names(content));
    this.html = page.html();
  }

  /** The page as the text of a file. */
  public static String of(Content content) {
    return new IndexPage(content).write();
  }

  /** What things are called by their kind; crosses are called by their parents' codes. */
  private static ItalicNames names(Content content) {
    return ItalicNames.of(content.lines().stream().map(Line::what).distinct().toList());
  }

  private static String title(Content content) {
    return "The register of " + content.grower();
  }

  private String write() {
    html.open("header").element("h1", title(content)).close().line();
    html.open("main").line();
    if (!content.all().isEmpty()) {
      states();
    }
    list();
    if (!content.seasons().years().isEmpty()) {
      SeasonSection.write(page, content.seasons());
    }
    html.close().line();
    html.element("script", SCRIPT).line();
    return page.end(content.grower(), content.entries());
  }

  private static List<String> distinct(List<Line> lines, Function<Line, String> what) {
    Set<String> found = new LinkedHashSet<>();
    lines.forEach(line -> found.add(what.apply(line)));
    return List.copyOf(found);
  }

  // --- how many there are ---

  private void states() {
    List<String> states = new ArrayList<>(distinct(content.all(), Line::fate));
    // What a cross or a packet is in: nothing becomes of them.
    states.remove("");
    states.sort(Comparator.comparingLong(state -> -count(line -> line.fate().equals(state))));
    page.section("states", "How many there are");
    List<Column> columns = new ArrayList<>(List.of(Column.words("kind")));
    states.forEach(state -> columns.add(Column.numbers(state)));
    columns.add(Column.numbers("all"));
    page.table("states", columns);
    for (String kind : distinct(content.all(), Line::kind)) {
      html.open("tr").element("th", kind, "scope", "row");
      for (String state : states) {
        number(count(line -> line.kind().equals(kind) && line.fate().equals(state)));
      }
      number(count(line -> line.kind().equals(kind)));
      html.close().line();
    }
    page.endTable();
    page.endSection();
  }

  private long count(Predicate<Line> which) {
    return content.all().stream().filter(which).count();
  }

  private void number(long count) {
    page.number(count == 0 ? null : count);
  }

  // --- the list ---

  private void list() {
    page.section("list", "What there is");
    int gone = content.all().size() - content.lines().size();
    if (gone > 0) {
      html.element(
              "p",
              "What has died, left or was used up, and what was never here, is not in the list: "
                  + gone
                  + " of "
                  + content.all().size()
                  + ".",
              "class",
              "said")
          .line();
    }
    finder();
    page.wide("list");
    html.open(
            "table",
            "class",
            "list",
            "aria-labelledby",
            "list",
            "data-first",
            Integer.toString(SHOWN))
        .open("thead")
        .open("tr");
    for (String head : COLUMNS) {
      html.open("th", "scope", "col", "class", head.equals(NUMBERS) ? "number" : "head")
          .element("button", head, "type", "button")
          .close();
    }
    html.close().close().line();
    int first = Math.min(SHOWN, content.lines().size());
    html.open("tbody").line();
    content.lines().subList(0, first).forEach(this::row);
    html.close().open("tbody", "class", "rest").line();
    content.lines().subList(first, content.lines().size()).forEach(this::row);
    html.close().close().close().line();
    html.open("noscript").element("style", WITHOUT_SCRIPTS).close().line();
    html.element("button", "", "id", "more", "type", "button", "hidden", "hidden").line();
    page.endSection();
  }

  private void finder() {
    html.open("div", "class", "finder", "role", "search", "hidden", "hidden").open("div");
    html.element("label", "Only what holds all of these words", "for", "search")
        .empty("input", "id", "search", "type", "search", "autocomplete", "off")
        .close()
        .line();
    choice("kind", "Kind", distinct(content.lines(), Line::kind));
    choice("state", "State", distinct(content.lines(), Line::fate));
    html.element("p", "", "id", "found", "class", "said", "role", "status").close().line();
  }

  private void choice(String id, String label, List<String> of) {
    html.open("div")
        .element("label", label, "for", id)
        .open("select", "id", id, "autocomplete", "off")
        .element("option", "any", "value", "");
    of.stream()
        .filter(one -> !one.isEmpty())
        .forEach(one -> html.element("option", one, "value", one));
    html.close().close().line();
  }

  /** Few words stay on one line, so that a row of few words is one line high. */
  private void cell(@Nullable String text) {
    if (text == null || text.length() > SHORT) {
      page.cell(text);
    } else {
      html.open("td", "class", "whole");
      page.words(text);
      html.close();
    }
  }

  private void row(Line line) {
    List<String> parents = content.parents().getOrDefault(line.code(), List.of());
    if (parents.isEmpty()) {
      html.open("tr");
    } else {
      html.open("tr", "data-parents", String.join(" ", parents));
    }
    html.open("th", "scope", "row");
    page.code(line.code().text());
    html.close();
    page.cell(String.join(", ", line.names()));
    cell(line.kind());
    page.cell(line.what());
    page.number(line.count());
    cell(line.fieldNumber());
    html.element("td", line.since() == null ? "" : line.since().toString(), "class", "day");
    cell(line.place());
    cell(line.fate());
    html.close().line();
  }
}

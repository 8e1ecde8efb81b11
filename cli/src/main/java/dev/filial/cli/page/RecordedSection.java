package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.Said;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/** The part of a page that tells what was recorded, day by day. */
final class RecordedSection {

  private RecordedSection() {}

  /**
   * Writes it.
   *
   * @param history the entries, oldest first
   */
  static void write(PageWriter page, List<Said> history) {
    Markup html = page.html();
    page.section("recorded", "What was recorded of it");
    page.table(
        "recorded",
        List.of(Column.words("day"), Column.words("what the entry says"), Column.numbers("entry")));
    for (Said said : byDay(history)) {
      String mark =
          (said.guess() == null ? "" : " (a guess of " + said.guess() + ")")
              + (said.amended() ? " (amended)" : "");
      html.open("tr")
          .element("td", said.date() == null ? "not known" : said.date().toString(), "class", "day")
          .open("td");
      page.words(said.text() + mark);
      html.close().element("td", Long.toString(said.entry()), "class", "number").close().line();
    }
    page.endTable();
    page.endSection();
  }

  /** What speaks of no day stands last. */
  private static List<Said> byDay(List<Said> history) {
    return history.stream()
        .sorted(
            Comparator.comparing(
                said -> said.date() == null ? LocalDate.MAX : said.date().earliest()))
        .toList();
  }
}

package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.FamilyQuestion.Seedling;
import java.util.ArrayList;
import java.util.List;

/** The part of a page that tells which seedlings of a family got a number, and how they fared. */
final class SeedlingsSection {

  private SeedlingsSection() {}

  /** Writes it. */
  static void write(PageWriter page, List<Seedling> seedlings) {
    Markup html = page.html();
    page.section("seedlings", "Its numbered seedlings");
    if (seedlings.isEmpty()) {
      html.element("p", "Nothing recorded.").line();
    } else {
      page.table(
          "seedlings",
          List.of(
              Column.words("seedling"),
              Column.words("since"),
              Column.words("what it showed last"),
              Column.words("what became of it"),
              Column.words("where")));
      for (Seedling one : seedlings) {
        html.open("tr").open("th", "scope", "row");
        page.code(one.code().text());
        one.names().forEach(name -> html.text(" ").element("bdi", name));
        html.close()
            .element(
                "td", one.since() == null ? "not known" : one.since().toString(), "class", "day");
        page.cell(shown(one));
        page.cell(one.fate());
        page.cell(one.place());
        html.close().line();
      }
      page.endTable();
    }
    page.endSection();
  }

  private static String shown(Seedling one) {
    List<String> parts = new ArrayList<>();
    one.shown().forEach((trait, value) -> parts.add(trait + " " + value));
    if (one.pickedFor() != null) {
      parts.add("picked for " + one.pickedFor());
    }
    return String.join(", ", parts);
  }
}

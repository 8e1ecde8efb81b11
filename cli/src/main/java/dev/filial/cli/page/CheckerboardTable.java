package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.heredity.Checkerboard;
import dev.filial.core.heredity.Cross.GameteChance;
import dev.filial.core.number.Fraction;
import java.util.List;

/** The checkerboard of gametes as a table: eggs down the side, pollen along the top. */
final class CheckerboardTable {

  /**
   * Two genes of a diploid, or one of a tetraploid with a few alleles; a larger one is not read.
   */
  private static final int MOST_GAMETES = 6;

  private static final int SHORT_BITS = 12;

  private CheckerboardTable() {}

  /** Whether it is small enough to be read on a page. */
  static boolean isSmall(Checkerboard board) {
    return board.eggs().size() <= MOST_GAMETES && board.pollen().size() <= MOST_GAMETES;
  }

  /** Whether there is nothing to be seen on it. */
  static boolean isOneCell(Checkerboard board) {
    return board.eggs().size() == 1 && board.pollen().size() == 1;
  }

  /**
   * Writes it.
   *
   * @param id of the line above it, which names it
   * @param marks the kinds of seedlings
   */
  static void write(PageWriter page, String id, Checkerboard board, KindMarks marks) {
    Markup html = page.html();
    html.element(
        "p",
        "Checkerboard: eggs down the side, pollen along the top.",
        "id",
        id,
        "class",
        "said above");
    page.wide(id);
    html.open("table", "class", "board", "aria-labelledby", id).open("thead").open("tr");
    html.element("th", "egg", "scope", "col");
    board.pollen().forEach(grain -> gamete(html, grain, "col"));
    html.close().close().line().open("tbody").line();
    for (int row = 0; row < board.eggs().size(); row++) {
      html.open("tr");
      gamete(html, board.eggs().get(row), "row");
      board.cells().get(row).forEach(cell -> cell(html, cell, marks));
      html.close().line();
    }
    page.endTable();
  }

  private static void gamete(Markup html, GameteChance gamete, String scope) {
    html.open("th", "scope", scope)
        .element("span", gamete.text().isEmpty() ? "-" : gamete.text(), "class", "code")
        .text(" ")
        .element("span", chance(gamete.chance()), "class", "soft")
        .close();
  }

  private static String chance(Fraction chance) {
    return chance.denominator().bitLength() > SHORT_BITS
        ? chance.toPercent(2).replace(" %", "\u00A0%")
        : chance.toString();
  }

  private static void cell(Markup html, Checkerboard.Cell cell, KindMarks marks) {
    List<String> shows = cell.shows();
    int kind = marks.kinds().indexOf(shows);
    html.open("td").element("span", cell.genotype(), "class", "genes").empty("br");
    if (kind >= 0) {
      marks.write(html, kind);
    } else {
      html.element("bdi", String.join(", ", shows));
    }
    html.close();
  }
}

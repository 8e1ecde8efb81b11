package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.cli.wording.FitWords;
import dev.filial.core.answer.FamilyTalliesQuestion.Row;
import dev.filial.core.answer.FamilyTalliesQuestion.Tally;
import dev.filial.core.answer.FitAnswer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The part of a page that tells what was counted in a family, with a bar beside the one that was
 * expected, and whether the two fit.
 */
final class TalliesSection {

  private static final double WIDTH = 180;
  private static final double BAR = 8;

  private final PageWriter page;
  private final Markup html;
  private final List<Tally> tallies;
  private final int up;

  /**
   * On this page.
   *
   * @param tallies what was counted
   * @param up how many seedlings came up in the sowings that were counted; 0 if none was
   */
  TalliesSection(PageWriter page, List<Tally> tallies, int up) {
    this.page = page;
    this.html = page.html();
    this.tallies = tallies;
    this.up = up;
  }

  /** Writes it. */
  void write() {
    page.section("counted", "What was counted");
    if (tallies.isEmpty()) {
      html.element("p", "Nothing recorded.").line();
    } else if (tallies.stream().anyMatch(one -> one.fit() != null)) {
      html.element(
              "p",
              "The filled bar is what was counted, the open one below it what was expected.",
              "class",
              "said")
          .line();
    }
    Set<String> notes = new LinkedHashSet<>();
    for (int i = 0; i < tallies.size(); i++) {
      Tally tally = tallies.get(i);
      tally("counted-" + (i + 1), tally);
      notes.addAll(tally.notes());
      if (tally.seedlings() < up) {
        notes.add(
            "Of "
                + up
                + " seedlings that came up "
                + tally.seedlings()
                + " were looked at for "
                + tally.trait()
                + "; what had died by then is in no count, and if one kind dies sooner the shares"
                + " are off.");
      }
    }
    page.notes(List.copyOf(notes));
    page.endSection();
  }

  private void tally(String id, Tally tally) {
    FitAnswer.Family fit = tally.fit();
    html.open("h3", "id", id).element("bdi", tally.trait()).close().line();
    if (fit == null) {
      html.open("p").text("Not compared with any expectation: ");
      page.words(tally.why());
      html.text(".").close().line();
    } else {
      String verdict = FitWords.sentence(fit);
      html.element("p", Character.toUpperCase(verdict.charAt(0)) + verdict.substring(1)).line();
    }
    page.table(
        id,
        fit == null
            ? List.of(Column.words("state"), Column.numbers("counted"), Column.words("bar"))
            : List.of(
                Column.words("state"),
                Column.numbers("counted"),
                Column.numbers("expected"),
                Column.words("bar")));
    double most = 1;
    for (int i = 0; i < tally.rows().size(); i++) {
      most = Math.max(most, Math.max((double) tally.rows().get(i).count(), expected(fit, i)));
    }
    for (int i = 0; i < tally.rows().size(); i++) {
      row(tally.rows().get(i), i, fit, most);
    }
    page.endTable();
    List<String> how = new ArrayList<>();
    if (fit != null && fit.fit() != null) {
      how.add(FitWords.tested(fit.fit()));
    }
    how.add("Counts: " + tally.from() + ".");
    html.open("p", "class", "said");
    page.text(String.join(" ", how));
    html.close().line();
  }

  private static double expected(FitAnswer.@Nullable Family fit, int row) {
    return fit == null ? 0 : fit.rows().get(row).expected();
  }

  private void row(Row row, int kind, FitAnswer.@Nullable Family fit, double most) {
    html.open("tr")
        .open("th", "scope", "row")
        .element("bdi", row.state())
        .close()
        .element("td", Long.toString(row.count()), "class", "number");
    String told = row.state() + ": " + row.count() + " counted";
    if (fit != null) {
      String number = ChanceWords.number(expected(fit, kind));
      html.element("td", number, "class", "number");
      told += ", " + number + " expected";
    }
    double height = fit == null ? BAR + 2 : 2 * BAR + 5;
    html.open("td");
    page.bar(told, WIDTH, height);
    html.empty(
        "rect",
        "class",
        "edge",
        "y",
        "1",
        "width",
        number(WIDTH * row.count() / most),
        "height",
        number(BAR),
        "fill",
        KindMarks.colour(kind));
    if (fit != null) {
      html.empty(
          "rect",
          "class",
          "ground open",
          "y",
          number(BAR + 3),
          "width",
          number(WIDTH * expected(fit, kind) / most),
          "height",
          number(BAR));
    }
    html.close().close().close().line();
  }

  private static String number(double value) {
    return PedigreeDrawing.number(value);
  }
}

package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.Season;
import dev.filial.core.answer.SeasonFigure;
import dev.filial.core.answer.SeasonTelling;
import dev.filial.core.answer.SeasonsQuestion.Seasons;
import java.util.List;

/** The part of a page that tells what happened in each year, the newest first. */
final class SeasonSection {

  private static final List<String> COLUMNS =
      List.of(
          "year",
          "plants that came",
          "seed packets",
          "hand crosses",
          "of these set",
          "failed",
          "seed harvested",
          "seed sown",
          "came up",
          "seedlings numbered",
          "first flowers",
          "deaths written down",
          "thrown out",
          "plants given away");

  private SeasonSection() {}

  /** All are numbers but the year, which names the row. */
  private static List<Column> columns() {
    return COLUMNS.stream().map(name -> new Column(name, !name.equals(COLUMNS.get(0)))).toList();
  }

  /** Writes it. */
  static void write(PageWriter page, Seasons seasons) {
    Markup html = page.html();
    page.section("seasons", "Season by season");
    if (seasons.years().isEmpty() && seasons.undated() == null) {
      html.element("p", "Nothing to sum up so far.");
      page.endSection();
      return;
    }
    Season all = seasons.all();
    boolean more = !all.isExact() || all.sowingsNotCounted() > 0;
    html.element(
            "p",
            "By the days the entries speak of; whether a cross set and how much of a sowing came up"
                + " stands in the year of the cross and of the sowing. Deaths are those somebody wrote"
                + " down; losses that only a lower count shows are not among them."
                + (more ? " A plus sign says that there was more that nobody counted." : ""),
            "class",
            "said")
        .line();
    page.table("seasons", columns(), "seasons");
    for (int i = seasons.years().size() - 1; i >= 0; i--) {
      Season season = seasons.years().get(i);
      row(html, season, String.valueOf(season.year()));
    }
    if (seasons.undated() != null) {
      row(html, seasons.undated(), "no day");
    }
    page.endTable();
    SeasonTelling.leftOut(all)
        .ifPresent(sentence -> html.element("p", sentence, "class", "said").line());
    page.endSection();
  }

  private static void row(Markup html, Season season, String name) {
    html.open("tr").element("th", name, "scope", "row");
    cell(html, season, SeasonFigure.PLANTS);
    cell(html, season, SeasonFigure.PACKETS);
    cell(html, season, SeasonFigure.CROSSES);
    cell(html, season, SeasonFigure.CROSSES_SET);
    cell(html, season, SeasonFigure.CROSSES_FAILED);
    cell(html, season, SeasonFigure.SEED);
    cell(html, season, SeasonFigure.SOWN);
    html.element("td", SeasonTelling.briefUp(season), "class", "number");
    cell(html, season, SeasonFigure.NUMBERED);
    cell(html, season, SeasonFigure.FIRST_FLOWERS);
    cell(html, season, SeasonFigure.DIED);
    cell(html, season, SeasonFigure.DISCARDED);
    cell(html, season, SeasonFigure.GIVEN);
    html.close().line();
  }

  private static void cell(Markup html, Season season, SeasonFigure figure) {
    html.element("td", SeasonTelling.brief(season.of(figure)), "class", "number");
  }
}

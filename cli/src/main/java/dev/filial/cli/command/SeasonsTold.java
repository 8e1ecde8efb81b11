package dev.filial.cli.command;

import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Season;
import dev.filial.core.answer.SeasonFigure;
import dev.filial.core.answer.SeasonSum;
import dev.filial.core.answer.SeasonTelling;
import dev.filial.core.answer.SeasonsQuestion.Seasons;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What happened in each year.
 *
 * @param found the years
 * @param year the one that was asked about; null for all
 * @param csv whether it is written for a spreadsheet
 */
record SeasonsTold(Seasons found, @Nullable Integer year, boolean csv) implements CsvOrTable {

  @Override
  public void lay(Screen screen) {
    if (found.years().isEmpty() && found.undated() == null) {
      screen.say("Nothing to sum up is written" + (year == null ? "." : " of " + year + "."));
      screen.next(year == null ? "begin with a plant: filial plant" : "all years: filial seasons");
    } else if (year == null) {
      all(screen);
    } else {
      SeasonTelling.lines(found.years().get(0))
          .forEach(line -> screen.field(line.what(), line.text()));
      screen.next("all years: filial seasons");
    }
  }

  private void all(Screen screen) {
    Table table =
        new Table()
            .column("year")
            .numbers("plants")
            .numbers("crosses")
            .numbers("set")
            .numbers("seed")
            .numbers("sown")
            .numbers("came up")
            .numbers("numbered")
            .numbers("deaths noted");
    found.years().forEach(season -> row(table, season, String.valueOf(season.year())));
    Season undated = found.undated();
    if (undated != null) {
      row(table, undated, "no day");
    }
    screen.table(table);
    if (found.years().stream().anyMatch(SeasonsTold::isMore)
        || (undated != null && isMore(undated))) {
      screen.field(
          "+",
          "and more that was guessed or has no number, or sowings not counted; the year in full"
              + " tells");
    }
    if (found.all().of(SeasonFigure.DIED).counted() > 0) {
      screen.field(
          "deaths noted",
          "only those somebody wrote down; what only a lower count shows is not among them");
    }
    if (!found.years().isEmpty()) {
      screen.next(
          "one year in full: filial seasons " + found.years().get(found.years().size() - 1).year());
    }
  }

  private static boolean isMore(Season season) {
    return !season.isExact() || season.sowingsNotCounted() > 0;
  }

  private static void row(Table table, Season season, String name) {
    table.row(
        name,
        brief(season, SeasonFigure.PLANTS),
        brief(season, SeasonFigure.CROSSES),
        brief(season, SeasonFigure.CROSSES_SET),
        brief(season, SeasonFigure.SEED),
        brief(season, SeasonFigure.SOWN),
        SeasonTelling.briefUp(season),
        brief(season, SeasonFigure.NUMBERED),
        brief(season, SeasonFigure.DIED));
  }

  private static String brief(Season season, SeasonFigure figure) {
    return SeasonTelling.brief(season.of(figure));
  }

  @Override
  public String rows() {
    CsvText rows =
        new CsvText()
            .row("year", "figure", "cause", "counted", "guessed", "guesses", "without_number");
    found.years().forEach(season -> rows(rows, season));
    if (found.undated() != null) {
      rows(rows, found.undated());
    }
    return rows.text();
  }

  private static void rows(CsvText rows, Season season) {
    season
        .figures()
        .forEach(
            (figure, sum) -> row(rows, season, figure.name().toLowerCase(Locale.ROOT), null, sum));
    season.losses().forEach(loss -> row(rows, season, "died_of", loss.cause(), loss.plants()));
  }

  private static void row(
      CsvText rows, Season season, String figure, @Nullable String cause, SeasonSum sum) {
    rows.row(
        season.year(),
        figure,
        cause,
        sum.counted(),
        sum.guessed(),
        sum.guesses(),
        sum.withoutNumber());
  }
}

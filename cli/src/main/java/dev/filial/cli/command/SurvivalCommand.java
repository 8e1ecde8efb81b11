package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.SurvivalQuestion;
import dev.filial.core.answer.SurvivalQuestion.Survival;
import dev.filial.core.answer.SurvivalQuestion.Week;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial survival}. */
public final class SurvivalCommand implements BenchCommand {

  private final Supplier<List<String>> what;
  private final Supplier<Optional<Double>> sure;
  private final CsvText.Option csv;
  private final OpenRegister register;

  /** Declares its words. */
  public SurvivalCommand(Words words) {
    what =
        words.arguments(
            "WHAT",
            "A cross, a packet, a seed lot, a sowing, or a pot, which stands for its sowing;"
                + " otherwise all sowings.",
            false,
            Reading.THING);
    sure =
        words.option(
            "--sure", "SHARE", "How sure the range is to be; 95% if not given.", Certainty.READING);
    csv = new CsvText.Option(words);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says how many of the seedlings that came up live on, week by week from the sowing."
                + " Between two counts of what stands there, whoever is missing and did not leave by"
                + " an entry has died, dated to the count that shows it. Who was given away, thrown"
                + " out, or stands in a pot not looked at since counts as long as it was seen.")
        .example("filial survival 26-013")
        .example("filial survival 26-006 S3");
  }

  /**
   * The answer.
   *
   * @param found what was found
   * @param csv whether it is written for a spreadsheet
   */
  record Told(Survival found, boolean csv) implements CsvOrTable {
    @Override
    public void lay(Screen screen) {
      if (found.weeks().isEmpty()) {
        screen.say("Nothing can be said: no seedling could be followed.");
      } else {
        screen.say(
            "Of "
                + found.seedlings()
                + " seedlings "
                + found.died()
                + " died while they were watched. By the week from the sowing, how many live past"
                + " it:");
        Table table =
            new Table()
                .numbers("week")
                .numbers("before")
                .numbers("came up")
                .numbers("died")
                .numbers("last seen")
                .numbers("live on, %")
                .numbers(ChanceWords.certainty(found.certainty()) + " between");
        for (Week week : found.weeks()) {
          table.row(
              week.week(),
              week.before(),
              week.cameUp(),
              week.died(),
              week.left(),
              week.surviving() == null ? "not known" : GerminationTold.percent(week.surviving()),
              week.lower() == null || week.upper() == null
                  ? ""
                  : GerminationTold.percent(week.lower())
                      + " and "
                      + GerminationTold.percent(week.upper()));
        }
        screen.table(table);
      }
      GerminationTold.leftOut(screen, "left out", found.leftOut());
      found.notes().forEach(note -> screen.field("note", note));
    }

    @Override
    public String rows() {
      CsvText rows =
          new CsvText()
              .row(
                  "week",
                  "before",
                  "came_up",
                  "died",
                  "last_seen",
                  "surviving",
                  "standard_error",
                  "lower",
                  "upper");
      for (Week week : found.weeks()) {
        rows.row(
            week.week(),
            week.before(),
            week.cameUp(),
            week.died(),
            week.left(),
            week.surviving(),
            week.error(),
            week.lower(),
            week.upper());
      }
      return rows.text();
    }
  }

  @Override
  public Answer run(Bench bench) {
    boolean rows = csv.isAsked();
    return register.read(
        bench,
        view ->
            new Told(
                SurvivalQuestion.of(view)
                    .withCertainty(sure.get().orElse(Certainty.USUAL))
                    .ask(GerminationCommand.meant(view, what.get())),
                rows));
  }
}

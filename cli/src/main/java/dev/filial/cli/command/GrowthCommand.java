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
import dev.filial.core.answer.RankingQuestion;
import dev.filial.core.answer.RankingQuestion.Grown;
import dev.filial.core.answer.RankingQuestion.Growth;
import dev.filial.core.answer.RankingQuestion.Step;
import java.util.List;
import java.util.function.Supplier;

/** {@code filial growth}. */
public final class GrowthCommand implements BenchCommand {

  private final Supplier<String> trait;
  private final Supplier<List<String>> what;
  private final CsvText.Option csv;
  private final OpenRegister register;

  /** Declares its words. */
  public GrowthCommand(Words words) {
    trait = words.argument("TRAIT", "A trait that is scored or measured, as it was declared.");
    what =
        words.arguments(
            "WHAT",
            "Plants, or crosses or packets, whose numbered seedlings are meant; otherwise all that"
                + " were measured.",
            false,
            Reading.THING);
    csv = new CsvText.Option(words);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says how a score or a size of each plant went over time, and by how much in 30 days.")
        .example("filial growth width 24-007-1")
        .example("filial growth farina 24-007");
  }

  /**
   * The answer.
   *
   * @param found what was found
   * @param csv whether it is written for a spreadsheet
   */
  record Told(Growth found, boolean csv) implements CsvOrTable {
    @Override
    public void lay(Screen screen) {
      if (found.plants().isEmpty()) {
        screen.say("Nobody was measured for " + found.trait() + ".");
      }
      String unit = found.unit() == null ? "" : ", " + found.unit();
      Table table =
          new Table()
              .column("plant")
              .column("on")
              .numbers(found.trait() + unit)
              .numbers("change")
              .numbers("in 30 days")
              .column("state");
      for (Grown plant : found.plants()) {
        boolean first = true;
        for (Step step : plant.steps()) {
          table.row(
              first ? plant.code().text() : "",
              step.date() == null ? "" : step.date(),
              step.value().toPlainString(),
              step.change() == null ? "" : step.change().toPlainString(),
              step.changePerMonth() == null ? "" : ChanceWords.number(step.changePerMonth()),
              first ? RankCommand.mark(plant.fate()) : "");
          first = false;
        }
      }
      screen.table(table);
      RankCommand.notMeasured(screen, found.notMeasured());
    }

    @Override
    public String rows() {
      CsvText rows =
          new CsvText()
              .row("plant", "date", found.trait(), "unit", "change", "change_in_30_days", "state");
      for (Grown plant : found.plants()) {
        for (Step step : plant.steps()) {
          rows.row(
              plant.code().text(),
              step.date(),
              step.value(),
              found.unit(),
              step.change(),
              step.changePerMonth(),
              RankCommand.mark(plant.fate()));
        }
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
                RankingQuestion.of(view).growth(trait.get(), RankCommand.meant(view, what.get())),
                rows));
  }
}

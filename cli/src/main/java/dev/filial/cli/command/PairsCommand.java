package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.PairsQuestion;
import dev.filial.core.answer.PairsQuestion.Pair;
import dev.filial.core.answer.PairsQuestion.Pairs;
import dev.filial.core.register.RegisterView;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial pairs}. */
public final class PairsCommand implements BenchCommand {

  private final Supplier<Optional<LocalDate>> day;
  private final Supplier<Optional<Integer>> year;
  private final Supplier<Optional<String>> with;
  private final BooleanSupplier clones;
  private final OpenRegister register;

  /** Declares its words. */
  public PairsCommand(Words words) {
    day = words.option("--on", "DAY", "On which day; otherwise today.", Reading.DAY);
    year =
        words.option(
            "--year",
            "YEAR",
            "Which were in flower together at any time of that year, to plan the next by.",
            Reading.WHOLE_NUMBER);
    with =
        words.option(
            "--with", "PLANT", "Only pairs of this plant, a code or a name.", Reading.THING);
    clones = words.flag("--clones", "Also pairs of one clone: a plant and its offset.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Pairs of plants that flower together, those that do so longest first, with what came of"
                + " crosses between them already. What died or left is not among them.")
        .example("filial pairs")
        .example("filial pairs --year 2026")
        .example("filial pairs --on \"14 may 2026\" --with 22-006");
  }

  /**
   * The answer.
   *
   * @param when the day or the year asked about
   * @param pairs the pairs
   */
  record Told(String when, Pairs pairs) implements Answer {
    @Override
    public Object json() {
      return pairs;
    }

    @Override
    public void show(Screen screen) {
      if (pairs.pairs().isEmpty()) {
        screen.say(
            "No two plants that could be crossed are known to be in flower together "
                + when
                + "; "
                + pairs.inFlower()
                + (pairs.inFlower() == 1 ? " is" : " are")
                + " in flower.");
      } else {
        screen.say("In flower together " + when + ":");
        screen.table(table());
      }
      if (pairs.leftOut() > 0) {
        screen.field(
            "note",
            pairs.leftOut()
                + (pairs.leftOut() == 1 ? " pair" : " pairs")
                + " of one clone left out; with --clones they are listed");
      }
      screen.next(
          pairs.pairs().isEmpty()
              ? "what stored pollen can bridge: filial bridge SEED_PARENT"
              : "when you pollinate: filial cross SEED_PARENT POLLEN_PARENT");
    }

    private Table table() {
      Table table =
          new Table()
              .column("one")
              .column("other")
              .column("together")
              .column("one bore")
              .column("other bore");
      for (Pair pair : pairs.pairs()) {
        table.row(
            pair.one().text() + " " + pair.oneWhat(),
            pair.other().text() + " " + pair.otherWhat() + (pair.oneClone() ? ", one clone" : ""),
            pair.from() + " to " + pair.to(),
            SetsTold.brief(pair.oneBears()),
            SetsTold.brief(pair.otherBears()));
      }
      return table;
    }
  }

  @Override
  public Answer run(Bench bench) {
    if (day.get().isPresent() && year.get().isPresent()) {
      throw Trouble.usage("--on asks about a day, --year about a year", "Give one of the two.");
    }
    return register.read(bench, view -> answer(view, bench));
  }

  private Answer answer(RegisterView view, Bench bench) {
    PairsQuestion question =
        PairsQuestion.of(view)
            .withOneClone(clones.getAsBoolean())
            .withPlant(with.get().map(name -> Finding.in(view).one(name).code()).orElse(null));
    if (year.get().isPresent()) {
      return new Told("in " + year.get().get(), question.inYear(year.get().get()));
    }
    LocalDate asked = day.get().orElse(bench.today());
    return new Told("on " + asked, question.on(asked));
  }
}

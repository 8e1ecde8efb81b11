package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.SetsQuestion;
import dev.filial.core.answer.SetsQuestion.By;
import dev.filial.core.answer.SetsQuestion.Row;
import dev.filial.core.answer.SetsQuestion.Sets;
import dev.filial.core.register.RegisterView;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial sets}. */
public final class SetsCommand implements BenchCommand {

  private final Supplier<Optional<String>> plant;
  private final Supplier<Optional<By>> by;
  private final OpenRegister register;

  /** Declares its words. */
  public SetsCommand(Words words) {
    plant =
        words.optionalArgument(
            "PLANT", "Only crosses of this plant and its offsets.", Reading.THING);
    by =
        words.option(
            "--by",
            "WHAT",
            "By plant, where all plants of one clone are one, or by taxon, where a hybrid counts"
                + " as all taxa behind it; otherwise by plant.",
            Reading.oneOf(By.class));
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Of hand pollinations with the pollen of one plant: of how many flowers it is known, how"
                + " many of those set, and between which shares the true one lies 95 times of 100."
                + " What was eaten says nothing of whether two plants suit each other, and is in"
                + " neither number.")
        .example("filial sets")
        .example("filial sets 22-001")
        .example("filial sets --by taxon");
  }

  /**
   * The answer.
   *
   * @param sets the table
   */
  record Told(Sets sets) implements Answer {
    @Override
    public Object json() {
      return sets;
    }

    @Override
    public void show(Screen screen) {
      if (sets.rows().isEmpty()) {
        screen.say("Nothing was pollinated by hand with the pollen of one plant.");
      } else {
        screen.say("Flowers that set, of those it is known of:");
        screen.table(table());
      }
      sets.notes().forEach(note -> screen.field("note", note));
    }

    private Table table() {
      Table table =
          new Table()
              .column("one")
              .column("other")
              .column("one bears, pollen of other")
              .column("other bears, pollen of one");
      for (Row row : sets.rows()) {
        table.row(
            row.one(), other(row), SetsTold.full(row.oneBears()), SetsTold.full(row.otherBears()));
      }
      return table;
    }
  }

  /** Selfings say nothing of what two plants of one species do with each other. */
  private static String other(Row row) {
    if (row.isSelfing()) {
      return "selfed";
    }
    return row.one().equals(row.other()) ? "another plant of it" : row.other();
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    SetsQuestion question = SetsQuestion.of(view).by(by.get().orElse(By.PLANT));
    return new Told(
        plant.get().isEmpty()
            ? question.ask()
            : question.ofPlant(Finding.in(view).one(plant.get().get()).code()));
  }
}

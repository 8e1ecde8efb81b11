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
import dev.filial.core.answer.MakeupQuestion;
import dev.filial.core.answer.PossibleMakeups;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial makeup}. */
public final class MakeupCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<List<String>> taxa;
  private final WeighingOptions weighing;
  private final BooleanSupplier why;
  private final OpenRegister register;

  /** Declares its words. */
  public MakeupCommand(Words words) {
    plant = words.argument("PLANT", "The plant without a label.", Reading.THING);
    taxa = words.arguments("TAXON", "Two or more species it may be of.", true, RecordReadings.LINE);
    weighing = new WeighingOptions(words);
    why = words.flag("--why", "Say which entries moved the odds, and by how much.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says what an unlabelled plant most likely is: one of the species, the first or second"
                + " generation of two of them, or a backcross of that, by what it shows and what the"
                + " profiles of the species say. All are held alike likely beforehand, and what is"
                + " recorded of its parents is not used.")
        .example("filial makeup 26-013-7 \"Echeveria laui\" \"Echeveria agavoides\" --trait tips");
  }

  /**
   * The answer.
   *
   * @param makeups what was found
   * @param why whether reasons were asked for
   */
  record Told(PossibleMakeups makeups, boolean why) implements Answer {
    @Override
    public Object json() {
      return makeups;
    }

    @Override
    public void show(Screen screen) {
      PossibleMakeups.Proposal first = makeups.makeups().get(0);
      screen.say(
          LikelyWords.isTie(first.after(), makeups.makeups().get(1).after())
              ? "By "
                  + String.join(" and ", makeups.traits())
                  + " alone several make-ups of "
                  + makeups.plant()
                  + " are alike likely; look at more traits whose profiles differ."
              : makeups.plant()
                  + " "
                  + LikelyWords.surely(first.after())
                  + " is "
                  + first.makeup()
                  + ": "
                  + LikelyWords.percent(first.after())
                  + " among these, by "
                  + String.join(" and ", makeups.traits())
                  + ".");
      Table table =
          new Table().column("what it may be").numbers("thought").numbers("by what was seen");
      makeups
          .makeups()
          .forEach(
              one ->
                  table.row(
                      one.makeup(),
                      LikelyWords.percent(one.before()),
                      LikelyWords.percent(one.after())));
      screen.table(table);
      if (why) {
        LikelyWords.why(screen, makeups.why(), "the odds of " + first.makeup());
      }
      makeups.notes().forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    MakeupQuestion question =
        MakeupQuestion.of(view, weighing.traits(view)).weighing(weighing.weighing(view));
    if (why.getAsBoolean()) {
      question = question.saysWhy();
    }
    return new Told(
        question.ask(Finding.in(view).one(plant.get()).code(), taxa.get()), why.getAsBoolean());
  }
}

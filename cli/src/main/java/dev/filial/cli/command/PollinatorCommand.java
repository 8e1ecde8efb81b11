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
import dev.filial.core.answer.PollinatorQuestion;
import dev.filial.core.answer.Pollinators;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial pollinator}. */
public final class PollinatorCommand implements BenchCommand {

  private final Supplier<String> what;
  private final WeighingOptions weighing;
  private final BooleanSupplier seedBySeed;
  private final BooleanSupplier why;
  private final OpenRegister register;

  /** Declares its words. */
  public PollinatorCommand(Words words) {
    what =
        words.argument(
            "CODE",
            "A seedling, whose own pollinator is asked; a cross, a lot or a pot, taken to be of one"
                + " pollinator; or a plant found without its tag.",
            Reading.THING);
    weighing = new WeighingOptions(words).withDraws(words);
    seedBySeed =
        words.flag(
            "--seed-by-seed",
            "Of a cross: let every seed have a pollinator of its own, and answer for one more.");
    why = words.flag("--why", "Say which entries moved the odds, and by how much.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says whose pollen it was, by what the seedlings show, by the candidates you recorded"
                + " and their S alleles; of a plant without its tag, which of those you named it is."
                + " What you thought likely beforehand is shown beside it.")
        .example("filial pollinator 24-006 --trait tips")
        .example("filial pollinator 24-006-1 --trait tips");
  }

  /**
   * The answer.
   *
   * @param pollinators what was found
   * @param why whether reasons were asked for
   */
  record Told(Pollinators pollinators, boolean why) implements Answer {
    @Override
    public Object json() {
      return pollinators;
    }

    @Override
    public void show(Screen screen) {
      List<Pollinators.Candidate> candidates = pollinators.candidates();
      Pollinators.Candidate first = candidates.get(0);
      screen.say(verdict(first, candidates.get(1)));
      Table table =
          new Table().column("who").column("how").numbers("thought").numbers("by what was seen");
      for (Pollinators.Candidate one : candidates) {
        table.row(
            one.who(),
            one.route(),
            LikelyWords.percent(one.before()),
            LikelyWords.percent(one.after(), one.error()));
      }
      screen.table(table);
      if (why) {
        LikelyWords.why(screen, pollinators.why(), "the odds of " + first.who());
      }
      pollinators.notes().forEach(note -> screen.field("note", note));
    }

    private String verdict(Pollinators.Candidate first, Pollinators.Candidate second) {
      if (LikelyWords.isTie(first.after(), second.after())) {
        return "What was seen does not tell who it was: several are alike likely for "
            + pollinators.code()
            + ".";
      }
      String likeliest =
          pollinators.code()
              + " "
              + LikelyWords.surely(first.after())
              + (first.itself() ? " is " : " came of ")
              + first.who()
              + (first.after() < 1 ? ": " + LikelyWords.percent(first.after(), first.error()) : "");
      if (first.after() < 1 && !isAnyMoved()) {
        return "What was seen does not tell who it was; by what was thought beforehand, "
            + likeliest
            + ".";
      }
      return likeliest
          + (pollinators.wholeFruit()
              ? ", if one plant pollinated it all, by "
                  + pollinators.seen()
                  + (pollinators.seen() == 1 ? " entry" : " entries")
                  + " on its seedlings."
              : ".");
    }

    /** Whether anything seen moved the chance of any of them; drawn odds move by chance alone. */
    private boolean isAnyMoved() {
      return pollinators.candidates().stream()
          .anyMatch(
              one ->
                  !LikelyWords.isTie(
                      Math.max(one.before(), one.after()),
                      Math.min(one.before(), one.after()) + 3 * one.error()));
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    PollinatorQuestion question =
        PollinatorQuestion.of(view, weighing.traits(view)).weighing(weighing.weighing(view));
    if (seedBySeed.getAsBoolean()) {
      question = question.seedBySeed();
    }
    if (why.getAsBoolean()) {
      question = question.saysWhy();
    }
    return new Told(question.ask(Finding.in(view).one(what.get()).code()), why.getAsBoolean());
  }
}

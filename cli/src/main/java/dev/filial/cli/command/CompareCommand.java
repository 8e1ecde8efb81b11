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
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.ComparisonQuestion;
import dev.filial.core.answer.ComparisonQuestion.Comparison;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.GerminationQuestion.By;
import dev.filial.core.answer.GerminationQuestion.Group;
import dev.filial.core.number.Decimal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.trial.TwoProportions.Method;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial compare}. */
public final class CompareCommand implements BenchCommand {

  private final Supplier<String> one;
  private final Supplier<String> other;
  private final Supplier<Optional<By>> by;
  private final Supplier<Optional<String>> within;
  private final Supplier<Optional<Double>> sure;
  private final OpenRegister register;

  /** Declares its words. */
  public CompareCommand(Words words) {
    one =
        words.argument(
            "ONE",
            "A sowing, a lot, a cross or a packet, as \"26-006 S2\"; with --by what sowings have in"
                + " common, as soak, or a part of it.");
    other = words.argument("OTHER", "What to hold it against, in the same way.");
    by =
        words.option(
            "--by",
            "WHAT",
            "What the two are: species, cross, medium, treatment, age …",
            Reading.oneOf(By.class));
    within =
        words.option("--within", "WHAT", "With --by: only sowings of this cross, packet or lot.");
    sure =
        words.option(
            "--sure", "SHARE", "How sure the range is to be; 95% if not given.", Certainty.READING);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says whether seed came up better one way than another: the difference with its range, and"
                + " the chance that so large a one comes about where there is none. By Fisher's exact"
                + " test where fewer than 5 are expected anywhere, else by chi-square.")
        .example("filial compare \"26-006 S2\" \"26-006 S3\"")
        .example("filial compare soak \"not said\" --by treatment --within 26-006");
  }

  /**
   * The answer.
   *
   * @param found what was found
   */
  record Told(Comparison found) implements Answer {
    @Override
    public Object json() {
      return found;
    }

    @Override
    public void show(Screen screen) {
      Table table =
          new Table()
              .column("")
              .numbers("seeds")
              .numbers("up")
              .numbers("%")
              .numbers(ChanceWords.certainty(found.certainty()) + " between")
              .numbers("mean days");
      for (Group side : List.of(found.one(), found.other())) {
        Double mean = side.times() == null ? null : side.times().meanDays();
        table.row(
            side.label(),
            side.seeds(),
            side.up(),
            GerminationTold.percent(side.share()),
            GerminationTold.percent(side.lower()) + " and " + GerminationTold.percent(side.upper()),
            mean == null ? "" : Decimal.text(mean, 1));
      }
      screen.table(table);
      screen.field(
          "difference",
          GerminationTold.percent(found.difference())
              + " in a hundred, with a certainty of "
              + ChanceWords.certainty(found.certainty())
              + " between "
              + GerminationTold.percent(found.lower())
              + " and "
              + GerminationTold.percent(found.upper()));
      screen.field(
          "by chance alone",
          "so large a difference or larger comes about with a chance of "
              + ChanceWords.p(found.p())
              + (found.method() == Method.EXACT
                  ? " (Fisher's exact test: "
                      + Decimal.text(found.leastExpected(), 1)
                      + " are expected in one of the four cells)"
                  : " (chi-square "
                      + Decimal.text(found.chiSquare() == null ? 0 : found.chiSquare(), 2)
                      + ", one degree of freedom)"));
      GerminationTold.leftOut(screen, "left out", found.leftOut());
      found.notes().forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    if (within.get().isPresent() && by.get().isEmpty()) {
      throw Trouble.usage(
          "--within goes with --by", "Say what the two are, as --by treatment, or leave it out.");
    }
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    Finding finding = Finding.in(view);
    ComparisonQuestion question =
        ComparisonQuestion.of(view)
            .within(within.get().map(text -> finding.one(text).code()).orElse(null))
            .withCertainty(sure.get().orElse(Certainty.USUAL));
    return new Told(
        by.get().isPresent()
            ? question.ask(by.get().get(), one.get(), other.get())
            : question.ask(finding.one(one.get()).code(), finding.one(other.get()).code()));
  }
}

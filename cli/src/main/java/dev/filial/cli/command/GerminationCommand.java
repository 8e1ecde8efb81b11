package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.GerminationQuestion;
import dev.filial.core.answer.GerminationQuestion.By;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial germination}. */
public final class GerminationCommand implements BenchCommand {

  private final Supplier<List<String>> what;
  private final Supplier<Optional<By>> by;
  private final Supplier<Optional<Double>> sure;
  private final BooleanSupplier curve;
  private final CsvText.Option csv;
  private final OpenRegister register;

  /** Declares its words. */
  public GerminationCommand(Words words) {
    what =
        words.arguments(
            "WHAT",
            "A cross, a packet, a seed lot, a sowing, or a pot, which stands for its sowing;"
                + " otherwise all sowings.",
            false,
            Reading.THING);
    by =
        words.option(
            "--by",
            "WHAT",
            "Put sowings together by sowing, lot, species, cross, medium, treatment or age of the"
                + " seed; if not given by sowing, and without WHAT by species.",
            Reading.oneOf(By.class));
    sure =
        words.option(
            "--sure", "SHARE", "How sure the range is to be; 95% if not given.", Certainty.READING);
    curve = words.flag("--curve", "Draw how they came up over the days.");
    csv = new CsvText.Option(words);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says how much seed came up and how long it took. Only what was counted is reckoned"
                + " with, seeds and seedlings; guesses are left out and named. Days are counted from"
                + " the sowing to the count that found a seedling: between two counts nobody knows.")
        .example("filial germination --by treatment")
        .example("filial germination 26-006 --curve")
        .example("filial germination 26-006");
  }

  @Override
  public Answer run(Bench bench) {
    boolean rows = csv.isAsked();
    return register.read(bench, view -> answer(view, rows));
  }

  private Answer answer(RegisterView view, boolean rows) {
    Code code = meant(view, what.get());
    return new GerminationTold(
        GerminationQuestion.of(view)
            .about(code)
            .by(by.get().orElse(code == null ? By.SPECIES : By.SOWING))
            .withCertainty(sure.get().orElse(Certainty.USUAL))
            .ask(),
        curve.getAsBoolean(),
        rows);
  }

  /** What the words name together, or null for none. */
  static @Nullable Code meant(RegisterView view, List<String> words) {
    String typed = String.join(" ", words).strip();
    return typed.isEmpty() ? null : Finding.in(view).one(typed).code();
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.FieldNumbers;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.LocalityQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial locality}. */
public final class LocalityCommand implements BenchCommand {

  private final Supplier<List<String>> what;
  private final BooleanSupplier all;
  private final OpenRegister register;

  /** Declares its words. */
  public LocalityCommand(Words words) {
    what =
        words.arguments(
            "WHAT",
            "A field number, as XM 014; or a code or a name, where a cross, a seed lot or a pot"
                + " stands for one seedling of it. Otherwise all field numbers.",
            false,
            Reading.THING);
    all = words.flag("--all", "Also what died, left or was used up, and what never stood here.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "A plant is true to a field number when every plant behind it that came from elsewhere"
                + " bears that number, or one of the same population, and no open, unprotected or"
                + " mixed pollination could have brought another. Which numbers are one population"
                + " is said with: filial population.")
        .example("filial locality")
        .example("filial locality 24-005")
        .example("filial locality XM 014");
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    String typed = String.join(" ", what.get()).strip();
    LocalityQuestion question = LocalityQuestion.of(view).withGone(all.getAsBoolean());
    if (typed.isEmpty()) {
      return new LocalityTold.Numbers(question.ask());
    }
    // A code first: for one plant not even the list of the numbers is looked at.
    Optional<Code> code = code(view, typed);
    if (code.isPresent()) {
      return new LocalityTold.OnePlant(question.ask(code.get()));
    }
    Optional<String> number = FieldNumbers.in(view).find(typed);
    if (number.isPresent()) {
      return new LocalityTold.OneNumber(question.ofNumber(number.get()));
    }
    return new LocalityTold.OnePlant(question.ask(found(view, typed)));
  }

  private static Optional<Code> code(RegisterView view, String typed) {
    try {
      return Optional.of(Code.parse(typed)).filter(code -> view.item(code).isPresent());
    } catch (CodeException e) {
      return Optional.empty();
    }
  }

  /** What does not look like a code was a name, or a number that is not there. */
  private static Code found(RegisterView view, String typed) {
    try {
      return Finding.in(view).one(typed).code();
    } catch (RegisterRefusal e) {
      if (Character.isDigit(typed.charAt(0)) || !view.named(typed, 1).isEmpty()) {
        throw e;
      }
      FieldNumbers.in(view).required(typed);
      throw e;
    }
  }
}

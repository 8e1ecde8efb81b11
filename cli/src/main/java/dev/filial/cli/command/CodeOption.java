package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.NextCode;
import dev.filial.core.name.Code;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The code that a plant, a packet or a cross gets: {@code --code}, else the next of the year. */
final class CodeOption {

  private static final int MOST_STATED = 99_999_999;

  private final Supplier<Optional<Code>> stated;

  /** Adds the option. */
  CodeOption(Words words) {
    stated =
        words.option(
            "--code",
            "CODE",
            "The code that stands on its tag already; otherwise the next of the year of its date.",
            RecordReadings.CODE);
  }

  /**
   * The code, asked for within the write that gives it out, so that no other command can have it.
   *
   * @param date the day of what gets it; the year is this year's when nobody knows
   */
  Code in(RegisterView view, @Nullable PartialDate date, Bench bench) {
    int year = date == null ? bench.day().getYear() : date.year();
    stated.get().ifPresent(CodeOption::requireRoomAfter);
    return stated.get().orElseGet(() -> NextCode.in(view).ofYear(year));
  }

  /** The next code of the year is the one after the highest; past the last one there is none. */
  private static void requireRoomAfter(Code code) {
    if (code.number() > MOST_STATED) {
      throw Trouble.usage(
          code.text() + " would leave no numbers for the rest of the year",
          "A number stated is at most " + MOST_STATED + "; look at the tag again.");
    }
  }
}

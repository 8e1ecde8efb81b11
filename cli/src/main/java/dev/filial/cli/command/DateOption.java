package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.core.register.PartialDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The day of what is recorded: {@code --date}. Today where it is not given; {@code ?} says that
 * nobody knows, so that no date is made up.
 */
final class DateOption {

  private record When(@Nullable PartialDate date) {}

  private static final Reading<When> WHEN =
      (text, bench) ->
          text.strip().equals("?") ? new When(null) : new When(bench.dates().partial(text));

  private final Supplier<Optional<When>> when;

  /**
   * Adds the option.
   *
   * @param event what happened on that day, as {@code it came}
   */
  DateOption(Words words, String event) {
    when =
        words.option(
            "--date",
            "DATE",
            "When "
                + event
                + ": today, yesterday, 4 mar, 2024-03-04, 2024-03, 2024, or ? if nobody knows;"
                + " otherwise today.",
            WHEN);
  }

  /** The day given, else today; null when nobody knows. */
  @Nullable PartialDate orToday(Bench bench) {
    return when.get().orElseGet(() -> new When(PartialDate.of(bench.day()))).date();
  }

  /** The day given, else null. */
  @Nullable PartialDate orUnknown() {
    return when.get().orElse(new When(null)).date();
  }
}

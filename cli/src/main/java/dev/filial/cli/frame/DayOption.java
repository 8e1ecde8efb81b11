package dev.filial.cli.frame;

import dev.filial.core.register.PartialDate;
import java.util.Optional;
import java.util.function.Supplier;

/** The day an entry speaks of: {@code --date}, else today. */
public final class DayOption {

  private final Supplier<Optional<PartialDate>> date;

  /** Adds the option to a command that records something. */
  public DayOption(Words words) {
    date =
        words.option(
            "--date",
            "DATE",
            "The day, as 4 mar, yesterday or 2026-03-04, or only the month or the year; otherwise"
                + " today.",
            Reading.PARTIAL_DATE);
  }

  /** The day. */
  public PartialDate of(Bench bench) {
    return date.get().orElseGet(() -> PartialDate.of(bench.day()));
  }
}

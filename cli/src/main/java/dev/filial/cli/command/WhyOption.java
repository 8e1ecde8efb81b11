package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import java.util.Optional;
import java.util.function.Supplier;

/** The reason for a correction: {@code --why}, asked for where somebody can be asked. */
final class WhyOption {

  private final Supplier<Optional<String>> why;

  /** Adds the option. */
  WhyOption(Words words) {
    why =
        words.option(
            "--why",
            "TEXT",
            "The reason, for whoever reads the book later; otherwise you are asked for it.",
            RecordReadings.LINE);
  }

  /**
   * The reason.
   *
   * @throws Trouble if none is given and nobody can be asked
   */
  String in(Bench bench) {
    return why.get()
        .or(() -> bench.asker().ask("Why?", null))
        .map(RecordReadings::line)
        .orElseThrow(
            () -> Trouble.usage("a correction says why", "Add --why \"...\" with the reason."));
  }

  /** The reason, or what is said where none is given. */
  String or(String otherwise) {
    return why.get().orElse(otherwise);
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Words;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What seed weighs, and how many such seeds a gram holds. */
final class SeedWeight {

  private final Supplier<Optional<BigDecimal>> milligrams;
  private final Supplier<Optional<BigDecimal>> perGram;

  /** Adds the options. */
  SeedWeight(Words words) {
    milligrams =
        words.option(
            "--mg", "NUMBER", "What the seed weighs, in milligrams.", RecordReadings.DECIMAL);
    perGram =
        words.option(
            "--per-gram",
            "NUMBER",
            "How many such seeds go into one gram.",
            RecordReadings.DECIMAL);
  }

  @Nullable BigDecimal milligrams() {
    return milligrams.get().orElse(null);
  }

  @Nullable BigDecimal perGram() {
    return perGram.get().orElse(null);
  }

  /** Whether it was weighed. */
  boolean isWeighed() {
    return milligrams.get().isPresent();
  }

  /** Whether anything of it was said. */
  boolean isSaid() {
    return isWeighed() || perGram.get().isPresent();
  }
}

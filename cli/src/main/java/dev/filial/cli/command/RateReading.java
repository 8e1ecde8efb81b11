package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.core.answer.SeedRate;
import dev.filial.core.number.Fraction;
import dev.filial.core.trial.Proportion;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * How a rate is typed: {@code 72%} is taken as certain, {@code 18/25} was counted and is not, and
 * {@code recorded} is looked up in the register.
 *
 * @param given the rate as typed; null if it is to be looked up
 */
record RateReading(@Nullable SeedRate given) {

  static Reading<RateReading> of(String what) {
    return (text, bench) -> {
      String typed = text.strip().toLowerCase(Locale.ROOT);
      if (typed.equals("recorded")) {
        return new RateReading(null);
      }
      String[] counts = typed.split("/|\\s+of\\s+", -1);
      if (counts.length == 2 && counts[0].matches("\\d{1,6}") && counts[1].matches("\\d{1,6}")) {
        return new RateReading(
            SeedRate.counted(
                what,
                new Proportion(Integer.parseInt(counts[0]), Integer.parseInt(counts[1])),
                "counted, as given"));
      }
      Fraction share = RecordReadings.SHARE.read(text, bench);
      if (share.isZero()) {
        throw new IllegalArgumentException(
            "a " + what + " of 0: then no number of seeds is enough");
      }
      return new RateReading(SeedRate.given(what, share));
    };
  }

  /** The rate, looked up where that was asked for. */
  Optional<SeedRate> or(Function<String, Optional<SeedRate>> recorded, String what) {
    return given == null ? recorded.apply(what) : Optional.of(given);
  }
}

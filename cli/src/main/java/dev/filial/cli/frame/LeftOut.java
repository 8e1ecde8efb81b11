package dev.filial.cli.frame;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A thing that has to be known and may be left out where somebody can be asked for it. */
public final class LeftOut {

  private LeftOut() {}

  /**
   * What was given, else what is answered to {@code question}.
   *
   * @param label how help calls it
   * @param suggested what an empty answer means, or null when it means nothing
   * @throws Trouble if it was left out and nobody can be asked
   */
  public static <T> T orAsk(
      Optional<T> given,
      String label,
      String question,
      @Nullable String suggested,
      Reading<T> reading,
      Bench bench) {
    if (given.isPresent()) {
      return given.get();
    }
    while (true) {
      String answer =
          bench
              .asker()
              .ask(question, suggested)
              .orElseThrow(() -> Trouble.usage(label + " is missing", ""));
      try {
        return reading.read(answer, bench);
      } catch (IllegalArgumentException e) {
        bench.terminal().err().print(e.getMessage() + ".\n");
      }
    }
  }
}

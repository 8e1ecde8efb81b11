package dev.filial.core.inference;

import dev.filial.core.inference.factor.StuckException;
import java.util.Locale;

/** Odds that cannot be sampled: the draws get stuck, or several runs do not agree. */
public final class UnsteadyDrawsException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  UnsteadyDrawsException(double least, double most) {
    super(
        String.format(
            Locale.ROOT,
            "the odds were drawn three times, and one chance came out between %.3f and %.3f: the"
                + " draws get stuck, and none of them can be believed",
            least,
            most));
  }

  UnsteadyDrawsException(StuckException cause) {
    super(
        "the odds cannot be drawn either: what these plants hand on is of too many kinds to be"
            + " drawn together, and drawn piece by piece it would stay as it began",
        cause);
  }
}

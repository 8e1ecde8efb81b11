package dev.filial.core.inference;

import java.util.Locale;

/** Odds that were sampled in several runs, which do not agree: none of them can be believed. */
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
}

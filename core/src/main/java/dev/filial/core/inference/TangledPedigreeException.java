package dev.filial.core.inference;

import dev.filial.core.inference.factor.TooTangledException;
import java.util.Locale;

/** A pedigree whose odds would cost more than the stated bound to work out exactly. */
public final class TangledPedigreeException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final double entries;
  private final int width;

  TangledPedigreeException(TooTangledException cause) {
    super(
        "the plants that bear on this are crossed among each other so closely that the exact odds"
            + " take tables of "
            + String.format(Locale.ROOT, "%.3g", cause.entries())
            + " numbers, "
            + (cause.width() + 1)
            + " unknowns together; at most "
            + cause.bound()
            + " are gone through",
        cause);
    entries = cause.entries();
    width = cause.width();
  }

  /** How many numbers the tables would have. */
  public double entries() {
    return entries;
  }

  /** The most unknowns that would have to be looked at together, less one. */
  public int width() {
    return width;
  }
}

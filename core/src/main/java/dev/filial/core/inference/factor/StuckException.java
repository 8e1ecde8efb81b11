package dev.filial.core.inference.factor;

/**
 * A graph that cannot be drawn from: a table that ties its variables to each other is too large to
 * be drawn whole, and drawn piece by piece they would never leave the state that they began in.
 */
public final class StuckException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  StuckException(int entries, double bound) {
    super(
        "a table of "
            + entries
            + " entries ties its variables to each other, and in a block of "
            + (long) bound
            + " it cannot be drawn whole; drawn in parts they would stay as they began");
  }
}

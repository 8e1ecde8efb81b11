package dev.filial.core.register;

/**
 * The refusal of a cross whose parent has an odd number of chromosome sets, where nobody said how
 * many of them the gamete carried.
 */
public final class UnstatedGameteRefusal extends RegisterRefusal {

  private static final long serialVersionUID = 1L;

  private final boolean egg;

  UnstatedGameteRefusal(String message, boolean egg) {
    super(message);
    this.egg = egg;
  }

  /** Whether it is the egg of which that is to be said; otherwise the pollen. */
  public boolean isEgg() {
    return egg;
  }
}

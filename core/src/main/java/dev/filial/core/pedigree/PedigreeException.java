package dev.filial.core.pedigree;

/**
 * Records that cannot be a pedigree: two plants of one code, a parent nobody recorded, a plant
 * among its own ancestors, shares that do not sum to one, gametes that cannot be. The message names
 * the plants and says what to do.
 */
public final class PedigreeException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** An exception with this message, which names the plants and the remedy. */
  public PedigreeException(String message) {
    super(message);
  }
}

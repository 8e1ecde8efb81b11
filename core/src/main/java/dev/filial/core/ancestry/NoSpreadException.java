package dev.filial.core.ancestry;

/** The spread of a plant's genome shares cannot be worked out; the message says why. */
public final class NoSpreadException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  NoSpreadException(String message) {
    super(message);
  }
}

package dev.filial.core.spreadsheet;

/**
 * A file that cannot be taken for a table, or a mapping that does not fit it: nothing can be said
 * row by row. The message names the thing and what to do.
 */
public final class SheetException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** With its message. */
  public SheetException(String message) {
    super(message);
  }

  /** One that comes of another failure. */
  public SheetException(String message, Throwable cause) {
    super(message, cause);
  }
}

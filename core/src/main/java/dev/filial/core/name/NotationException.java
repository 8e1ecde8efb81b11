package dev.filial.core.name;

/**
 * A text that is no pedigree notation. The message says at which column, what is wrong and what to
 * write, and shows the text with a caret under the place.
 */
public final class NotationException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final int column;

  NotationException(String text, int column, String message) {
    super("column " + column + ": " + message + Caret.under(text, column));
    this.column = column;
  }

  /** Where in the text it is, in characters (code points) from 1. */
  public int column() {
    return column;
  }
}

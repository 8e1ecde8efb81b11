package dev.filial.core.name;

/** A text that is no code. The message says what is wrong with it and what to write instead. */
public class CodeException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** An exception with this message, written for the person who typed the code. */
  public CodeException(String message) {
    super(message);
  }
}

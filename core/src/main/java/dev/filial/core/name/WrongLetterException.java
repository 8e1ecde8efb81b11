package dev.filial.core.name;

/**
 * A code whose check letter does not go with its digits: a digit or the letter was misread, or
 * mistyped. {@link Slips} finds the registered codes that may have been meant.
 */
public final class WrongLetterException extends CodeException {
  private static final long serialVersionUID = 1L;

  private final String digitsSay;
  private final char written;

  WrongLetterException(String typed, Code digitsSay, char written) {
    super(
        Quote.of(typed)
            + ": the letter "
            + written
            + " does not go with the digits "
            + digitsSay.digits()
            + (CheckLetter.FILIAL.isLetter(written)
                ? ", whose letter is "
                : " (and is no check letter); theirs is ")
            + digitsSay.letter()
            + ". Look at the tag again: if the digits are right, write "
            + digitsSay.text()
            + ".");
    this.digitsSay = digitsSay.text();
    this.written = written;
  }

  /** The code as its digits and suffix give it, with the letter that belongs to them. */
  public Code code() {
    return Code.parse(digitsSay);
  }

  /** The letter that was written, A to Z. */
  public char written() {
    return written;
  }
}

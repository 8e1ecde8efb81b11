package dev.filial.cli.command;

import dev.filial.cli.frame.Trouble;
import dev.filial.core.name.Code;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** A code that the grower gave out already, on a page of the notebook or on a tag. */
final class StatedCode {

  private static final Pattern SUFFIX = Pattern.compile("(?i)[HPS]\\d{1,9}");

  private StatedCode() {}

  /**
   * Reads a suffix alone ({@code P3}) or a whole code.
   *
   * @throws dev.filial.core.name.CodeException if it is neither
   */
  static Code read(Code whole, String text) {
    String typed = text.strip();
    return Code.parse(SUFFIX.matcher(typed).matches() ? whole.whole().text() + " " + typed : typed);
  }

  /**
   * The code stated for something new under {@code whole}, else the next free one.
   *
   * @param next the next free code
   * @param fits whether a code is of the right sort
   * @throws Trouble if the stated one belongs elsewhere
   */
  static Code or(Optional<String> stated, Code next, Predicate<Code> fits) {
    if (stated.isEmpty()) {
      return next;
    }
    Code code = read(next, stated.get());
    if (!code.whole().equals(next.whole()) || !fits.test(code)) {
      throw Trouble.usage(
          code.text() + " cannot be the code of this",
          "It is written like " + next.text() + ", the next that is free.");
    }
    return code;
  }

  /**
   * The whole code stated for something new, else the next free one.
   *
   * @throws dev.filial.core.name.CodeException if it is no code
   */
  static Code orWhole(Optional<String> stated, Code next) {
    return stated.map(Code::parse).orElse(next);
  }
}

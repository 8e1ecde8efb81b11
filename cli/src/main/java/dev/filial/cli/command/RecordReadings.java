package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;

/** How the words of what is recorded become values. */
final class RecordReadings {

  /** A code as people type it. */
  static final Reading<Code> CODE = (text, bench) -> Code.parse(text);

  /** 5%, 1/20 or 0.05: a part of a whole. */
  static final Reading<Fraction> SHARE =
      (text, bench) -> {
        Fraction share = Fraction.parse(text);
        if (share.signum() < 0 || share.compareTo(Fraction.ONE) > 0) {
          throw new IllegalArgumentException(
              "\"" + text + "\" is no part of a whole; write 5%, 1/20 or 0.05");
        }
        return share;
      };

  /** A number, whole or with decimals. */
  static final Reading<BigDecimal> NUMBER =
      (text, bench) -> {
        try {
          return new BigDecimal(text.strip());
        } catch (NumberFormatException e) {
          throw new IllegalArgumentException("\"" + text + "\" is not a number", e);
        }
      };

  /** Words of any kind on one line, at least one. */
  static final Reading<String> LINE = (text, bench) -> line(text);

  /** A number of at most nine digits before and after the point, not negative. */
  static final Reading<BigDecimal> DECIMAL =
      (text, bench) -> {
        if (!text.matches("\\d{1,9}(\\.\\d{1,9})?")) {
          throw new IllegalArgumentException(
              "\"" + text + "\" is not a number; write 120 or 3.5, without the unit");
        }
        return new BigDecimal(text);
      };

  private RecordReadings() {}

  /**
   * The text without the spaces around it.
   *
   * @throws IllegalArgumentException if nothing is left, or it goes over several lines
   */
  static String line(String text) {
    String line = text.strip();
    if (line.isEmpty()) {
      throw new IllegalArgumentException(
          "there is nothing in it; leave it out, or write something");
    }
    if (line.codePoints().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException(
          "it has a line break or another control character in it; write it on one line");
    }
    if (line.codePoints().anyMatch(RecordReadings::turnsText)) {
      throw new IllegalArgumentException(
          "it has a character in it that turns the direction of what follows; leave that out, names"
              + " in Hebrew or Arabic need none");
    }
    return line;
  }

  /** Embeddings, overrides and isolates of the Unicode bidirectional algorithm (UAX 9). */
  private static boolean turnsText(int c) {
    return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  }
}

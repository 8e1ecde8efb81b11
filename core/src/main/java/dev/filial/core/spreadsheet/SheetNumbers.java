package dev.filial.core.spreadsheet;

import dev.filial.core.register.Count;
import dev.filial.core.spreadsheet.Mapping.DecimalSign;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers and counts as spreadsheets write them, with a decimal point or a decimal comma. */
final class SheetNumbers {

  private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,18}");
  private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d{1,18}[.,]\\d{1,18}");

  /** One sign, three digits behind it: thousands to one, thousandths to another. */
  private static final Pattern EITHER = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");

  private static final Pattern GUESSED =
      Pattern.compile("(~|≈|ca\\.?|circa|about|approx\\.?|etwa|ungefähr|rund)\\s*(.+)");

  private final Optional<DecimalSign> decimal;

  SheetNumbers(Optional<DecimalSign> decimal) {
    this.decimal = decimal;
  }

  /**
   * Reads a number.
   *
   * @throws IllegalArgumentException if it is none, or may be two
   */
  BigDecimal number(String text) {
    String written = text.strip().replace("\u00A0", "").replace("\u202F", "");
    if (WHOLE.matcher(written).matches()) {
      return new BigDecimal(written);
    }
    if (decimal.isEmpty()) {
      if (EITHER.matcher(written).matches()) {
        throw new IllegalArgumentException(
            "\""
                + text
                + "\" may be "
                + written.replaceAll("[.,]", "")
                + " or "
                + written.replace(',', '.')
                + "; say in the mapping which: decimal = comma, or decimal = point");
      }
      if (DECIMAL.matcher(written).matches()) {
        return new BigDecimal(written.replace(',', '.'));
      }
    } else {
      DecimalSign sign = decimal.get();
      String plain =
          written.matches(
                  "[+-]?\\d{1,3}(\\" + sign.thousands() + "\\d{3})+(\\" + sign.sign() + "\\d+)?")
              ? written.replace(String.valueOf(sign.thousands()), "")
              : written;
      plain = plain.replace(sign.sign(), '.');
      boolean other = written.indexOf(sign.thousands()) >= 0 && plain.equals(written);
      if (!other && (WHOLE.matcher(plain).matches() || DECIMAL.matcher(plain).matches())) {
        return new BigDecimal(plain);
      }
    }
    throw new IllegalArgumentException("\"" + text + "\" is no number; write 12 or 12.5");
  }

  /**
   * Reads a count: a whole number, {@code ~80} or {@code ca. 80}, {@code few}, {@code many}, {@code
   * ?}, these two in German too.
   *
   * @throws IllegalArgumentException if it is none of these, or below 0
   */
  Count count(String text) {
    String written = text.strip().toLowerCase(Locale.ROOT);
    if (WHOLE.matcher(written).matches()) {
      return Count.of(Long.parseLong(written));
    }
    if (written.equals("wenige") || written.equals("viele")) {
      return written.equals("viele") ? Count.many() : Count.few();
    }
    if (written.equals("few") || written.equals("many") || written.equals("?")) {
      return Count.parse(written);
    }
    var guessed = GUESSED.matcher(written);
    boolean isGuess = guessed.matches();
    BigDecimal number;
    try {
      number = number(isGuess ? guessed.group(2) : written);
    } catch (IllegalArgumentException e) {
      if (String.valueOf(e.getMessage()).contains(" may be ")) {
        throw e;
      }
      return Count.parse(text); // says what a count is
    }
    if (number.stripTrailingZeros().scale() > 0) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not a whole number; seeds and seedlings are counted in ones");
    }
    return isGuess ? Count.about(number.longValueExact()) : Count.of(number.longValueExact());
  }
}

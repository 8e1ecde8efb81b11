package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.label.Size;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How lengths and sizes on paper are read. */
final class PaperReadings {

  private static final String NUMBER = "(\\d{1,4}(?:[.,]\\d{1,3})?)";
  private static final Pattern ONE = Pattern.compile(NUMBER + "\\s*(?:mm)?");
  private static final Pattern TWO =
      Pattern.compile(NUMBER + "\\s*(?:mm)?\\s*[x×*]\\s*" + NUMBER + "\\s*(?:mm)?");
  private static final Map<String, Size> SHEETS =
      Map.of("a4", Size.A4, "a5", Size.A5, "letter", Size.LETTER);

  /** A length in millimetres, 0 or more. */
  static final Reading<Double> LENGTH = (text, bench) -> length(text);

  /** A width and a height in millimetres. */
  static final Reading<Size> SIZE = (text, bench) -> size(text);

  /** A sheet by its name, or by its width and height. */
  static final Reading<Size> SHEET =
      new Reading<>() {
        @Override
        public Size read(String text, Bench bench) {
          Size named = SHEETS.get(plain(text));
          if (named != null) {
            return named;
          }
          try {
            return size(text);
          } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(e.getMessage() + "; or a4, a5 or letter", e);
          }
        }

        @Override
        public List<String> candidates() {
          return SHEETS.keySet().stream().sorted().toList();
        }
      };

  private PaperReadings() {}

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  private static double length(String text) {
    Matcher matcher = ONE.matcher(plain(text));
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no length in millimetres; write it as 8 or 8.5");
    }
    return number(matcher.group(1));
  }

  private static Size size(String text) {
    Matcher matcher = TWO.matcher(plain(text));
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no width and height in millimetres; write them as 50x25");
    }
    return new Size(number(matcher.group(1)), number(matcher.group(2)));
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }
}

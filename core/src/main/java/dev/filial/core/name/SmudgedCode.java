package dev.filial.core.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A code of which not every character can be read: {@code _} stands for each unreadable one, as in
 * {@code 26-0_3E}, {@code 2_-013E}, {@code 26-013_} or {@code 26-013E-_}.
 *
 * <p>Every character of the running number has to be there, at least three, so that it is known how
 * many are missing; one of which every digit can be read may lack its zeros where a letter or a
 * suffix follows, as {@code 26-4-_}. A {@code _} at the end of the number may be the letter or,
 * when three characters stand before it, a digit; one at the beginning of a suffix may be a digit
 * or P, H or S. Both are tried.
 */
public final class SmudgedCode {

  /** The most combinations of characters that {@link #candidates} goes through. */
  public static final int MOST = 100_000;

  private static final Pattern SHAPE =
      Pattern.compile(
          "([\\d_]{2})(?:[- ]?([\\d_]{3,9})|[- ](\\d{1,2})(?=[A-Z]|[- ]))([A-Z_]?)(?:[- ]([PHS]?)([\\d_]{1,9}))?");

  /** One way to take the pattern apart. */
  private record Reading(
      String year, String running, Optional<Character> letter, String kind, String suffix) {

    double combinations() {
      String all = year + running + suffix;
      return Math.pow(10, (int) all.chars().filter(c -> c == '_').count());
    }

    boolean matches(Code code) {
      String digits = code.digits();
      String codeSuffix = code.part().suffix();
      return fits(year, digits.substring(0, 2))
          && fits(running, digits.substring(3))
          && (letter.isEmpty() || letter.get() == code.letter())
          && fits(kind + suffix, codeSuffix.isEmpty() ? "" : codeSuffix.substring(1));
    }

    private static boolean fits(String pattern, String text) {
      return pattern.length() == text.length()
          && IntStream.range(0, text.length())
              .allMatch(i -> pattern.charAt(i) == '_' || pattern.charAt(i) == text.charAt(i));
    }
  }

  private final String text;
  private final List<Reading> readings;

  private SmudgedCode(String text, List<Reading> readings) {
    this.text = text;
    this.readings = readings;
  }

  /**
   * Reads a pattern. A code without any {@code _} is one too.
   *
   * @throws CodeException if the pattern cannot be that of a code
   */
  public static SmudgedCode parse(String text) {
    String plain = CodeReader.plain(text);
    Matcher m = SHAPE.matcher(plain);
    if (!m.matches()) {
      throw new CodeException(
          Quote.of(text)
              + ": not the pattern of a code. Write the code with one _ for each character that"
              + " cannot be read, at least three for the running number, as 26-0_3, 2_-013E,"
              + " 26-013_ or 26-013E-_.");
    }
    return new SmudgedCode(plain, readings(m));
  }

  private static List<Reading> readings(Matcher m) {
    String running =
        m.group(2) == null ? "0".repeat(3 - m.group(3).length()) + m.group(3) : m.group(2);
    String last = m.group(4);
    List<Reading> all = new ArrayList<>();
    Optional<Character> letter =
        last.isEmpty() || last.equals("_") ? Optional.empty() : Optional.of(last.charAt(0));
    addSuffixes(all, m, running, letter);
    // The pattern of digits takes a _ at the end; it may as well be the letter.
    if (last.isEmpty() && running.length() > 3 && running.endsWith("_")) {
      addSuffixes(all, m, running.substring(0, running.length() - 1), Optional.empty());
    }
    return List.copyOf(all);
  }

  private static void addSuffixes(
      List<Reading> all, Matcher m, String running, Optional<Character> letter) {
    String year = m.group(1);
    if (m.group(6) == null) {
      all.add(new Reading(year, running, letter, "", ""));
      return;
    }
    String kind = m.group(5);
    String suffix = m.group(6);
    all.add(new Reading(year, running, letter, kind, suffix));
    if (kind.isEmpty() && suffix.startsWith("_") && suffix.length() > 1) {
      for (String other : List.of("P", "H", "S")) {
        all.add(new Reading(year, running, letter, other, suffix.substring(1)));
      }
    }
  }

  /**
   * Whether {@code code} is one of those that the tag may have shown. For going through a register
   * when too little can be read to go through the combinations.
   */
  public boolean matches(Code code) {
    return readings.stream().anyMatch(reading -> reading.matches(code));
  }

  /** How many combinations of characters {@link #candidates} would go through. */
  public double combinations() {
    return readings.stream().mapToDouble(Reading::combinations).sum();
  }

  /**
   * The codes that the tag may have shown, in order: those that fit what can be read, whose letter
   * is right, and that {@code registered} accepts.
   *
   * @throws CodeException if so little can be read that more than {@link #MOST} combinations would
   *     have to be tried
   */
  public List<Code> candidates(Predicate<Code> registered) {
    if (combinations() > MOST) {
      throw new CodeException(
          text
              + ": too little can be read; "
              + String.format(Locale.ROOT, "%,.0f", combinations())
              + " codes would have to be tried, and "
              + String.format(Locale.ROOT, "%,d", MOST)
              + " is the most. Make out one more character, or look for the plant by its name or"
              + " place.");
    }
    return readings.stream()
        .flatMap(reading -> spelledOut(reading).stream())
        .distinct()
        .filter(registered)
        .sorted()
        .toList();
  }

  private static List<Code> spelledOut(Reading reading) {
    List<Code> codes = new ArrayList<>();
    for (String year : digits(reading.year())) {
      for (String running : digits(reading.running())) {
        if (!CodeReader.Typed.isRunningNumber(running)) {
          continue;
        }
        Code whole = Code.of(Integer.parseInt(year), Long.parseLong(running));
        if (reading.letter().isPresent() && reading.letter().get() != whole.letter()) {
          continue;
        }
        if (reading.suffix().isEmpty()) {
          codes.add(whole);
          continue;
        }
        for (String suffix : digits(reading.suffix())) {
          if (suffix.charAt(0) != '0') {
            codes.add(part(whole, reading.kind(), Integer.parseInt(suffix)));
          }
        }
      }
    }
    return codes;
  }

  private static Code part(Code whole, String kind, int number) {
    return switch (kind) {
      case "P" -> whole.group(number);
      case "H" -> whole.lot(number);
      case "S" -> whole.sowing(number);
      default -> whole.seedling(number);
    };
  }

  /** The digit strings that a pattern stands for. */
  private static List<String> digits(String pattern) {
    List<String> all = List.of("");
    for (int i = 0; i < pattern.length(); i++) {
      char c = pattern.charAt(i);
      List<String> longer = new ArrayList<>();
      for (String start : all) {
        if (c == '_') {
          for (char digit = '0'; digit <= '9'; digit++) {
            longer.add(start + digit);
          }
        } else {
          longer.add(start + c);
        }
      }
      all = longer;
    }
    return all;
  }

  /** The pattern, in capitals. */
  @Override
  public String toString() {
    return text;
  }
}

package dev.filial.cli.frame;

import dev.filial.core.register.PartialDate;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.Year;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates as people write them: {@code today}, {@code yesterday}, {@code 4 mar}, {@code mar 4},
 * {@code 4 march 26}, {@code 2026-03-04}.
 *
 * <p>The month is a word of at least three letters or the ISO form is used; {@code 4/3} is the
 * fourth of March to one reader and the third of April to another, and is refused. A day without a
 * year is the most recent such day that is not in the future, and asked for with its year where
 * that is more than ten months ago. A year of two digits is the latest year ending so that is not
 * after the current one. Names of months are English.
 */
public final class DateWords {

  private static final Pattern ISO_DAY = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
  private static final Pattern ISO_MONTH = Pattern.compile("(\\d{4})-(\\d{1,2})");
  private static final Pattern YEAR = Pattern.compile("\\d{4}");
  private static final Pattern NUMBERS_ONLY =
      Pattern.compile("\\d{1,4}[-./ ]\\d{1,2}([-./ ]\\d{1,4})?");
  private static final Pattern TOKEN = Pattern.compile("\\d+|[^\\s\\d.,/-]+");

  private static final int LATEST_LEAP_YEAR_SEARCH = 8;

  /** A day of which no year was said lies no further back, or it is asked which year is meant. */
  private static final int MOST_MONTHS_BACK = 10;

  private final LocalDate today;

  /** Reads dates as seen from {@code today}. */
  public DateWords(LocalDate today) {
    this.today = today;
  }

  /**
   * The day that {@code text} means.
   *
   * @throws IllegalArgumentException if it means none, or might mean two; the message says what to
   *     write
   */
  public LocalDate day(String text) {
    LocalDate day = readDay(text);
    requireNear(text, day);
    return day;
  }

  /** A year typed wrong gives a code of that year, which is never free again. */
  private void requireNear(String text, LocalDate day) {
    if (day.isAfter(today.plusYears(1))) {
      throw new IllegalArgumentException(
          "\"" + text.strip() + "\" is far ahead of today; look at the year again");
    }
    if (day.isBefore(today.minusYears(100))) {
      throw new IllegalArgumentException(
          "\"" + text.strip() + "\" is a hundred years ago; look at the year again");
    }
  }

  private LocalDate readDay(String text) {
    String words = normalised(text);
    if (words.equals("today")) {
      return today;
    }
    if (words.equals("yesterday")) {
      return today.minusDays(1);
    }
    Matcher iso = ISO_DAY.matcher(words);
    if (iso.matches()) {
      return dayOf(text, number(iso, 1), number(iso, 2), number(iso, 3));
    }
    refuseBareNumbers(text, words);
    List<String> tokens = tokens(words);
    int monthAt = monthPosition(tokens);
    if (tokens.size() < 2 || tokens.size() > 3 || monthAt < 0 || monthAt > 1) {
      throw notADay(text);
    }
    int month = month(tokens.get(monthAt));
    String dayOfMonth = tokens.get(1 - monthAt);
    if (dayOfMonth.length() > 2) {
      throw notADay(text);
    }
    if (tokens.size() == 2) {
      return latest(text, month, Integer.parseInt(dayOfMonth));
    }
    return dayOf(text, year(text, tokens.get(2)), month, Integer.parseInt(dayOfMonth));
  }

  /**
   * The day, month or year that {@code text} means: as {@link #day}, and {@code 2024}, {@code
   * 2024-05}, {@code may 2024}.
   *
   * @throws IllegalArgumentException if it means none, or might mean two; the message says what to
   *     write
   */
  public PartialDate partial(String text) {
    PartialDate date = readPartial(text);
    requireNear(text, date.earliest());
    return date;
  }

  private PartialDate readPartial(String text) {
    String words = normalised(text);
    if (YEAR.matcher(words).matches()) {
      return new PartialDate(Integer.parseInt(words), 0, 0);
    }
    Matcher iso = ISO_MONTH.matcher(words);
    if (iso.matches()) {
      return monthOf(text, number(iso, 1), number(iso, 2));
    }
    List<String> tokens = tokens(words);
    if (tokens.size() == 2 && monthPosition(tokens) == 0) {
      int month = month(tokens.get(0));
      String number = tokens.get(1);
      if (number.length() == 4) {
        return monthOf(text, Integer.parseInt(number), month);
      }
      String name = shortName(month);
      throw new IllegalArgumentException(
          String.format(
              "\"%s\" could be a day or a month; write %s %s for the day, %s 20%02d for the month",
              text.strip(), number, name, name, Integer.parseInt(number) % 100));
    }
    return PartialDate.of(readDay(text));
  }

  private static String normalised(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  private static int number(Matcher matcher, int group) {
    return Integer.parseInt(matcher.group(group));
  }

  private static List<String> tokens(String words) {
    List<String> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(words);
    while (matcher.find()) {
      tokens.add(matcher.group());
    }
    return tokens;
  }

  /** Which token is the month, if exactly one is a word; the others are then numbers. */
  private static int monthPosition(List<String> tokens) {
    int position = -1;
    for (int i = 0; i < tokens.size(); i++) {
      if (!Character.isDigit(tokens.get(i).charAt(0))) {
        if (position >= 0 || month(tokens.get(i)) == 0) {
          return -1;
        }
        position = i;
      }
    }
    return position;
  }

  /** 1 to 12, or 0 if the word is no month. */
  private static int month(String word) {
    String letters = word.equals("sept") ? "sep" : word;
    if (letters.length() >= 3) {
      for (Month month : Month.values()) {
        if (month.name().toLowerCase(Locale.ROOT).startsWith(letters)) {
          return month.getValue();
        }
      }
    }
    return 0;
  }

  private LocalDate latest(String text, int month, int dayOfMonth) {
    for (int back = 0; back <= LATEST_LEAP_YEAR_SEARCH; back++) {
      int year = today.getYear() - back;
      if (dayOfMonth >= 1 && dayOfMonth <= YearMonth.of(year, month).lengthOfMonth()) {
        LocalDate day = LocalDate.of(year, month, dayOfMonth);
        if (!day.isAfter(today)) {
          requireRecent(text, day);
          return day;
        }
      }
    }
    throw noSuchDay(text, Month.of(month).maxLength(), month);
  }

  /** "28 nov" on the 27th is a slip far more often than a day of last year. */
  private void requireRecent(String text, LocalDate day) {
    if (day.isBefore(today.minusMonths(MOST_MONTHS_BACK))) {
      throw new IllegalArgumentException(
          String.format(
              "\"%s\" is nearly a year ago or more; say the year if that is meant: %s",
              text.strip(), day));
    }
  }

  private int year(String text, String digits) {
    int number = digits.length() <= 4 ? Integer.parseInt(digits) : -1;
    if (digits.length() == 4) {
      return number;
    }
    if (digits.length() != 2) {
      throw notADay(text);
    }
    int year = today.getYear() - today.getYear() % 100 + number;
    return year > today.getYear() ? year - 100 : year;
  }

  private static LocalDate dayOf(String text, int year, int month, int dayOfMonth) {
    try {
      return LocalDate.of(year, month, dayOfMonth);
    } catch (DateTimeException e) {
      if (month < 1 || month > 12) {
        throw noSuchMonth(text, e);
      }
      IllegalArgumentException named =
          noSuchDay(text, YearMonth.of(year, month).lengthOfMonth(), month);
      named.initCause(e);
      throw named;
    }
  }

  private static PartialDate monthOf(String text, int year, int month) {
    try {
      return new PartialDate(year, month, 0);
    } catch (DateTimeException e) {
      throw noSuchMonth(text, e);
    }
  }

  private void refuseBareNumbers(String text, String words) {
    if (!NUMBERS_ONLY.matcher(words).matches()) {
      return;
    }
    List<String> tokens = tokens(words);
    int one = Integer.parseInt(tokens.get(0));
    int other = Integer.parseInt(tokens.get(1));
    if (one >= 1 && one <= 12 && other >= 1 && other <= 12 && one != other) {
      throw new IllegalArgumentException(
          String.format(
              "\"%s\" could be %d %s or %d %s; write the month as a word, as in %d %s, or %s",
              text.strip(),
              one,
              fullName(other),
              other,
              fullName(one),
              one,
              shortName(other),
              Year.of(tokens.size() > 2 ? year(text, tokens.get(2)) : today.getYear())
                  .atMonth(other)
                  .atDay(one)));
    }
    throw new IllegalArgumentException(
        String.format(
            "\"%s\" is a date in figures only; write the month as a word, as in 4 mar, or %s",
            text.strip(), today));
  }

  private static String fullName(int month) {
    return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private static String shortName(int month) {
    return Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH).toLowerCase(Locale.ROOT);
  }

  private static IllegalArgumentException noSuchDay(String text, int days, int month) {
    return new IllegalArgumentException(
        String.format(
            "\"%s\" is not a day: %s has %d days then", text.strip(), fullName(month), days));
  }

  private static IllegalArgumentException noSuchMonth(String text, DateTimeException cause) {
    return new IllegalArgumentException(
        "\"" + text.strip() + "\" is not a date: months go from 01 to 12", cause);
  }

  private IllegalArgumentException notADay(String text) {
    return new IllegalArgumentException(
        String.format(
            "\"%s\" is not a day; write today, yesterday, 4 mar, 4 mar %02d or %s",
            text.strip(), today.getYear() % 100, today));
  }
}

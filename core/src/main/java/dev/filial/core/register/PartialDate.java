package dev.filial.core.register;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A day, a month or a year, as well as the grower knew it: {@code 2024-03-04}, {@code 2024-03} or
 * {@code 2024}.
 *
 * <p>A packet says "2019" and an old notebook "spring"; a date made up to fill the gap would later
 * be read as knowledge.
 *
 * @param year the calendar year, 1700 to 9999
 * @param month 1 to 12, or 0 when unknown
 * @param day 1 to 31, or 0 when unknown; a day without a month is refused
 */
public record PartialDate(int year, int month, int day) {

  private static final Pattern FORM = Pattern.compile("(\\d{4})(?:-(\\d{2})(?:-(\\d{2}))?)?");

  /**
   * Checks that the day exists.
   *
   * @throws IllegalArgumentException if it does not
   */
  public PartialDate {
    if (year < 1700 || year > 9999 || (month == 0 && day != 0)) {
      throw new IllegalArgumentException(
          "no such date: year " + year + ", month " + month + ", day " + day);
    }
    if (month != 0) {
      try {
        LocalDate.of(year, month, day == 0 ? 1 : day);
      } catch (DateTimeException e) {
        throw new IllegalArgumentException("no such date: " + e.getMessage(), e);
      }
    }
  }

  /** The day {@code date}. */
  public static PartialDate of(LocalDate date) {
    return new PartialDate(date.getYear(), date.getMonthValue(), date.getDayOfMonth());
  }

  /**
   * Reads ISO 8601 {@code 2024-03-04}, {@code 2024-03} or {@code 2024}.
   *
   * @throws IllegalArgumentException if the text is not of that form or the day does not exist
   */
  public static PartialDate parse(String text) {
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" is not a date; write 2024-03-04, or 2024-03 or 2024 if no more is known");
    }
    return new PartialDate(
        Integer.parseInt(matcher.group(1)),
        matcher.group(2) == null ? 0 : Integer.parseInt(matcher.group(2)),
        matcher.group(3) == null ? 0 : Integer.parseInt(matcher.group(3)));
  }

  /** The first day that this may have been. */
  public LocalDate earliest() {
    return LocalDate.of(year, month == 0 ? 1 : month, day == 0 ? 1 : day);
  }

  /** The last day that this may have been. */
  public LocalDate latest() {
    if (month == 0) {
      return LocalDate.of(year, 12, 31);
    }
    return day == 0 ? YearMonth.of(year, month).atEndOfMonth() : LocalDate.of(year, month, day);
  }

  /** Whether this was before {@code other} whatever the unknown parts were. */
  public boolean isSurelyBefore(PartialDate other) {
    return latest().isBefore(other.earliest());
  }

  /** ISO 8601, as much as is known. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(10);
    text.append(year);
    if (month != 0) {
      text.append(month < 10 ? "-0" : "-").append(month);
    }
    if (day != 0) {
      text.append(day < 10 ? "-0" : "-").append(day);
    }
    return text.toString();
  }
}

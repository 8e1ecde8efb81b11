package dev.filial.core.register;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Locale;

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

  /**
   * Checks that the day exists.
   *
   * @throws IllegalArgumentException if it does not
   */
  public PartialDate {
    if (year < 1700 || year > 9999) {
      throw new IllegalArgumentException(
          "no such date: " + year + " is not a year from 1700 to 9999");
    }
    if (month == 0 && day != 0) {
      throw new IllegalArgumentException(
          "no such date: year " + year + ", month " + month + ", day " + day);
    }
    if (month != 0) {
      try {
        LocalDate.of(year, month, day == 0 ? 1 : day);
      } catch (DateTimeException e) {
        throw new IllegalArgumentException(
            month < 1 || month > 12
                ? "no such date: there is no month " + month
                : "no such date: "
                    + Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                    + " has no day "
                    + day
                    + (month == 2 && day == 29 ? " in " + year : ""),
            e);
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
    String date = text.strip();
    int length = date.length();
    boolean formed = length == 4 || length == 7 || length == 10;
    for (int i = 0; i < length && formed; i++) {
      char c = date.charAt(i);
      formed = (i == 4 || i == 7) ? c == '-' : (c >= '0' && c <= '9');
    }
    if (!formed) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" is not a date; write 2024-03-04, or 2024-03 or 2024 if no more is known");
    }
    // A month or a day of 00 would pass for one that is not known.
    if (date.startsWith("00", 5) || date.startsWith("00", 8)) {
      throw new IllegalArgumentException("no such date: " + date);
    }
    return new PartialDate(
        Integer.parseInt(date, 0, 4, 10),
        length < 7 ? 0 : Integer.parseInt(date, 5, 7, 10),
        length < 10 ? 0 : Integer.parseInt(date, 8, 10, 10));
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

  /** Within a sentence: {@code on 2024-03-04}, but {@code in 2024-03}. */
  public String inWords() {
    return (day == 0 ? "in " : "on ") + this;
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

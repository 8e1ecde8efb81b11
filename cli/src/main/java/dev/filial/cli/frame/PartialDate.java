package dev.filial.cli.frame;

import java.time.LocalDate;
import java.time.YearMonth;

/**
 * A day, or only a month or a year where no more is known.
 *
 * @param year the year
 * @param month 1 to 12, or 0 if only the year is known
 * @param day the day of the month, or 0 if it is not known
 */
public record PartialDate(int year, int month, int day) {

  /**
   * Checks that the parts make a date.
   *
   * @throws java.time.DateTimeException if there is no such month or day
   * @throws IllegalArgumentException if a day is given without its month
   */
  public PartialDate {
    if (month == 0 && day != 0) {
      throw new IllegalArgumentException("a day without its month");
    }
    if (month != 0) {
      YearMonth.of(year, month);
    }
    if (day != 0) {
      LocalDate.of(year, month, day);
    }
  }

  /** A whole day. */
  public static PartialDate of(LocalDate day) {
    return new PartialDate(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
  }

  /** The first day it can mean. */
  public LocalDate first() {
    return LocalDate.of(year, Math.max(1, month), Math.max(1, day));
  }

  /** The last day it can mean. */
  public LocalDate last() {
    if (day != 0) {
      return first();
    }
    return YearMonth.of(year, month == 0 ? 12 : month).atEndOfMonth();
  }

  /** As ISO 8601 writes it: {@code 2024}, {@code 2024-05} or {@code 2024-05-04}. */
  @Override
  public String toString() {
    String text = String.format("%04d", year);
    if (month != 0) {
      text += String.format("-%02d", month);
    }
    return day == 0 ? text : text + String.format("-%02d", day);
  }
}

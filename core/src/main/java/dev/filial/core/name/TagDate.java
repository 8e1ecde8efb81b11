package dev.filial.core.name;

import java.time.LocalDate;
import java.util.List;

/**
 * A date as it stands on a tag: {@code 4 MAR 26}, or {@code MAR 26} or {@code 2026} where no more
 * is known. The month in letters, because 4/3 is read as April by half the world, in English
 * whatever the computer speaks.
 *
 * @param year the calendar year
 * @param month 1 to 12, or 0 when not known
 * @param day 1 to 31, or 0 when not known
 */
public record TagDate(int year, int month, int day) {
  private static final List<String> MONTHS =
      List.of("JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC");

  /**
   * Checks that month and day can be written.
   *
   * @throws IllegalArgumentException if they cannot
   */
  public TagDate {
    if (month < 0 || month > 12 || day < 0 || day > 31 || (month == 0 && day != 0)) {
      throw new IllegalArgumentException(
          "no such date: year " + year + ", month " + month + ", day " + day);
    }
  }

  /** A date that is known to the day. */
  public static TagDate of(LocalDate date) {
    return new TagDate(date.getYear(), date.getMonthValue(), date.getDayOfMonth());
  }

  /** The date with the last two digits of its year; of a year alone all four. */
  public String text() {
    if (month == 0) {
      return Integer.toString(year);
    }
    int ofCentury = Math.floorMod(year, 100);
    return (day == 0 ? "" : day + " ")
        + MONTHS.get(month - 1)
        + (ofCentury < 10 ? " 0" : " ")
        + ofCentury;
  }
}

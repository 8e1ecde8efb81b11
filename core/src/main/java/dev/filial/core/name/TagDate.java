package dev.filial.core.name;

import java.time.LocalDate;
import java.util.List;

/**
 * A date as it stands on a tag: {@code 4 MAR 26}. The month in letters, because 4/3 is read as
 * April by half the world, in English whatever the computer speaks.
 */
public final class TagDate {
  private static final List<String> MONTHS =
      List.of("JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC");

  private TagDate() {}

  /** The date with the last two digits of its year. */
  public static String text(LocalDate date) {
    int year = Math.floorMod(date.getYear(), 100);
    return date.getDayOfMonth()
        + " "
        + MONTHS.get(date.getMonthValue() - 1)
        + (year < 10 ? " 0" : " ")
        + year;
  }
}

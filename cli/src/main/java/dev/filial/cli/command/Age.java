package dev.filial.cli.command;

import org.jspecify.annotations.Nullable;

/** How old something is, as people say it. */
final class Age {

  private static final double DAYS_A_MONTH = 365.25 / 12;
  private static final int IN_DAYS = 60;
  private static final int IN_MONTHS = 24;

  private Age() {}

  /** As {@code 12 days}, {@code 14 months}, {@code 3 years}: whole ones that have gone by. */
  static String words(long days) {
    if (days < IN_DAYS) {
      return days + (days == 1 ? " day" : " days");
    }
    long months = (long) (days / DAYS_A_MONTH);
    return months < IN_MONTHS ? months + " months" : (months / 12) + " years";
  }

  /** Nothing where it is not known. */
  static String words(@Nullable Long days) {
    return days == null ? "?" : words(days.longValue());
  }
}

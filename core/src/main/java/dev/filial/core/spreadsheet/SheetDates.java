package dev.filial.core.spreadsheet;

import dev.filial.core.register.PartialDate;
import dev.filial.core.spreadsheet.Mapping.DayOrder;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates as spreadsheets write them. {@code 2025-03-04} is always read, and so is {@code 4 Mar 2025}
 * or {@code 4. März 2025}; with points the day stands first ({@code 04.03.2025}), as it does
 * wherever dates are written with points; with slashes the order has to be stated, unless one of
 * the two can only be a day. A month or a year alone will do.
 */
final class SheetDates {

  private static final Pattern THREE =
      Pattern.compile("(\\d{1,4})\\s*([./-])\\s*(\\d{1,2})\\s*\\2\\s*(\\d{2}|\\d{4})");
  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})[./](\\d{1,2})(?:[./](\\d{1,2}))?");
  private static final Pattern MONTH_YEAR = Pattern.compile("(\\d{1,2})[./-](\\d{4})");
  private static final Pattern NAMED =
      Pattern.compile("(?:(\\d{1,2})\\.?[\\s-]*)?(\\p{L}{3,9})\\.?,?[\\s-]*(\\d{2}|\\d{4})");
  private static final Pattern MIDNIGHT =
      Pattern.compile("[T ]\\d{1,2}:\\d{2}(:\\d{2}(\\.0+)?)?Z?$");

  /** The beginnings of the months' names, in English and German. */
  private static final List<List<String>> MONTHS =
      List.of(
          List.of("jan", "jän"),
          List.of("feb"),
          List.of("mar", "mär", "mrz", "maerz"),
          List.of("apr"),
          List.of("may", "mai"),
          List.of("jun"),
          List.of("jul"),
          List.of("aug"),
          List.of("sep"),
          List.of("oct", "okt"),
          List.of("nov"),
          List.of("dec", "dez"));

  private final Optional<DayOrder> order;
  private final int thisYear;

  /**
   * For one table.
   *
   * @param thisYear the year now: a year of two digits is the last one that ends so
   */
  SheetDates(Optional<DayOrder> order, int thisYear) {
    this.order = order;
    this.thisYear = thisYear;
  }

  /**
   * Reads a date.
   *
   * @throws IllegalArgumentException if it is none, there is no such day, or its order may be two
   */
  PartialDate read(String text) {
    String written = text.strip();
    if (isIso(written)) {
      return PartialDate.parse(written);
    }
    written = MIDNIGHT.matcher(written).replaceFirst("");
    if (isIso(written)) {
      return PartialDate.parse(written);
    }
    Matcher yearFirst = YEAR_FIRST.matcher(written);
    if (yearFirst.matches()) {
      return date(
          yearFirst.group(1),
          yearFirst.group(2),
          yearFirst.group(3) == null ? "0" : yearFirst.group(3));
    }
    Matcher three = THREE.matcher(written);
    if (three.matches() && three.group(1).length() <= 2) {
      return ordered(text, three);
    }
    Matcher monthYear = MONTH_YEAR.matcher(written);
    if (monthYear.matches()) {
      return date(monthYear.group(2), monthYear.group(1), "0");
    }
    Matcher named = NAMED.matcher(written);
    if (named.matches() && month(named.group(2)) > 0) {
      return date(
          named.group(3),
          Integer.toString(month(named.group(2))),
          named.group(1) == null ? "0" : named.group(1));
    }
    if (written.matches("\\d{5}")) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" is a spreadsheet's own number for a day; have the column shown as dates and"
              + " save it again");
    }
    throw new IllegalArgumentException(
        "\"" + text + "\" is no date; write 2025-03-04, or 2025-03 or 2025 if no more is known");
  }

  private static boolean isIso(String written) {
    int length = written.length();
    if (length == 4) {
      return written.chars().allMatch(c -> c >= '0' && c <= '9');
    }
    return (length == 7 || length == 10) && written.charAt(4) == '-';
  }

  private PartialDate ordered(String text, Matcher three) {
    int first = Integer.parseInt(three.group(1));
    int second = Integer.parseInt(three.group(3));
    DayOrder stated = order.orElse(null);
    if (stated == DayOrder.YEAR_MONTH_DAY) {
      return date(three.group(1), three.group(3), three.group(4));
    }
    boolean dayFirst;
    if (stated != null) {
      dayFirst = stated == DayOrder.DAY_MONTH_YEAR;
    } else if (three.group(2).equals(".") || first > 12 || first == second) {
      dayFirst = true;
    } else if (second > 12) {
      dayFirst = false;
    } else {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" may be "
              + date(three.group(4), three.group(3), three.group(1))
              + " or "
              + date(three.group(4), three.group(1), three.group(3))
              + "; say in the mapping which: dates = day month year, or dates = month day year");
    }
    return dayFirst
        ? date(three.group(4), three.group(3), three.group(1))
        : date(three.group(4), three.group(1), three.group(3));
  }

  private PartialDate date(String year, String month, String day) {
    int written = Integer.parseInt(year);
    int whole = year.length() > 2 ? written : thisYear - Math.floorMod(thisYear - written, 100);
    int monthNumber = Integer.parseInt(month);
    if (monthNumber == 0) {
      throw new IllegalArgumentException("there is no month 0; write the month as 1 to 12");
    }
    return new PartialDate(whole, monthNumber, Integer.parseInt(day));
  }

  private static int month(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    for (int i = 0; i < MONTHS.size(); i++) {
      for (String beginning : MONTHS.get(i)) {
        if (lower.startsWith(beginning)) {
          return i + 1;
        }
      }
    }
    return 0;
  }
}

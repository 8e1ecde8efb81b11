package dev.filial.core.trial;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How many live on from day to day, where they come under watch on different days and some are lost
 * from sight alive.
 *
 * <p>The product-limit estimate (Kaplan and Meier 1958, Journal of the American Statistical
 * Association 53:457-481): each day on which some died multiplies by the share of those under watch
 * that did not. Who came under watch later counts from then on; on one day they come under watch
 * first, then some die, then some leave.
 *
 * <p>Where all under watch have died and others come under watch later, the product would be 0 for
 * good. The curve then begins anew on the first day from which that never happens again: it is of
 * those alive on that day (left truncation; common remedy, from memory).
 *
 * @param days the days on which anything happened, in order
 */
public record SurvivalCurve(List<Day> days) {

  /** Copies the days. */
  public SurvivalCurve {
    days = List.copyOf(days);
  }

  /**
   * What happened on a day.
   *
   * @param day the day, counted from where all begin, as in days from sowing
   * @param entered how many came under watch
   * @param died how many died
   * @param left how many were last seen alive: given away, or not looked at since
   */
  public record Event(int day, int entered, int died, int left) {}

  /**
   * A day of the curve.
   *
   * @param day the day
   * @param atRisk how many were under watch when some may have died: with those that entered
   * @param entered how many came under watch
   * @param died how many died
   * @param left how many were last seen alive
   * @param surviving the share that lives past this day, 0 to 1; NaN before the curve begins
   * @param error its standard error (Greenwood 1926, Reports on Public Health and Medical Subjects
   *     33, from memory); 0 while none died and when all have; NaN before the curve begins
   */
  public record Day(
      int day, int atRisk, int entered, int died, int left, double surviving, double error) {

    /**
     * An interval for the share that lives on, by the logarithm of its logarithm, so that it stays
     * between 0 and 1 (Kalbfleisch and Prentice, The Statistical Analysis of Failure Time Data,
     * from memory); empty while none died and when all have.
     *
     * @param certainty how often such intervals hold the true one, between 0 and 1, as 0.95
     * @throws IllegalArgumentException if it is not between 0 and 1
     */
    public Optional<Proportion.Interval> interval(double certainty) {
      Proportion.requireCertainty(certainty);
      if (!(surviving > 0 && surviving < 1)) {
        return Optional.empty();
      }
      double z =
          new NormalDistribution(null, 0, 1).inverseCumulativeProbability(0.5 + certainty / 2);
      double reach = z * error / (surviving * Math.log(surviving));
      return Optional.of(
          new Proportion.Interval(
              Math.pow(surviving, Math.exp(-reach)), Math.pow(surviving, Math.exp(reach))));
    }
  }

  /**
   * A week of the curve, from its first to its last day.
   *
   * @param week 1 for the days up to the 7th, 2 for those up to the 14th …
   * @param before how many were under watch when it began
   * @param entered how many came under watch in it
   * @param died how many died in it
   * @param left how many were last seen alive in it
   * @param end the day of the curve that holds at its end
   */
  public record Week(int week, int before, int entered, int died, int left, Day end) {}

  /**
   * From what happened, in any order.
   *
   * @throws IllegalArgumentException if a number or a day is negative, or more die or leave on a
   *     day than were under watch
   */
  public static SurvivalCurve of(Collection<Event> events) {
    Map<Integer, int[]> byDay = new TreeMap<>();
    for (Event event : events) {
      if (event.day() < 0 || event.entered() < 0 || event.died() < 0 || event.left() < 0) {
        throw new IllegalArgumentException(event + "; days and numbers are 0 or more");
      }
      int[] sums = byDay.computeIfAbsent(event.day(), any -> new int[3]);
      sums[0] = Math.addExact(sums[0], event.entered());
      sums[1] = Math.addExact(sums[1], event.died());
      sums[2] = Math.addExact(sums[2], event.left());
    }
    int begin = begin(byDay);
    List<Day> days = new ArrayList<>();
    int watched = 0;
    double surviving = 1;
    double sum = 0;
    for (Map.Entry<Integer, int[]> one : byDay.entrySet()) {
      int[] sums = one.getValue();
      int atRisk = Math.addExact(watched, sums[0]);
      if (sums[1] > atRisk - sums[2]) {
        throw new IllegalArgumentException(
            sums[1]
                + " died and "
                + sums[2]
                + " left on day "
                + one.getKey()
                + ", of "
                + atRisk
                + " under watch; mend one of the numbers");
      }
      boolean begun = one.getKey() >= begin;
      if (begun && sums[1] > 0) {
        surviving *= (double) (atRisk - sums[1]) / atRisk;
        sum += sums[1] / ((double) atRisk * (atRisk - sums[1]));
      }
      days.add(
          new Day(
              one.getKey(),
              atRisk,
              sums[0],
              sums[1],
              sums[2],
              begun ? surviving : Double.NaN,
              !begun ? Double.NaN : surviving == 0 ? 0 : surviving * Math.sqrt(sum)));
      watched = atRisk - sums[1] - sums[2];
    }
    return new SurvivalCurve(days);
  }

  /** The first day from which not all under watch die while others come later. */
  private static int begin(Map<Integer, int[]> byDay) {
    int begin = 0;
    int watched = 0;
    boolean emptied = false;
    for (Map.Entry<Integer, int[]> one : byDay.entrySet()) {
      int[] sums = one.getValue();
      if (emptied && sums[0] > 0) {
        begin = one.getKey();
        emptied = false;
      }
      int atRisk = watched + sums[0];
      emptied |= sums[1] > 0 && sums[1] == atRisk;
      watched = atRisk - sums[1] - sums[2];
    }
    return begin;
  }

  /**
   * The day that the curve begins anew on, alive on which it is the share of; empty if it need not.
   */
  public OptionalInt conditionalFrom() {
    return days.isEmpty() || !Double.isNaN(days.get(0).surviving())
        ? OptionalInt.empty()
        : days.stream()
            .filter(day -> !Double.isNaN(day.surviving()))
            .mapToInt(Day::day)
            .findFirst();
  }

  /** How many came under watch in all. */
  public int entered() {
    return days.stream().mapToInt(Day::entered).sum();
  }

  /** How many died in all. */
  public int died() {
    return days.stream().mapToInt(Day::died).sum();
  }

  /** The weeks in which anything happened. */
  public List<Week> weeks() {
    Map<Integer, List<Day>> byWeek = new TreeMap<>();
    for (Day day : days) {
      byWeek.computeIfAbsent(week(day.day()), any -> new ArrayList<>()).add(day);
    }
    List<Week> weeks = new ArrayList<>();
    byWeek.forEach(
        (week, in) ->
            weeks.add(
                new Week(
                    week,
                    in.get(0).atRisk() - in.get(0).entered(),
                    in.stream().mapToInt(Day::entered).sum(),
                    in.stream().mapToInt(Day::died).sum(),
                    in.stream().mapToInt(Day::left).sum(),
                    in.get(in.size() - 1))));
    return List.copyOf(weeks);
  }

  private static int week(int day) {
    return Math.max(1, (day + 6) / 7);
  }
}

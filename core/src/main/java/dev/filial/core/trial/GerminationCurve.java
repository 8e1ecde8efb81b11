package dev.filial.core.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * How seed came up over the days, as somebody counted it.
 *
 * <p>A count tells only that a seedling came up since the count before, so every time worked out
 * here is that of the counts: each seedling is dated to the count that found it, and comes out late
 * by half the days between counts on the average.
 *
 * @param sown how many seeds were sown
 * @param steps the counts, in order of their days
 */
public record GerminationCurve(int sown, List<Step> steps) {

  /**
   * A count.
   *
   * @param day in days from sowing, 0 or more
   * @param newly how many had come up since the count before, 0 or more
   * @param up how many had come up by then, in all
   */
  public record Step(int day, int newly, int up) {}

  /**
   * The day on which half of those that came up at all were up.
   *
   * @param days in days from sowing
   * @param byFirstCount whether half were up at the first count already: then the days are those of
   *     that count, and all that is known is that it was by then
   */
  public record HalfTime(double days, boolean byFirstCount) {}

  /**
   * Checks that the steps follow each other.
   *
   * @throws IllegalArgumentException if nothing was sown, a day lies before the sowing or does not
   *     follow the one before, the numbers do not add up, or more came up than was sown
   */
  public GerminationCurve {
    steps = List.copyOf(steps);
    if (sown < 1) {
      throw new IllegalArgumentException(sown + " seeds sown; a percentage needs 1 or more");
    }
    int day = -1;
    int up = 0;
    for (Step step : steps) {
      if (step.day() <= day || step.newly() < 0 || step.up() != up + step.newly()) {
        throw new IllegalArgumentException(
            step + " does not follow a count of " + up + " on day " + day);
      }
      day = step.day();
      up = step.up();
    }
    if (up > sown) {
      throw new IllegalArgumentException(up + " came up of " + sown + " sown; mend one of the two");
    }
  }

  /**
   * From how many came up newly at each count.
   *
   * @param newly by the day, in days from sowing; 0 or more each
   * @throws IllegalArgumentException as the constructor
   */
  public static GerminationCurve ofNewly(int sown, Map<Integer, Integer> newly) {
    List<Step> steps = new ArrayList<>();
    int up = 0;
    for (Map.Entry<Integer, Integer> count : new TreeMap<>(newly).entrySet()) {
      up = Math.addExact(up, count.getValue());
      steps.add(new Step(count.getKey(), count.getValue(), up));
    }
    return new GerminationCurve(sown, steps);
  }

  /**
   * From how many had come up by each count, in all.
   *
   * @param up by the day, in days from sowing
   * @throws IllegalArgumentException if a later number is lower, or as the constructor
   */
  public static GerminationCurve of(int sown, Map<Integer, Integer> up) {
    Map<Integer, Integer> newly = new TreeMap<>();
    int before = 0;
    for (Map.Entry<Integer, Integer> count : new TreeMap<>(up).entrySet()) {
      newly.put(count.getKey(), count.getValue() - before);
      before = count.getValue();
    }
    return ofNewly(sown, newly);
  }

  /** This and another sowing together, each seedling by the days from its own sowing. */
  public GerminationCurve plus(GerminationCurve other) {
    Map<Integer, Integer> newly = new TreeMap<>();
    steps.forEach(step -> newly.merge(step.day(), step.newly(), Integer::sum));
    other.steps.forEach(step -> newly.merge(step.day(), step.newly(), Integer::sum));
    return ofNewly(Math.addExact(sown, other.sown), newly);
  }

  /** How many came up in all. */
  public int up() {
    return steps.isEmpty() ? 0 : steps.get(steps.size() - 1).up();
  }

  /**
   * Whether all that came up were up at the first count, so that nothing is known of their days.
   */
  public boolean isAllAtFirstCount() {
    return up() > 0 && steps.get(0).up() == up();
  }

  /** How many came up of those sown: the germination percentage, with its intervals. */
  public Proportion germination() {
    return new Proportion(up(), sown);
  }

  /**
   * The mean germination time, in days: Σ n·t / Σ n, n being how many came up newly at the count on
   * day t (Ellis and Roberts 1981, Seed Science and Technology 9:373-409, from memory); empty if
   * nothing came up.
   */
  public OptionalDouble meanTime() {
    double sum = 0;
    for (Step step : steps) {
      sum += (double) step.newly() * step.day();
    }
    return up() == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / up());
  }

  /**
   * The standard deviation of the germination time, in days: √(Σ n·(t − mean)² / (Σ n − 1)); empty
   * if fewer than two came up.
   */
  public OptionalDouble deviation() {
    if (up() < 2) {
      return OptionalDouble.empty();
    }
    double mean = meanTime().orElseThrow();
    double squares = 0;
    for (Step step : steps) {
      squares += step.newly() * (step.day() - mean) * (step.day() - mean);
    }
    return OptionalDouble.of(Math.sqrt(squares / (up() - 1)));
  }

  /**
   * T50, the days until half of those that came up at all were up: tᵢ + (N/2 − nᵢ)(tⱼ − tᵢ)/(nⱼ −
   * nᵢ), nᵢ and nⱼ being the numbers up at the counts on days tᵢ and tⱼ between which N/2 lies
   * (Coolbear, Francis and Grierson 1984, Journal of Experimental Botany 35:1609-1617, in the form
   * of Farooq and others 2005, Journal of Integrative Plant Biology 47:187-193, both from memory).
   * Where half were up at the first count already nobody knows when, and its day is an upper bound.
   * Empty if nothing came up.
   */
  public Optional<HalfTime> halfTime() {
    if (up() == 0) {
      return Optional.empty();
    }
    double half = up() / 2.0;
    int dayBefore = 0;
    int upBefore = 0;
    for (Step step : steps) {
      if (step.up() >= half) {
        if (step.equals(steps.get(0))) {
          return Optional.of(new HalfTime(step.day(), true));
        }
        double days = dayBefore + (half - upBefore) * (step.day() - dayBefore) / step.newly();
        return Optional.of(new HalfTime(days, false));
      }
      dayBefore = step.day();
      upBefore = step.up();
    }
    return Optional.empty();
  }

  /**
   * T50 of several sowings together, each seedling by the days from its own sowing. How many were
   * up in all is known only of a day on which each of them was counted, or between two of whose
   * counts no more came up; so the line is drawn between such days alone, and where half were up on
   * the first of them already, its day is an upper bound. Of sowings that were counted on the same
   * days it is that of {@link #plus}. Empty if nothing came up.
   */
  public static Optional<HalfTime> halfTime(List<GerminationCurve> together) {
    TreeMap<Integer, Integer> up = new TreeMap<>();
    together.forEach(curve -> curve.steps.forEach(step -> up.put(step.day(), 0)));
    int sown = 0;
    for (GerminationCurve curve : together) {
      sown = Math.addExact(sown, curve.sown);
      up.keySet().removeIf(day -> curve.upAfter(day) != curve.upBy(day));
      up.replaceAll((day, others) -> others + curve.upBy(day));
    }
    return sown == 0 ? Optional.empty() : of(sown, up).halfTime();
  }

  /** How many were up at the last count to that day. */
  private int upBy(int day) {
    int by = 0;
    for (Step step : steps) {
      by = step.day() <= day ? step.up() : by;
    }
    return by;
  }

  /** How many were up at the first count from that day on; after the last, as many as at that. */
  private int upAfter(int day) {
    for (Step step : steps) {
      if (step.day() >= day) {
        return step.up();
      }
    }
    return up();
  }

  /**
   * The speed of germination, in seedlings a day: Σ n/t, n being how many came up newly at the
   * count on day t (Maguire 1962, Crop Science 2:176-177, from memory). It rises with the number
   * sown, so that only sowings of one size are compared by it. Empty if some were up on the day of
   * sowing already.
   */
  public OptionalDouble speed() {
    double sum = 0;
    for (Step step : steps) {
      if (step.day() == 0 && step.newly() > 0) {
        return OptionalDouble.empty();
      }
      sum += step.newly() == 0 ? 0 : (double) step.newly() / step.day();
    }
    return OptionalDouble.of(sum);
  }
}

package dev.filial.core.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * The mean of what was measured on some plants of a family, and how they are spread about it.
 *
 * @param number how many were measured, 1 or more
 * @param mean their mean
 * @param squares the sum of the squares of what each is off the mean
 * @param least the smallest
 * @param most the greatest
 */
public record SampleMean(int number, double mean, double squares, double least, double most) {

  private static final double ACCURACY = 1e-12;

  /**
   * Of some values.
   *
   * @throws IllegalArgumentException if there is none, or one is no finite number
   */
  public static SampleMean of(List<Double> values) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException("the mean of nothing; measure one plant at least");
    }
    double sum = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("a measurement of " + value + "; give a number");
      }
      sum += value;
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    double mean = sum / values.size();
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return new SampleMean(values.size(), mean, squares, least, most);
  }

  /** The standard deviation, by one less than their number; empty for one alone. */
  public OptionalDouble deviation() {
    return number < 2
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.sqrt(squares / (number - 1)));
  }

  /** The standard error of the mean; empty for one alone. */
  public OptionalDouble error() {
    return number < 2
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.sqrt(squares / (number - 1) / number));
  }

  /**
   * An interval for the mean of all such plants, by Student's t (Student 1908, Biometrika 6:1-25);
   * empty for one alone. Taken to be a random sample of normally distributed values.
   *
   * @param certainty how often such intervals hold the true one, between 0 and 1, as 0.95
   * @throws IllegalArgumentException if it is not between 0 and 1
   */
  public Optional<Ends> interval(double certainty) {
    Proportion.requireCertainty(certainty);
    if (number < 2) {
      return Optional.empty();
    }
    double reach =
        error().orElseThrow()
            * new TDistribution(null, number - 1, ACCURACY)
                .inverseCumulativeProbability(0.5 + certainty / 2);
    return Optional.of(new Ends(mean - reach, mean + reach));
  }

  /**
   * An interval.
   *
   * @param lower its lower end, in the unit of what was measured
   * @param upper its upper end
   */
  public record Ends(double lower, double upper) {
    /**
     * The part of it from {@code least} to {@code most}, between which the mean is known to lie.
     */
    public Ends within(double least, double most) {
      return new Ends(Math.max(least, lower), Math.min(most, upper));
    }

    /** The same shifted down by that much: of a difference from what is known. */
    public Ends less(double known) {
      return new Ends(lower - known, upper - known);
    }
  }
}

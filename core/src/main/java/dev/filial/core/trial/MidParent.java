package dev.filial.core.trial;

import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * The regression of family means on the mid-parent value, for a trait that is measured and has no
 * known gene. No gene model stands behind this: a prediction is what earlier families did carried
 * forward, not the odds of a cross.
 *
 * <p>Least squares; the slope was read as regression towards the mean by Galton 1886 (Journal of
 * the Anthropological Institute 15:246-263), and as heritability in the narrow sense by Falconer
 * and Mackay, Introduction to Quantitative Genetics (from memory). So it may be read only with
 * caution: if parents and families were raised alike, the parents were not picked for their own
 * families, and these crosses are of one population. Of crosses between species it is no more than
 * a line through what was seen.
 */
public final class MidParent {

  private static final double ACCURACY = 1e-12;

  private final boolean bySize;
  private final int families;
  private final double weight;
  private final double meanMidParent;
  private final double least;
  private final double most;
  private final double squares;
  private final Line line;

  /**
   * One family that was measured.
   *
   * @param midParent the mean of both parents' values
   * @param mean the mean of its seedlings
   * @param size how many seedlings were measured
   */
  public record Family(double midParent, double mean, long size) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a value is no finite number or the size is below 1
     */
    public Family {
      if (!Double.isFinite(midParent) || !Double.isFinite(mean) || size < 1) {
        throw new IllegalArgumentException(
            "a family of "
                + size
                + " with a mean of "
                + mean
                + " from a mid-parent of "
                + midParent
                + "; give numbers, and a size of 1 or more");
      }
    }

    /**
     * From the values of its parents.
     *
     * @throws IllegalArgumentException as the constructor
     */
    public static Family ofParents(double seedParent, double pollenParent, double mean, long size) {
      return new Family(seedParent / 2 + pollenParent / 2, mean, size);
    }
  }

  /**
   * The line that fits best.
   *
   * @param slope by how much the family mean rises with the mid-parent value
   * @param slopeError its standard error
   * @param intercept the family mean at a mid-parent of 0
   * @param interceptError its standard error
   * @param residualDeviation the standard deviation about the line: of a family mean, or by size,
   *     of the mean of a family of one
   * @param families how many families there are
   * @param degreesOfFreedom families less two
   */
  public record Line(
      double slope,
      double slopeError,
      double intercept,
      double interceptError,
      double residualDeviation,
      int families,
      int degreesOfFreedom) {}

  /**
   * What a new mid-parent value leads one to expect.
   *
   * @param mean the height of the line there, the mean of all such families
   * @param meanError its standard error
   * @param familyError the standard error of the mean of one new family: of the line and of the
   *     family about it
   * @param lower the lower end of an interval for the mean of one new family
   * @param upper its upper end
   * @param beyond whether the mid-parent lies outside those seen, so that the line is drawn out
   */
  public record Prediction(
      double mean,
      double meanError,
      double familyError,
      double lower,
      double upper,
      boolean beyond) {}

  private MidParent(List<Family> measured, boolean bySize) {
    this.bySize = bySize;
    this.families = measured.size();
    if (families < 3) {
      throw new IllegalArgumentException(
          families + " families; a line and how far families stray from it need 3 or more");
    }
    double sumWeights = 0;
    double sumX = 0;
    double sumY = 0;
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (Family family : measured) {
      double w = weightOf(family.size());
      sumWeights += w;
      sumX += w * family.midParent();
      sumY += w * family.mean();
      lowest = Math.min(lowest, family.midParent());
      highest = Math.max(highest, family.midParent());
    }
    if (lowest == highest) {
      throw new IllegalArgumentException(
          "all mid-parents are " + lowest + "; a line needs families whose mid-parents differ");
    }
    weight = sumWeights;
    meanMidParent = sumX / sumWeights;
    least = lowest;
    most = highest;
    double meanOfFamilies = sumY / sumWeights;
    double sumSquares = 0;
    double products = 0;
    for (Family family : measured) {
      double off = family.midParent() - meanMidParent;
      sumSquares += weightOf(family.size()) * off * off;
      products += weightOf(family.size()) * off * (family.mean() - meanOfFamilies);
    }
    squares = sumSquares;
    double slope = products / squares;
    double left = 0;
    for (Family family : measured) {
      double off = family.mean() - meanOfFamilies - slope * (family.midParent() - meanMidParent);
      left += weightOf(family.size()) * off * off;
    }
    double deviation = Math.sqrt(left / (families - 2));
    line =
        new Line(
            slope,
            deviation / Math.sqrt(squares),
            meanOfFamilies - slope * meanMidParent,
            deviation * Math.sqrt(1 / weight + meanMidParent * meanMidParent / squares),
            deviation,
            families,
            families - 2);
  }

  /**
   * Every family counts alike. Right where families differ more from each other than their sizes
   * account for, as they mostly do.
   *
   * @throws IllegalArgumentException if there are fewer than three, or all mid-parents are the same
   */
  public static MidParent of(List<Family> families) {
    return new MidParent(List.copyOf(families), false);
  }

  /**
   * Every seedling counts alike: families are weighted by their size. Right where a family mean
   * strays from the line only because its seedlings are few.
   *
   * @throws IllegalArgumentException if there are fewer than three, or all mid-parents are the same
   */
  public static MidParent bySize(List<Family> families) {
    return new MidParent(List.copyOf(families), true);
  }

  private double weightOf(long size) {
    return bySize ? size : 1;
  }

  /** The line that fits best. */
  public Line line() {
    return line;
  }

  /**
   * What to expect of a new family, with an interval for its mean from Student's t.
   *
   * @param midParent the mean of its parents' values
   * @param size how many seedlings it will have; makes a difference only {@link #bySize}
   * @param certainty how sure the interval is to be, between 0 and 1, as 0.95
   * @throws IllegalArgumentException if the certainty is not between 0 and 1, the size is below 1,
   *     or the mid-parent is no finite number
   */
  public Prediction predict(double midParent, long size, double certainty) {
    Proportion.requireCertainty(certainty);
    if (!Double.isFinite(midParent) || size < 1) {
      throw new IllegalArgumentException(
          "a family of "
              + size
              + " from a mid-parent of "
              + midParent
              + "; give a number, and a size of 1 or more");
    }
    double off = midParent - meanMidParent;
    double mean = line.intercept() + line.slope() * midParent;
    double deviation = line.residualDeviation();
    double meanError = deviation * Math.sqrt(1 / weight + off * off / squares);
    double familyError = Math.hypot(meanError, deviation / Math.sqrt(weightOf(size)));
    double reach =
        familyError
            * new TDistribution(null, line.degreesOfFreedom(), ACCURACY)
                .inverseCumulativeProbability(0.5 + certainty / 2);
    return new Prediction(
        mean,
        meanError,
        familyError,
        mean - reach,
        mean + reach,
        midParent < least || midParent > most);
  }
}

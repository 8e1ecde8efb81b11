package dev.filial.core.ancestry;

import java.util.OptionalInt;
import java.util.function.IntPredicate;

/**
 * How much of the donor's chromosome still hangs on around a gene of it that was held through
 * backcrosses: the stretch without a break from the gene to the nearest crossover on either side.
 *
 * <p>Each backcross draws on one meiosis of the plant that carries the gene beside a chromosome of
 * the recurrent parent, that of the F1 being the first. Without interference (Haldane 1919, Journal
 * of Genetics 8:299-309) crossovers fall at a rate of one a morgan in each, so after t of them the
 * stretch X on a side of length l has P(X &gt; x) = e<sup>−tx</sup> for x &lt; l, is the whole side
 * with chance e<sup>−tl</sup>, and has the mean (1 − e<sup>−tl</sup>)/t (Hanson 1959, Genetics
 * 44:833-837; Stam and Zeven 1981, Euphytica 30:227-238). The two sides are independent. All of it
 * holds where seedlings were kept for the gene alone; kept for a short stretch, or for looking like
 * the recurrent parent, they have less.
 *
 * <p>Immutable; all lengths are in morgans, of one chromosome of the plant.
 */
public final class DonorSegment {

  /** More backcrosses than anybody makes. */
  public static final int MOST_BACKCROSSES = 1_000;

  private final double left;
  private final double right;
  private final int backcrosses;

  private DonorSegment(double left, double right, int backcrosses) {
    this.left = left;
    this.right = right;
    this.backcrosses = backcrosses;
  }

  /**
   * Around a gene at that distance from the ends of its chromosome, in the F1: all of it.
   *
   * @param left the distance from one end, 0 or more; 0 for a gene at that end
   * @param right the distance from the other end, 0 or more
   * @throws IllegalArgumentException if a distance is negative or no number, both are 0, or the
   *     chromosome is longer than {@link GeneticMap#LONGEST}
   */
  public static DonorSegment of(double left, double right) {
    requireArm(left);
    requireArm(right);
    if (left + right == 0) {
      throw new IllegalArgumentException(
          "a chromosome of no length on either side of the gene; state how far its ends are from"
              + " the gene");
    }
    if (left + right > GeneticMap.LONGEST) {
      throw new IllegalArgumentException(
          "a chromosome of "
              + (left + right)
              + " morgans; at most "
              + GeneticMap.LONGEST
              + " are reckoned with");
    }
    // Not -0.0, which is no longer than 0 but is another number.
    return new DonorSegment(left + 0.0, right + 0.0, 0);
  }

  private static void requireArm(double morgans) {
    if (!(morgans >= 0 && Double.isFinite(morgans))) {
      throw new IllegalArgumentException(
          "an end of the chromosome " + morgans + " morgans from the gene; it is 0 or more");
    }
  }

  /**
   * The same after so many backcrosses in all.
   *
   * @param number 0 (the F1) to {@link #MOST_BACKCROSSES}
   * @throws IllegalArgumentException if it is not
   */
  public DonorSegment after(int number) {
    if (number < 0 || number > MOST_BACKCROSSES) {
      throw new IllegalArgumentException(
          number + " backcrosses; 0, for the F1, to " + MOST_BACKCROSSES + " are reckoned with");
    }
    return new DonorSegment(left, right, number);
  }

  /** How many backcrosses it is after. */
  public int backcrosses() {
    return backcrosses;
  }

  /** The distance of the gene from one end of its chromosome. */
  public double left() {
    return left;
  }

  /** The distance of the gene from the other end. */
  public double right() {
    return right;
  }

  /** The length of the chromosome. */
  public double chromosome() {
    return left + right;
  }

  /** The mean length left of the gene. */
  public double meanLeft() {
    return mean(left);
  }

  /** The mean length right of the gene. */
  public double meanRight() {
    return mean(right);
  }

  /** The mean length on both sides together. */
  public double mean() {
    return mean(left) + mean(right);
  }

  private double mean(double arm) {
    return backcrosses == 0 ? arm : -Math.expm1(-backcrosses * arm) / backcrosses;
  }

  /** The standard deviation of the length on both sides together. */
  public double standardDeviation() {
    return Math.sqrt(variance(left) + variance(right));
  }

  /** E[X²] − E[X]² = (1 − 2u e^−u − e^−2u)/t² with u = tl, or 2e^−u (sinh u − u)/t². */
  private double variance(double arm) {
    if (backcrosses == 0) {
      return 0;
    }
    double u = backcrosses * arm;
    double t2 = (double) backcrosses * backcrosses;
    if (u < 1) {
      // sinh u − u by its series: the difference would lose all its digits.
      double term = u * u * u / 6;
      double sum = 0;
      for (int k = 4; term > sum * 1e-17; k += 2) {
        sum += term;
        term *= u * u / (k * (k + 1.0));
      }
      return 2 * Math.exp(-u) * sum / t2;
    }
    return (1 - 2 * u * Math.exp(-u) - Math.exp(-2 * u)) / t2;
  }

  /** The chance that all of the chromosome left of the gene still hangs on. */
  public double chanceLeftWhole() {
    return Math.exp(-backcrosses * left);
  }

  /** The chance that all of the chromosome right of the gene still hangs on. */
  public double chanceRightWhole() {
    return Math.exp(-backcrosses * right);
  }

  /** The chance that the whole chromosome is still the donor's. */
  public double chanceWhole() {
    return Math.exp(-backcrosses * chromosome());
  }

  /**
   * The chance that the length on both sides together is at most so long, 0 to 1.
   *
   * <p>It is longer than s &lt; l + r if some window of length s with the gene in it was never
   * crossed. Such windows begin over a stretch of w = min(s, l, r, l + r − s). Either the first of
   * them is free of crossovers, or the last crossover before a free one falls into that stretch:
   * P(S &gt; s) = e<sup>−ts</sup>(1 + tw). This is the convolution of the two sides, the chances
   * that they are whole included.
   *
   * @param length any number but NaN
   * @throws IllegalArgumentException if it is no number
   */
  public double chanceAtMost(double length) {
    if (Double.isNaN(length)) {
      throw new IllegalArgumentException("a length that is no number; state it in morgans");
    }
    if (length < 0) {
      return 0;
    }
    if (length >= chromosome()) {
      return 1;
    }
    double window = Math.min(Math.min(left, right), Math.min(length, chromosome() - length));
    double none = backcrosses * length;
    return Math.max(0, -Math.expm1(-none) - backcrosses * window * Math.exp(-none));
  }

  /**
   * The least length that the piece does not exceed with that chance.
   *
   * @param chance 0 to 1
   * @throws IllegalArgumentException if it is not
   */
  public double quantile(double chance) {
    if (!(chance >= 0 && chance <= 1)) {
      throw new IllegalArgumentException("a chance of " + chance + "; it lies between 0 and 1");
    }
    if (chance == 0) {
      return backcrosses == 0 ? chromosome() : 0;
    }
    double shorter = 0;
    double enough = chromosome();
    // Halved until no number lies between the two.
    for (double middle = enough / 2;
        middle > shorter && middle < enough;
        middle = shorter + (enough - shorter) / 2) {
      if (chanceAtMost(middle) >= chance) {
        enough = middle;
      } else {
        shorter = middle;
      }
    }
    return enough;
  }

  /**
   * An interval that holds the length with a chance.
   *
   * @param least its lower end
   * @param most its upper end
   */
  public record Interval(double least, double most) {}

  /**
   * The central interval: as likely shorter as longer, save that nothing is longer than the
   * chromosome.
   *
   * @param chance how likely the length lies in it, above 0 and below 1, as 0.9
   * @throws IllegalArgumentException if it does not
   */
  public Interval interval(double chance) {
    requireBetween(chance);
    double tail = (1 - chance) / 2;
    return new Interval(quantile(tail), quantile(1 - tail));
  }

  /**
   * The mean length of the donor's that lies elsewhere on the chromosome, cut off from the gene by
   * two or more crossovers, where no seedling was kept for it: at a distance x from the gene a
   * place is the donor's with chance ((1 + e<sup>−2x</sup>)/2)<sup>t</sup>, and within the piece
   * with e<sup>−tx</sup>. The first is integrated term by term of its binomial expansion.
   */
  public double meanElsewhere() {
    return Math.max(0, donors(left) - mean(left)) + Math.max(0, donors(right) - mean(right));
  }

  private double donors(double arm) {
    double weight = Math.pow(0.5, backcrosses);
    double sum = weight * arm;
    for (int k = 1; k <= backcrosses; k++) {
      weight *= (backcrosses - k + 1.0) / k;
      sum += weight * -Math.expm1(-2 * k * arm) / (2 * k);
    }
    return sum;
  }

  /**
   * The fewest backcrosses, from the F1, after which the piece is at most so long on the average;
   * empty if {@link #MOST_BACKCROSSES} are not enough.
   *
   * @param length above 0
   * @throws IllegalArgumentException if it is not
   */
  public OptionalInt backcrossesToMean(double length) {
    requireLength(length);
    return fewest(number -> after(number).mean() <= length);
  }

  /**
   * The fewest backcrosses, from the F1, after which the piece is at most so long with that chance;
   * empty if {@link #MOST_BACKCROSSES} are not enough.
   *
   * @param length above 0
   * @param chance above 0 and below 1, as 0.9
   * @throws IllegalArgumentException if either is out of range
   */
  public OptionalInt backcrossesTo(double length, double chance) {
    requireLength(length);
    requireBetween(chance);
    return fewest(number -> after(number).chanceAtMost(length) >= chance);
  }

  /** The first number that will do, where every larger one does too. */
  private static OptionalInt fewest(IntPredicate willDo) {
    if (!willDo.test(MOST_BACKCROSSES)) {
      return OptionalInt.empty();
    }
    int tooFew = -1;
    int enough = MOST_BACKCROSSES;
    while (enough - tooFew > 1) {
      int middle = (tooFew + enough) >> 1;
      if (willDo.test(middle)) {
        enough = middle;
      } else {
        tooFew = middle;
      }
    }
    return OptionalInt.of(enough);
  }

  private static void requireLength(double length) {
    if (!(length > 0)) {
      throw new IllegalArgumentException(
          "a piece of at most " + length + " morgans; it has some length always, state more");
    }
  }

  private static void requireBetween(double chance) {
    if (!(chance > 0 && chance < 1)) {
      throw new IllegalArgumentException(
          "a chance of " + chance + "; it lies above 0 and below 1, as 0.9");
    }
  }
}

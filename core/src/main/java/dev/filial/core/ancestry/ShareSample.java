package dev.filial.core.ancestry;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Shares that were found in dropped genomes, one a genome. Immutable to its users; they are put in
 * order of size when that is first needed.
 */
public final class ShareSample {

  private final double[] dropped;
  private volatile double @Nullable [] sorted;

  ShareSample(double[] shares) {
    dropped = shares;
  }

  private double[] sorted() {
    double[] known = sorted;
    if (known == null) {
      known = dropped.clone();
      Arrays.parallelSort(known);
      sorted = known;
    }
    return known;
  }

  /**
   * A range of shares.
   *
   * @param low the lower end
   * @param high the upper end
   */
  public record Range(double low, double high) {}

  /** How many genomes were dropped. */
  public int size() {
    return dropped.length;
  }

  /** The shares themselves, the smallest first. */
  public double[] values() {
    return sorted().clone();
  }

  /** The mean share. */
  public double mean() {
    double sum = 0;
    for (double share : dropped) {
      sum += share;
    }
    return sum / dropped.length;
  }

  /** The variance of the share among the genomes; 0 of a single one. */
  public double variance() {
    double mean = mean();
    double sum = 0;
    for (double share : dropped) {
      sum += (share - mean) * (share - mean);
    }
    return dropped.length == 1 ? 0 : sum / (dropped.length - 1);
  }

  /**
   * The share that a fraction of the genomes is at or below: between the two nearest ones in
   * proportion (definition 7 of Hyndman and Fan 1996, American Statistician 50:361-365).
   *
   * @param fraction 0 to 1
   * @throws IllegalArgumentException if it is not
   */
  public double quantile(double fraction) {
    requireFraction(fraction);
    double[] sorted = sorted();
    double at = fraction * (sorted.length - 1);
    int below = (int) at;
    double rest = at - below;
    return rest == 0 ? sorted[below] : sorted[below] + rest * (sorted[below + 1] - sorted[below]);
  }

  /**
   * The central range that holds a fraction of the genomes, as much being left out on either side.
   *
   * @param fraction 0 to 1, usually 0.9
   * @throws IllegalArgumentException if it is not
   */
  public Range central(double fraction) {
    requireFraction(fraction);
    return new Range(quantile((1 - fraction) / 2), quantile((1 + fraction) / 2));
  }

  private static void requireFraction(double fraction) {
    if (!(fraction >= 0 && fraction <= 1)) {
      throw new IllegalArgumentException(
          "a fraction of " + fraction + " of the genomes; it lies between 0 and 1");
    }
  }

  /** The fraction of genomes with less than a share. */
  public double below(double share) {
    int count = 0;
    for (double one : dropped) {
      count += one < share ? 1 : 0;
    }
    return (double) count / dropped.length;
  }

  /** The fraction of genomes that have none of it at all. */
  public double none() {
    return below(Double.MIN_VALUE);
  }

  /**
   * The standard error of a chance that was counted in this sample, from the dropping alone.
   *
   * @param chance as {@link #below} gave it
   */
  public double standardError(double chance) {
    return Math.sqrt(chance * (1 - chance) / dropped.length);
  }

  /**
   * How many genomes fall into each of equal steps of the share from 0 to 1; a share on a limit
   * counts into the step above it, and 1 into the last.
   *
   * @param steps 1 or more
   */
  public int[] histogram(int steps) {
    int[] counts = new int[steps];
    for (double share : dropped) {
      // A hair is added for shares such as a quarter that came out a rounding below a limit.
      counts[Math.min(steps - 1, (int) (share * steps + 1e-9))]++;
    }
    return counts;
  }
}

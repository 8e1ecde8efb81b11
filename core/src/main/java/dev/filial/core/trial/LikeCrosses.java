package dev.filial.core.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the next family may bring, judged by the families of earlier crosses like it. No gene model
 * stands behind this: a forecast is what was counted carried forward, not the odds of a cross.
 *
 * <p>States are numbered from 0, as they stand in the counts. Families are taken to be drawn at
 * random from all such crosses.
 */
public final class LikeCrosses {

  /** More seedlings than anybody raises of one cross. */
  private static final int MOST = 100_000;

  private final List<long[]> families;
  private final long[] sizes;
  private final long[] sums;
  private final long seedlings;

  private LikeCrosses(List<long[]> families, long[] sizes, long[] sums) {
    this.families = families;
    this.sizes = sizes;
    this.sums = sums;
    this.seedlings = Counts.total(sums);
  }

  /**
   * How far the families differ among themselves.
   *
   * @param chiSquare of the table of families by states (Pearson)
   * @param degreesOfFreedom families less one times states less one, a state never seen left out
   * @param p the chance of families that differ as much if all have the same shares, 0 to 1
   * @param overdispersion how many times as much as chance alone they differ: chi-square by its
   *     degrees of freedom, 1 if by chance alone (McCullagh and Nelder, Generalized Linear Models,
   *     from memory)
   * @param leastExpected the smallest number expected anywhere in the table; where it is below
   *     about 5, p is a rough one (Cochran 1954, Biometrics 10:417-451, from memory)
   */
  public record Differences(
      double chiSquare,
      int degreesOfFreedom,
      double p,
      double overdispersion,
      double leastExpected) {}

  /** What a forecast leans on. */
  public enum Basis {
    /** One earlier family; how much families differ is not known, and a new one may differ. */
    ONE_FAMILY,
    /** Several, which differ no more than by chance. */
    FAMILIES_ALIKE,
    /** Several, which differ more than by chance: a new one is expected to differ as much. */
    FAMILIES_DIFFER
  }

  /**
   * How many of the next seedlings may be of a state.
   *
   * @param fewest the lower end, still likely enough
   * @param most the upper end, still likely enough
   * @param expected the mean number
   * @param chance of a number from {@code fewest} to {@code most}; at least the certainty asked for
   * @param basis what it leans on
   */
  public record Forecast(int fewest, int most, double expected, double chance, Basis basis) {}

  /**
   * From the counts of earlier families.
   *
   * @param families of each, how many were of each state
   * @throws IllegalArgumentException if there is no family, they have not the same two or more
   *     states, a count is negative, or a family is of none
   */
  public static LikeCrosses of(List<long[]> families) {
    if (families.isEmpty()) {
      throw new IllegalArgumentException(
          "no like cross; without one there is nothing to forecast from");
    }
    int states = families.get(0).length;
    List<long[]> copies = new ArrayList<>();
    long[] sizes = new long[families.size()];
    long[] sums = new long[states];
    for (long[] family : families) {
      if (family.length != states || states < 2) {
        throw new IllegalArgumentException(
            "families with "
                + states
                + " and "
                + family.length
                + " states; give each a count for the same two states or more, 0 if none was seen");
      }
      sizes[copies.size()] = Counts.total(family);
      copies.add(family.clone());
      for (int i = 0; i < states; i++) {
        sums[i] = Math.addExact(sums[i], family[i]);
      }
    }
    return new LikeCrosses(copies, sizes, sums);
  }

  /** How many families there are. */
  public int families() {
    return families.size();
  }

  /** How many seedlings they had in all. */
  public long seedlings() {
    return seedlings;
  }

  /**
   * The share of a state in all families together. Its intervals hold for families that are alike;
   * where {@link #differences} shows otherwise they are too narrow.
   *
   * @throws IllegalArgumentException if there is no such state, or there are more seedlings than an
   *     {@code int} holds
   */
  public Proportion pooled(int state) {
    requireState(state);
    if (seedlings > Integer.MAX_VALUE) {
      throw new IllegalArgumentException(
          seedlings + " seedlings; a share is counted of at most " + Integer.MAX_VALUE);
    }
    return new Proportion((int) sums[state], (int) seedlings);
  }

  /**
   * Whether the families differ among themselves; none if there is only one, or only one state was
   * ever seen.
   */
  public Optional<Differences> differences() {
    int seen = 0;
    for (long sum : sums) {
      seen += sum > 0 ? 1 : 0;
    }
    int degrees = (families.size() - 1) * (seen - 1);
    if (degrees == 0) {
      return Optional.empty();
    }
    double statistic = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sizes.length; i++) {
      for (int state = 0; state < sums.length; state++) {
        if (sums[state] > 0) {
          double expected = (double) sizes[i] * sums[state] / seedlings;
          double off = families.get(i)[state] - expected;
          statistic += off * off / expected;
          least = Math.min(least, expected);
        }
      }
    }
    return Optional.of(
        new Differences(
            statistic,
            degrees,
            GoodnessOfFit.upperTail(statistic, degrees),
            statistic / degrees,
            least));
  }

  /**
   * How much more alike two seedlings of one family are in a state than two of different families:
   * 0 if families differ no more than by chance or it cannot be told, 1 if each is all or none.
   *
   * <p>The analysis of variance's estimate (Ridout, Demétrio and Firth 1999, Biometrics 55:137-148,
   * from memory), 0 where it would be below. With few families it is rough.
   *
   * @throws IllegalArgumentException if there is no such state
   */
  public double correlation(int state) {
    requireState(state);
    double n = seedlings;
    double k = sizes.length;
    double share = sums[state] / n;
    double between = 0;
    double squares = 0;
    for (int i = 0; i < sizes.length; i++) {
      double off = families.get(i)[state] - sizes[i] * share;
      between += off * off / sizes[i];
      squares += (double) sizes[i] * sizes[i];
    }
    double within = n * share * (1 - share) - between;
    if (sizes.length == 1 || seedlings == sizes.length || between == 0) {
      return 0;
    }
    double meanBetween = between / (k - 1);
    double meanWithin = Math.max(0, within) / (n - k);
    double size = (n - squares / n) / (k - 1);
    double estimate = (meanBetween - meanWithin) / (meanBetween + (size - 1) * meanWithin);
    return Math.max(0, Math.min(1, estimate));
  }

  /**
   * How many of the next seedlings, all of one new family, will be of a state: the central interval
   * of a beta-binomial, half of what the certainty leaves, or less, lying beyond either end.
   *
   * <p>With one family, or families that differ no more than by chance, the state's share is drawn
   * from what all seedlings together leave open under a flat prior. Where families differ, a
   * seedling counts for less, the more the larger its family (n seedlings for n/(1 + (n − 1)ρ), ρ
   * being {@link #correlation}: Kish 1965, Survey Sampling, from memory), and the new family's
   * share is drawn with the variance between families besides (the beta-binomial of Skellam 1948,
   * Journal of the Royal Statistical Society B 10:257-261, fitted by moments as by Kleinman 1973,
   * Journal of the American Statistical Association 68:46-54, both from memory). That ρ is itself
   * estimated is not allowed for, so that with a handful of families the interval is still on the
   * narrow side.
   *
   * @param state its place in the counts, from 0
   * @param next how many seedlings, 0 to 100,000
   * @param certainty how sure, between 0 and 1, as 0.95
   * @throws IllegalArgumentException if there is no such state, or one of the others is out of its
   *     range
   */
  public Forecast forecast(int state, int next, double certainty) {
    Proportion.requireCertainty(certainty);
    double[] chances = chances(state, next);
    double tail = (1 - certainty) / 2;
    int fewest = 0;
    for (double below = chances[0]; below <= tail && fewest < next; below += chances[fewest]) {
      fewest++;
    }
    int most = next;
    for (double above = chances[next]; above <= tail && most > fewest; above += chances[most]) {
      most--;
    }
    double expected = 0;
    double chance = 0;
    for (int k = 0; k <= next; k++) {
      expected += k * chances[k];
      chance += k >= fewest && k <= most ? chances[k] : 0;
    }
    return new Forecast(fewest, most, expected, Math.min(1, chance), basis(state));
  }

  /**
   * The chance that at least so many of the next seedlings, all of one new family, will be of a
   * state, 0 to 1; by the distribution of {@link #forecast}.
   *
   * @throws IllegalArgumentException if there is no such state, or {@code next} is not from 0 to
   *     100,000
   */
  public double chanceOf(int state, int atLeast, int next) {
    double[] chances = chances(state, next);
    double sum = 0;
    for (int k = next; k >= Math.max(0, atLeast); k--) {
      sum += chances[k];
    }
    return Math.min(1, sum);
  }

  private Basis basis(int state) {
    if (families.size() == 1) {
      return Basis.ONE_FAMILY;
    }
    return correlation(state) > 0 ? Basis.FAMILIES_DIFFER : Basis.FAMILIES_ALIKE;
  }

  private double[] chances(int state, int next) {
    double alike = correlation(state);
    if (next < 0 || next > MOST) {
      throw new IllegalArgumentException(
          "a forecast for " + next + " seedlings; ask for 0 to " + MOST);
    }
    double some = 0;
    double all = 0;
    for (int i = 0; i < sizes.length; i++) {
      double counts = 1 / (1 + (sizes[i] - 1) * alike);
      some += families.get(i)[state] * counts;
      all += sizes[i] * counts;
    }
    double unsure = 1 / (all + 3);
    return BetaBinomial.chances((some + 1) / (all + 2), alike + (1 - alike) * unsure, next);
  }

  private void requireState(int state) {
    if (state < 0 || state >= sums.length) {
      throw new IllegalArgumentException(
          "state " + state + " of " + sums.length + "; states are numbered from 0");
    }
  }
}

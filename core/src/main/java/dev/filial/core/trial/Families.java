package dev.filial.core.trial;

import dev.filial.core.trial.Fit.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Several families that should all segregate alike: does their sum fit the ratio, and do they agree
 * among themselves.
 *
 * <p>The chi-squares of the families add up; what they exceed the chi-square of the sums by
 * measures how much the families differ (Mather, The Measurement of Linkage in Heredity, from
 * memory). The same holds of G, of which it is an exact partition (Sokal and Rohlf, Biometry, from
 * memory). Exact probabilities do not add up.
 *
 * @param pooled the sums of all families against the ratio, by the method that suits them
 * @param families each family against the ratio, by chi-square or G
 * @param total the sum of the families' chi-squares, or of their G
 * @param totalDegreesOfFreedom its degrees of freedom
 * @param heterogeneity what the families differ by: total less pooled, at least 0
 * @param heterogeneityDegreesOfFreedom its degrees of freedom
 * @param heterogeneityP the chance of families that differ as much if all have one ratio
 * @param rough whether some family is so small that this chance is only a rough one: fewer than
 *     five are expected of some class
 * @param method what the families were compared by: chi-square, or G where that was asked for
 */
public record Families(
    Fit pooled,
    List<Fit> families,
    double total,
    int totalDegreesOfFreedom,
    double heterogeneity,
    int heterogeneityDegreesOfFreedom,
    double heterogeneityP,
    boolean rough,
    Method method) {

  /** Copies the families. */
  public Families {
    families = List.copyOf(families);
  }

  /**
   * Tests families, each with a count for every class of the ratio, by the methods that suit them.
   *
   * @throws IllegalArgumentException if there are fewer than two, or {@link GoodnessOfFit#test}
   *     refuses one
   */
  public static Families test(Ratio ratio, List<long[]> counts) {
    return test(ratio, counts, Optional.empty());
  }

  /**
   * The same by a method of the caller's. G is used for all; the exact test for the sums, as far as
   * these can be summed over, and chi-square for how much the families differ.
   *
   * @throws IllegalArgumentException if there are fewer than two, or {@link GoodnessOfFit#test}
   *     refuses one
   */
  public static Families test(Ratio ratio, List<long[]> counts, Optional<Method> asked) {
    if (counts.size() < 2) {
      throw new IllegalArgumentException(
          counts.size() + " families; two or more can agree or differ, one is tested by itself");
    }
    Method method = asked.filter(one -> one == Method.G).orElse(Method.CHI_SQUARE);
    GoodnessOfFit test = GoodnessOfFit.of(ratio).withMethod(method);
    long[] sums = new long[ratio.classes()];
    List<Fit> families = new ArrayList<>();
    double total = 0;
    for (long[] family : counts) {
      Fit fit = test.test(family);
      families.add(fit);
      total += fit.statistic();
      for (int i = 0; i < sums.length; i++) {
        sums[i] = Math.addExact(sums[i], family[i]);
      }
    }
    double ofSums = test.test(sums).statistic();
    Fit pooled = GoodnessOfFit.of(ratio).preferring(asked).test(sums);
    boolean rough =
        families.stream().anyMatch(fit -> fit.expected().stream().anyMatch(one -> one < 5));
    int perFamily = ratio.classes() - 1;
    int degrees = perFamily * (counts.size() - 1);
    double heterogeneity = Math.max(0, total - ofSums);
    return new Families(
        pooled,
        families,
        total,
        perFamily * counts.size(),
        heterogeneity,
        degrees,
        GoodnessOfFit.upperTail(heterogeneity, degrees),
        rough,
        method);
  }
}

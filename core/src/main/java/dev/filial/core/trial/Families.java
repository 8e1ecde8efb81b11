package dev.filial.core.trial;

import dev.filial.core.trial.Fit.Method;
import java.util.ArrayList;
import java.util.List;

/**
 * Several families that should all segregate alike: does their sum fit the ratio, and do they agree
 * among themselves.
 *
 * <p>The chi-squares of the families add up; what they exceed the chi-square of the sums by
 * measures how much the families differ (Mather, The Measurement of Linkage in Heredity, from
 * memory).
 *
 * @param pooled the sums of all families against the ratio, by the method that suits them
 * @param families each family against the ratio, by chi-square
 * @param total the sum of the families' chi-squares
 * @param totalDegreesOfFreedom its degrees of freedom
 * @param heterogeneity what the families differ by: total less pooled, at least 0
 * @param heterogeneityDegreesOfFreedom its degrees of freedom
 * @param heterogeneityP the chance of families that differ as much if all have one ratio
 * @param rough whether some family is so small that this chance is only a rough one: fewer than
 *     five are expected of some class
 */
public record Families(
    Fit pooled,
    List<Fit> families,
    double total,
    int totalDegreesOfFreedom,
    double heterogeneity,
    int heterogeneityDegreesOfFreedom,
    double heterogeneityP,
    boolean rough) {

  /** Copies the families. */
  public Families {
    families = List.copyOf(families);
  }

  /**
   * Tests families, each with a count for every class of the ratio.
   *
   * @throws IllegalArgumentException if there are fewer than two, or {@link GoodnessOfFit#test}
   *     refuses one
   */
  public static Families test(Ratio ratio, List<long[]> counts) {
    if (counts.size() < 2) {
      throw new IllegalArgumentException(
          counts.size() + " families; two or more can agree or differ, one is tested by itself");
    }
    GoodnessOfFit test = GoodnessOfFit.of(ratio).withMethod(Method.CHI_SQUARE);
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
    double pooledChiSquare = test.test(sums).statistic();
    Fit pooled = GoodnessOfFit.of(ratio).test(sums);
    boolean rough =
        families.stream().anyMatch(fit -> fit.expected().stream().anyMatch(one -> one < 5));
    int perFamily = ratio.classes() - 1;
    int degrees = perFamily * (counts.size() - 1);
    double heterogeneity = Math.max(0, total - pooledChiSquare);
    return new Families(
        pooled,
        families,
        total,
        perFamily * counts.size(),
        heterogeneity,
        degrees,
        GoodnessOfFit.upperTail(heterogeneity, degrees),
        rough);
  }
}

package dev.filial.core.trial;

import dev.filial.core.trial.Fit.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.special.Gamma;

/**
 * Tests whether the counts of one family fit a ratio.
 *
 * <p>Chi-square after Pearson 1900, G after Woolf 1957 (both as in Sokal and Rohlf, Biometry, from
 * memory), the exact multinomial test by summing the outcomes no likelier than the one seen. Left
 * to choose, it takes chi-square where five or more are expected of each class (Cochran 1954,
 * Biometrics 10:417-451, from memory) and else the exact test, as long as it can be summed.
 */
public final class GoodnessOfFit {

  private static final double LEAST_EXPECTED = 5;

  private final Ratio ratio;
  private final Optional<Method> stated;
  private final boolean lenient;

  private GoodnessOfFit(Ratio ratio, Optional<Method> stated, boolean lenient) {
    this.ratio = ratio;
    this.stated = stated;
    this.lenient = lenient;
  }

  /** Tests against {@code ratio}, by the method that suits the counts. */
  public static GoodnessOfFit of(Ratio ratio) {
    return new GoodnessOfFit(ratio, Optional.empty(), false);
  }

  /** The same by a method of the caller's. */
  public GoodnessOfFit withMethod(Method method) {
    return new GoodnessOfFit(ratio, Optional.of(method), false);
  }

  /**
   * The same by a method of the caller's where that can be reckoned, else by the one that suits the
   * counts; {@link Fit#why} tells.
   */
  GoodnessOfFit preferring(Optional<Method> method) {
    return new GoodnessOfFit(ratio, method, true);
  }

  /**
   * Tests the counts, one for each class of the ratio.
   *
   * @throws IllegalArgumentException if there are not as many as classes, one is negative, all are
   *     0, or the exact test was asked for of more outcomes than can be summed
   */
  public Fit test(long... counts) {
    long family = ratio.requireFamily(counts);
    List<Double> expected = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < counts.length; i++) {
      double one = family * ratio.shares().get(i).toDouble();
      expected.add(one);
      least = Math.min(least, one);
    }
    boolean summable = ExactMultinomial.isSummable(family, counts.length);
    boolean beyond = lenient && stated.equals(Optional.of(Method.EXACT)) && !summable;
    Method method =
        stated
            .filter(asked -> !beyond)
            .orElse(least >= LEAST_EXPECTED || !summable ? Method.CHI_SQUARE : Method.EXACT);
    String why;
    if (beyond) {
      why = "there are too many outcomes to sum for the exact test";
    } else if (stated.isPresent()) {
      why = "as asked for";
    } else if (least >= LEAST_EXPECTED) {
      why = "five or more are expected of each class";
    } else if (summable) {
      why = "fewer than five are expected of some class";
    } else {
      why =
          "fewer than five are expected of some class, but there are too many outcomes to sum; p is"
              + " a rough one";
    }
    int degrees = counts.length - 1;
    if (method == Method.EXACT) {
      ExactMultinomial exact = ExactMultinomial.of(ratio, counts);
      return new Fit(method, why, exact.probability(), degrees, exact.p(), expected);
    }
    double statistic = method == Method.G ? g(counts, expected) : chiSquare(counts, expected);
    return new Fit(method, why, statistic, degrees, upperTail(statistic, degrees), expected);
  }

  private static double chiSquare(long[] counts, List<Double> expected) {
    double sum = 0;
    for (int i = 0; i < counts.length; i++) {
      double off = counts[i] - expected.get(i);
      sum += off * off / expected.get(i);
    }
    return sum;
  }

  private static double g(long[] counts, List<Double> expected) {
    double sum = 0;
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        sum += counts[i] * Math.log(counts[i] / expected.get(i));
      }
    }
    return Math.max(0, 2 * sum);
  }

  /** The chance that a chi-square of so many degrees of freedom is as large. */
  static double upperTail(double statistic, int degrees) {
    // One less the lower tail would have no digits left where it is small.
    return statistic <= 0 ? 1 : Gamma.regularizedGammaQ(degrees / 2.0, statistic / 2);
  }
}

package dev.filial.core.trial;

import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** What a family may segregate into: one of the models {@link ModelComparison} compares. */
public sealed interface SegregationModel {

  /** What it is called in the answer. */
  String name();

  /** The shares of a ratio, called as the ratio is written. */
  static SegregationModel fixed(Ratio ratio) {
    return new Fixed(ratio.text(), ratio.shares());
  }

  /**
   * Shares that are known, of which some may be 0.
   *
   * @param shares 0 to 1, one for each class; they sum to 1 within a billionth, and are brought to
   *     just 1
   * @throws IllegalArgumentException if there are fewer than two, one is not from 0 to 1, or they
   *     do not sum to 1
   */
  static SegregationModel fixed(String name, double... shares) {
    requireShares(quoted(name), shares);
    List<Fraction> exact = new ArrayList<>();
    Fraction sum = Fraction.ZERO;
    for (double share : shares) {
      BigDecimal whole = new BigDecimal(Math.max(0, share));
      Fraction one = new Fraction(whole.unscaledValue(), BigInteger.TEN.pow(whole.scale()));
      exact.add(one);
      sum = sum.plus(one);
    }
    List<Fraction> scaled = new ArrayList<>();
    for (Fraction one : exact) {
      scaled.add(one.dividedBy(sum));
    }
    return new Fixed(name, scaled);
  }

  /**
   * Shares that hang on one number that is not known, as a recombination from 0 to ½.
   *
   * @param least the least it can be
   * @param most the most it can be
   * @param shares the share of each class for such a number
   * @throws IllegalArgumentException if {@code least} is not below {@code most}, or one is not
   *     finite
   */
  static SegregationModel oneParameter(
      String name, double least, double most, DoubleFunction<double[]> shares) {
    return new OneParameter(name, least, most, shares);
  }

  /** Any shares at all: those that were counted. No model fits better, none says less. */
  static SegregationModel saturated() {
    return new Saturated("any shares");
  }

  /**
   * Shares that are known: no free parameter.
   *
   * @param name what it is called
   * @param shares the share of each class, 0 to 1; they sum to exactly 1
   */
  record Fixed(String name, List<Fraction> shares) implements SegregationModel {

    /**
     * Copies and checks the shares.
     *
     * @throws IllegalArgumentException if there are fewer than two, one is below 0, or they do not
     *     sum to exactly 1
     */
    public Fixed {
      shares = List.copyOf(shares);
      Fraction sum = Fraction.ZERO;
      for (Fraction share : shares) {
        if (share.signum() < 0) {
          throw new IllegalArgumentException(
              "a share of " + share + " in \"" + name + "\"; a share is 0 or more");
        }
        sum = sum.plus(share);
      }
      if (shares.size() < 2 || !sum.isOne()) {
        throw new IllegalArgumentException(
            "the shares of \"" + name + "\", two or more, sum to 1; these sum to " + sum);
      }
    }
  }

  /**
   * Shares that hang on one number: one free parameter.
   *
   * @param name what it is called
   * @param least the least the parameter can be
   * @param most the most it can be
   * @param shares the share of each class for a parameter, 0 to 1, summing to 1
   */
  record OneParameter(String name, double least, double most, DoubleFunction<double[]> shares)
      implements SegregationModel {

    /**
     * Checks the interval.
     *
     * @throws IllegalArgumentException if {@code least} is not below {@code most}, or one is not
     *     finite
     */
    public OneParameter {
      if (!(least < most) || !Double.isFinite(most - least)) {
        throw new IllegalArgumentException(
            "the parameter of \"" + name + "\" from " + least + " to " + most + " has no room");
      }
    }

    /**
     * The shares for a parameter.
     *
     * @throws IllegalArgumentException if they are not shares
     */
    double[] sharesAt(double parameter) {
      double[] at = shares.apply(parameter).clone();
      requireShares(quoted(name) + " at " + parameter, at);
      for (int i = 0; i < at.length; i++) {
        at[i] = Math.max(0, at[i]);
      }
      return at;
    }
  }

  /**
   * Any shares at all: one free parameter less than there are classes.
   *
   * @param name what it is called
   */
  record Saturated(String name) implements SegregationModel {}

  private static String quoted(String name) {
    return "\"" + name + "\"";
  }

  private static void requireShares(String what, double[] shares) {
    double sum = 0;
    for (double share : shares) {
      // Arithmetic may leave a nought a hair below; what is no number fails too.
      if (!(share >= -1e-12)) {
        throw new IllegalArgumentException(
            "a share of " + share + " in " + what + "; a share is 0 or more");
      }
      sum += share;
    }
    if (shares.length < 2 || !(Math.abs(sum - 1) <= 1e-9)) {
      throw new IllegalArgumentException(
          "the shares of " + what + ", two or more, sum to 1; these sum to " + sum);
    }
  }
}

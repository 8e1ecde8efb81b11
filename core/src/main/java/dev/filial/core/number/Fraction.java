package dev.filial.core.number;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An exact rational number in lowest terms: a share of a genome, a weight, the odds of a cross.
 *
 * <p>A thirty-generation backcross has a denominator of 2<sup>31</sup> and a 4x × 2x cross one of
 * 3, so neither doubles nor a dyadic type would be exact; two {@link BigInteger}s are.
 *
 * @param numerator the numerator, carrying the sign
 * @param denominator the denominator, always positive, with no factor in common with the numerator
 */
public record Fraction(BigInteger numerator, BigInteger denominator)
    implements Comparable<Fraction> {

  /** Nothing. */
  public static final Fraction ZERO = of(0, 1);

  /** The whole. */
  public static final Fraction ONE = of(1, 1);

  /** One half: what each parent of equal ploidy gives. */
  public static final Fraction HALF = of(1, 2);

  /**
   * Brings the fraction to lowest terms.
   *
   * @throws ArithmeticException if the denominator is zero
   */
  public Fraction {
    Objects.requireNonNull(numerator, "numerator");
    if (denominator.signum() == 0) {
      throw new ArithmeticException("a fraction with denominator zero: " + numerator + "/0");
    }
    BigInteger divisor = numerator.gcd(denominator);
    if (denominator.signum() < 0) {
      divisor = divisor.negate();
    }
    if (!divisor.equals(BigInteger.ONE)) {
      numerator = numerator.divide(divisor);
      denominator = denominator.divide(divisor);
    }
  }

  /**
   * The fraction {@code numerator/denominator}.
   *
   * @throws ArithmeticException if the denominator is zero
   */
  public static Fraction of(long numerator, long denominator) {
    return new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  /** The whole number {@code value}. */
  public static Fraction of(long value) {
    return new Fraction(BigInteger.valueOf(value), BigInteger.ONE);
  }

  /**
   * Reads {@code 3/8}, {@code 0.375}, {@code 37.5%} or {@code 1}, exactly.
   *
   * @throws NumberFormatException if the text is none of these, or its denominator is zero
   */
  public static Fraction parse(String text) {
    if (text.equals("1")) {
      return ONE; // nearly all shares a register holds
    }
    String trimmed = text.strip();
    try {
      int slash = trimmed.indexOf('/');
      if (slash >= 0) {
        return new Fraction(
            new BigInteger(trimmed.substring(0, slash).strip()),
            new BigInteger(trimmed.substring(slash + 1).strip()));
      }
      if (trimmed.endsWith("%")) {
        return ofDecimal(trimmed.substring(0, trimmed.length() - 1).strip())
            .dividedBy(Fraction.of(100));
      }
      return ofDecimal(trimmed);
    } catch (ArithmeticException | NumberFormatException e) {
      NumberFormatException named =
          new NumberFormatException(
              "\"" + text + "\" is not a fraction; write 3/8, 0.375 or 37.5%");
      named.initCause(e);
      throw named;
    }
  }

  private static Fraction ofDecimal(String text) {
    // A power of ten too large to write out would take all memory before anyone could refuse it.
    BigDecimal decimal = new BigDecimal(text);
    if (Math.abs((long) decimal.scale()) > 1000) {
      throw new NumberFormatException("exponent out of range: " + text);
    }
    BigInteger unscaled = decimal.unscaledValue();
    return decimal.scale() >= 0
        ? new Fraction(unscaled, BigInteger.TEN.pow(decimal.scale()))
        : new Fraction(unscaled.multiply(BigInteger.TEN.pow(-decimal.scale())), BigInteger.ONE);
  }

  /** The sum of this and {@code other}. */
  public Fraction plus(Fraction other) {
    return new Fraction(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  /** This less {@code other}. */
  public Fraction minus(Fraction other) {
    return plus(other.negated());
  }

  /** The product of this and {@code other}. */
  public Fraction times(Fraction other) {
    return new Fraction(
        numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  /**
   * This divided by {@code other}.
   *
   * @throws ArithmeticException if {@code other} is zero
   */
  public Fraction dividedBy(Fraction other) {
    return new Fraction(
        numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  /** This with the sign turned. */
  public Fraction negated() {
    return new Fraction(numerator.negate(), denominator);
  }

  /** −1, 0 or 1. */
  public int signum() {
    return numerator.signum();
  }

  /** Whether this is zero. */
  public boolean isZero() {
    return numerator.signum() == 0;
  }

  /** Whether this is one. */
  public boolean isOne() {
    return numerator.equals(denominator);
  }

  /** The nearest double (correct to within one unit in the last place). */
  public double toDouble() {
    if (numerator.bitLength() < 53 && denominator.bitLength() < 53) {
      return numerator.doubleValue() / denominator.doubleValue();
    }
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), MathContext.DECIMAL64)
        .doubleValue();
  }

  /** A percentage with at most {@code decimals} decimals, as {@code 37.5 %}; for people to read. */
  public String toPercent(int decimals) {
    BigDecimal percent =
        new BigDecimal(numerator)
            .movePointRight(2)
            .divide(new BigDecimal(denominator), decimals, RoundingMode.HALF_UP);
    return (percent.signum() == 0 ? "0" : percent.stripTrailingZeros().toPlainString()) + " %";
  }

  @Override
  public int compareTo(Fraction other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  // By hand: a record's own are put together at their first use, which takes a program that has
  // just started milliseconds.

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Fraction fraction
        && numerator.equals(fraction.numerator)
        && denominator.equals(fraction.denominator);
  }

  @Override
  public int hashCode() {
    return 31 * numerator.hashCode() + denominator.hashCode();
  }

  /** {@code 3/8}, or {@code 1} for a whole number. */
  @Override
  public String toString() {
    return denominator.equals(BigInteger.ONE)
        ? numerator.toString()
        : numerator + "/" + denominator;
  }
}

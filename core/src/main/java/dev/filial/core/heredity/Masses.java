package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Chances of different things as whole numbers over their sum, in the order in which they were
 * first met: no digit is lost, and no fraction is brought to lowest terms before somebody asks.
 *
 * @param <K> what is told apart
 */
final class Masses<K> {

  private final Map<K, BigInteger> masses = new LinkedHashMap<>();
  private BigInteger total = BigInteger.ZERO;

  static <K> Masses<K> certain(K key) {
    Masses<K> one = new Masses<>();
    one.add(key, BigInteger.ONE);
    return one;
  }

  /** Of chances that need not sum to 1. */
  static <K> Masses<K> ofShares(Map<K, Fraction> shares) {
    BigInteger common = BigInteger.ONE;
    for (Fraction share : shares.values()) {
      common = common.divide(common.gcd(share.denominator())).multiply(share.denominator());
    }
    Masses<K> masses = new Masses<>();
    for (Map.Entry<K, Fraction> share : shares.entrySet()) {
      masses.add(
          share.getKey(),
          share.getValue().numerator().multiply(common.divide(share.getValue().denominator())));
    }
    return masses.reduced();
  }

  void add(K key, BigInteger mass) {
    if (mass.signum() != 0) {
      masses.merge(key, mass, BigInteger::add);
      total = total.add(mass);
    }
  }

  Map<K, BigInteger> masses() {
    return masses;
  }

  BigInteger total() {
    return total;
  }

  int size() {
    return masses.size();
  }

  Fraction share(K key) {
    return new Fraction(masses.getOrDefault(key, BigInteger.ZERO), total);
  }

  /** The same chances in the smallest whole numbers, so that they do not grow step by step. */
  Masses<K> reduced() {
    BigInteger divisor = total;
    for (BigInteger mass : masses.values()) {
      if (divisor.equals(BigInteger.ONE)) {
        return this;
      }
      divisor = divisor.gcd(mass);
    }
    Masses<K> smaller = new Masses<>();
    BigInteger by = divisor;
    masses.forEach((key, mass) -> smaller.add(key, mass.divide(by)));
    return smaller;
  }
}

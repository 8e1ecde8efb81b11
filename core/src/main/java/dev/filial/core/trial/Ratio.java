package dev.filial.core.trial;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * What a family is expected to segregate into, as 9:3:3:1.
 *
 * @param shares the share of each class, above 0; they sum to exactly 1
 */
public record Ratio(List<Fraction> shares) {

  /**
   * Copies and checks the shares.
   *
   * @throws IllegalArgumentException if there are fewer than two, one is not above 0, or they do
   *     not sum to exactly 1
   */
  public Ratio {
    shares = List.copyOf(shares);
    Fraction sum = Fraction.ZERO;
    for (Fraction share : shares) {
      if (share.signum() <= 0) {
        throw new IllegalArgumentException(
            "a share of " + share + " in a ratio; each is above 0, leave the class out");
      }
      sum = sum.plus(share);
    }
    if (shares.size() < 2 || !sum.isOne()) {
      throw new IllegalArgumentException(
          "the shares of a ratio, two or more, sum to 1; these sum to " + sum + ": " + shares);
    }
  }

  /**
   * The ratio of these numbers.
   *
   * @throws IllegalArgumentException if there are fewer than two, or one is not above 0
   */
  public static Ratio of(long... terms) {
    List<Fraction> wholes = new ArrayList<>();
    for (long term : terms) {
      wholes.add(Fraction.of(term));
    }
    return ofTerms(wholes);
  }

  /**
   * The ratio of these terms.
   *
   * @throws IllegalArgumentException if there are fewer than two, or one is not above 0
   */
  public static Ratio of(List<Fraction> terms) {
    return ofTerms(terms);
  }

  /**
   * Reads {@code 3:1}, {@code 9:3:3:1} or {@code 1:1:0.5}.
   *
   * @throws IllegalArgumentException if the text is no ratio of two or more numbers above 0
   */
  public static Ratio parse(String text) {
    List<Fraction> terms = new ArrayList<>();
    for (String term : text.split(":", -1)) {
      try {
        terms.add(Fraction.parse(term));
      } catch (NumberFormatException e) {
        throw new IllegalArgumentException(
            "\"" + text + "\" is not a ratio; write it as 3:1 or 9:3:3:1", e);
      }
    }
    return ofTerms(terms);
  }

  private static Ratio ofTerms(List<Fraction> terms) {
    Fraction sum = Fraction.ZERO;
    for (Fraction term : terms) {
      if (term.signum() <= 0) {
        throw new IllegalArgumentException(
            "a term of " + term + " in a ratio; each is above 0, leave the class out");
      }
      sum = sum.plus(term);
    }
    if (terms.size() < 2) {
      throw new IllegalArgumentException("a ratio has two terms or more, as 3:1");
    }
    List<Fraction> shares = new ArrayList<>();
    for (Fraction term : terms) {
      shares.add(term.dividedBy(sum));
    }
    return new Ratio(shares);
  }

  /** How many classes there are. */
  public int classes() {
    return shares.size();
  }

  /** In the smallest whole numbers: {@code 9:3:3:1}. */
  public String text() {
    BigInteger common = BigInteger.ONE;
    for (Fraction share : shares) {
      common = common.divide(common.gcd(share.denominator())).multiply(share.denominator());
    }
    List<String> terms = new ArrayList<>();
    for (Fraction share : shares) {
      terms.add(share.numerator().multiply(common.divide(share.denominator())).toString());
    }
    return String.join(":", terms);
  }

  /**
   * Checks that counts are of this ratio's classes.
   *
   * @return their sum
   * @throws IllegalArgumentException if there are not as many as classes, one is negative, or all
   *     are 0
   */
  long requireFamily(long[] counts) {
    if (counts.length != classes()) {
      throw new IllegalArgumentException(
          counts.length
              + " counts for the "
              + classes()
              + " classes of "
              + text()
              + "; give one for each class, 0 if none was seen");
    }
    return Counts.total(counts);
  }
}

package dev.filial.cli.wording;

import dev.filial.core.number.Decimal;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Chances as growers say them. */
public final class ChanceWords {

  /** Larger numbers are rounded: nobody sows 1,048,576. */
  private static final BigInteger LARGEST = BigInteger.valueOf(20);

  /** What is rarer is said as one in so many, what is not as so many in a hundred. */
  private static final Fraction RARE = Fraction.of(1, 10);

  /** Below it nothing is ever seen. */
  private static final Fraction LEAST = Fraction.of(1, 1_000_000_000);

  private ChanceWords() {}

  /** More decimals of one in a hundred than these nobody reads. */
  private static final int MOST_DECIMALS = 2;

  /**
   * The same of several kinds that are all there is: {@link #oneIn} of each, those that are said as
   * so many in a hundred with as many decimals as it takes for them to add up to what they are
   * together. 21/40 and 19/40 are not 53 and 48 in a hundred.
   */
  public static List<String> oneIn(List<Fraction> chances) {
    int decimals = 0;
    while (decimals <= MOST_DECIMALS && !addUp(chances, decimals)) {
      decimals++;
    }
    if (decimals > MOST_DECIMALS) {
      decimals = 1; // three thirds never do
    }
    List<String> words = new ArrayList<>();
    for (Fraction chance : chances) {
      words.add(oneIn(chance, decimals));
    }
    return words;
  }

  private static boolean addUp(List<Fraction> chances, int decimals) {
    Fraction all = Fraction.ZERO;
    BigDecimal rounded = BigDecimal.ZERO;
    for (Fraction chance : chances) {
      if (isSaidInHundred(chance)) {
        all = all.plus(chance);
        rounded = rounded.add(inHundred(chance, decimals));
      }
    }
    return rounded.compareTo(inHundred(all, decimals)) == 0;
  }

  private static BigDecimal inHundred(Fraction chance, int decimals) {
    return new BigDecimal(chance.numerator())
        .movePointRight(2)
        .divide(new BigDecimal(chance.denominator()), decimals, RoundingMode.HALF_UP);
  }

  private static boolean isSaidInHundred(Fraction chance) {
    return chance.compareTo(RARE) > 0 && oneIn(chance).startsWith("about ");
  }

  /** As {@code all}, {@code none}, {@code 3 in 4} or {@code about 1 in 340}. */
  public static String oneIn(Fraction chance) {
    return oneIn(chance, 0);
  }

  private static String oneIn(Fraction chance, int decimals) {
    if (chance.isOne()) {
      return "all";
    }
    if (chance.isZero()) {
      return "none";
    }
    if (chance.denominator().compareTo(LARGEST) <= 0
        || (chance.numerator().equals(BigInteger.ONE) && chance.denominator().bitLength() < 11)) {
      return chance.numerator() + " in " + chance.denominator();
    }
    if (chance.compareTo(LEAST) < 0) {
      return "fewer than 1 in 1000000000";
    }
    Fraction rest = Fraction.ONE.minus(chance);
    if (rest.compareTo(LEAST) < 0) {
      return "nearly all";
    }
    if (rest.compareTo(RARE) < 0) {
      // Of something common the exceptions are counted.
      return "all but " + oneIn(rest);
    }
    if (chance.compareTo(RARE) > 0) {
      return "about "
          + inHundred(chance, decimals).stripTrailingZeros().toPlainString()
          + " in 100";
    }
    BigDecimal n =
        new BigDecimal(chance.denominator())
            .divide(new BigDecimal(chance.numerator()), MathContext.DECIMAL64);
    return "about 1 in "
        + n.round(new MathContext(n.compareTo(BigDecimal.valueOf(1000)) < 0 ? 3 : 2))
            .setScale(0, RoundingMode.HALF_UP)
            .toPlainString();
  }

  /** The same at the head of a sentence. */
  public static String about(Fraction chance) {
    return about(oneIn(chance));
  }

  /** What {@link #oneIn} says, at the head of a sentence. */
  public static String about(String words) {
    String whole =
        words.equals("all")
            ? "All"
            : words.equals("none")
                ? "None"
                : !Character.isDigit(words.charAt(0)) ? words : "about " + words;
    return Character.toUpperCase(whole.charAt(0)) + whole.substring(1);
  }

  /**
   * The exact fraction where anybody can read it, else nothing.
   *
   * @param exact whether the chance is exact at all
   */
  public static String fraction(Fraction chance, boolean exact) {
    return exact && chance.denominator().bitLength() <= 20 ? chance.toString() : "";
  }

  /** A percentage with as many decimals as it takes to show that it is not 0. */
  public static String percent(Fraction chance) {
    if (chance.isZero() || chance.isOne()) {
      return chance.toPercent(0);
    }
    if (chance.compareTo(LEAST) < 0) {
      return "nearly 0 %";
    }
    if (Fraction.ONE.minus(chance).compareTo(LEAST) < 0) {
      return "nearly 100 %";
    }
    int decimals = 1;
    while (decimals < 12 && chance.toPercent(decimals).equals("0 %")) {
      decimals++;
    }
    String percent = chance.toPercent(decimals == 1 ? 1 : decimals + 1);
    for (int more = 2; percent.equals("100 %") && more < 12; more++) {
      percent = chance.toPercent(more);
    }
    return percent;
  }

  /** A certainty, as {@code 95 %}, with as many digits as part it from 100. */
  public static String certainty(double certainty) {
    BigDecimal percent = BigDecimal.valueOf(certainty).movePointRight(2);
    return percent.round(new MathContext(15)).stripTrailingZeros().toPlainString() + " %";
  }

  /** A p-value, as {@code 0.61} or {@code 0.0004}. */
  public static String p(double p) {
    if (p < 1e-6) {
      return "below 0.000001";
    }
    return new BigDecimal(p).round(new MathContext(2)).toPlainString();
  }

  /** A number of few decimals. */
  public static String number(double value) {
    return Decimal.text(value, 2);
  }
}

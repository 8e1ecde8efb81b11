package dev.filial.core.spreadsheet;

import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The shares of taxa and the doubt about a name as a table of plants writes them, each in a column
 * beside the name.
 */
final class StatedShares {

  /** What a table is taken to be rounded to at the most: a share of a thousand chromosome sets. */
  private static final int MOST_DECIMALS = 12;

  private static final Pattern SHARE =
      Pattern.compile("(.+?)[ =:]+(\\d+(?:[.,]\\d{1," + MOST_DECIMALS + "})?|\\d+/\\d+)");
  private static final Pattern DOUBT = Pattern.compile("(cf|aff)\\.? +(.+)");

  private StatedShares() {}

  /**
   * Shares written {@code Echeveria laui 0.75; Echeveria agavoides 0.25}. What is called unknown is
   * left out. A share written with decimals is the simplest fraction that is rounded to it; where
   * those of all taxa come to 1 but for the rounding, they are made to come to it.
   *
   * @throws IllegalArgumentException if a part is no taxon with a share
   */
  static Map<String, Fraction> of(String text) {
    Map<String, Fraction> shares = new LinkedHashMap<>();
    Fraction sum = Fraction.ZERO;
    Fraction slack = Fraction.ZERO;
    for (String part : text.split(";", -1)) {
      Matcher share = SHARE.matcher(part.strip());
      if (!share.matches()) {
        throw new IllegalArgumentException(
            "\""
                + RowReading.shortened(part.strip())
                + "\" is no share of a taxon; write Echeveria laui 0.75; Echeveria agavoides 0.25");
      }
      Fraction half = half(share.group(2));
      Fraction value = simplest(share.group(2), half);
      sum = sum.plus(value);
      slack = slack.plus(half);
      if (value.signum() > 0 && !share.group(1).equals("unknown")) {
        shares.merge(share.group(1), value, Fraction::plus);
      }
    }
    Fraction over = sum.minus(Fraction.ONE);
    if (over.signum() > 0 && over.compareTo(slack.plus(slack)) <= 0) {
      // Each was rounded by itself; the largest can best spare what is too much.
      shares.entrySet().stream()
          .max(Map.Entry.comparingByValue())
          .ifPresent(largest -> largest.setValue(largest.getValue().minus(over)));
    }
    return shares;
  }

  /** Half of the last decimal that is written; 0 of a fraction or a whole number. */
  private static Fraction half(String written) {
    int point = Math.max(written.indexOf('.'), written.indexOf(','));
    return point < 0
        ? Fraction.ZERO
        : new Fraction(
            BigInteger.ONE,
            BigInteger.TWO.multiply(BigInteger.TEN.pow(written.length() - point - 1)));
  }

  private static Fraction simplest(String written, Fraction half) {
    if (written.contains("/") || half.isZero()) {
      return Fraction.parse(written);
    }
    BigDecimal decimal = new BigDecimal(written.replace(',', '.'));
    Fraction exact =
        new Fraction(decimal.unscaledValue(), BigInteger.TEN.pow(Math.max(0, decimal.scale())));
    if (half.compareTo(Fraction.of(1, 1000)) > 0) {
      return exact; // 0.75 and 0.3 are meant; 0.333333 is what was left of a third
    }
    return simplestBetween(exact.minus(half), exact.plus(half));
  }

  /**
   * The fraction of the smallest denominator from {@code low} to {@code high}, by Stern and Brocot.
   */
  private static Fraction simplestBetween(Fraction low, Fraction high) {
    BigInteger whole = low.numerator().divide(low.denominator());
    Fraction floor = new Fraction(whole, BigInteger.ONE);
    if (low.signum() <= 0) {
      return Fraction.ZERO;
    }
    if (floor.equals(low)) {
      return floor;
    }
    Fraction next = floor.plus(Fraction.ONE);
    if (next.compareTo(high) <= 0) {
      return next;
    }
    Fraction rest =
        simplestBetween(
            Fraction.ONE.dividedBy(high.minus(floor)), Fraction.ONE.dividedBy(low.minus(floor)));
    return floor.plus(Fraction.ONE.dividedBy(rest));
  }

  /**
   * A name with {@code cf. agavoides}, which stood beside it, in its place.
   *
   * @throws IllegalArgumentException if that is no doubt, or of an epithet that the name has not
   */
  static String doubted(String name, String doubt) {
    Matcher said = DOUBT.matcher(doubt.strip());
    String epithet = said.matches() ? " " + said.group(2).strip() : "";
    int place = epithet.isEmpty() ? -1 : (name + " ").indexOf(epithet + " ");
    if (place < 0) {
      throw new IllegalArgumentException(
          "\""
              + RowReading.shortened(doubt)
              + "\" is not cf. or aff. with an epithet of "
              + RowReading.shortened(name)
              + "; write it so");
    }
    return name.substring(0, place) + " " + said.group(1) + "." + name.substring(place);
  }
}

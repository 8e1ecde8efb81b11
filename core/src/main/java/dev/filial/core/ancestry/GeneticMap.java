package dev.filial.core.ancestry;

import dev.filial.core.number.Decimal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lengths of a set's chromosomes in morgans, without interference between crossovers (Haldane
 * 1919): what the spread of a genome share hangs on.
 *
 * <p>Immutable; the order of the chromosomes does not count.
 */
public final class GeneticMap {

  /** More chromosomes in a set than this no plant is known to have (the most are some 720). */
  public static final int MOST_CHROMOSOMES = 1_000;

  /** The longest chromosome accepted, in morgans; those known are of 0.3 to 5. */
  public static final double LONGEST = 100;

  private static final double CENTIMORGANS = 100;
  private static final int DECIMALS = 6;
  private static final Pattern ITEM =
      Pattern.compile("(?:(\\d{1,6})\\s*[x×*]\\s*)?(\\d{1,6}(?:\\.\\d{1,6})?)");

  private final double[] lengths;

  private GeneticMap(double[] lengths) {
    this.lengths = lengths;
  }

  /**
   * A map of chromosomes of these lengths.
   *
   * @param morgans the length of each chromosome of a set, above 0 and at most {@link #LONGEST}
   * @throws IllegalArgumentException if there is none, there are more than {@link
   *     #MOST_CHROMOSOMES}, or a length is out of range
   */
  public static GeneticMap of(double... morgans) {
    if (morgans.length == 0 || morgans.length > MOST_CHROMOSOMES) {
      throw tooMany(morgans.length);
    }
    double[] sorted = morgans.clone();
    for (double length : sorted) {
      if (!(length > 0 && length <= LONGEST)) {
        throw new IllegalArgumentException(
            "a chromosome of "
                + plain(length * CENTIMORGANS)
                + " centimorgans; state more than 0 and at most "
                + plain(LONGEST * CENTIMORGANS));
      }
    }
    Arrays.sort(sorted);
    for (int i = 0; i < sorted.length / 2; i++) {
      double swapped = sorted[i];
      sorted[i] = sorted[sorted.length - 1 - i];
      sorted[sorted.length - 1 - i] = swapped;
    }
    return new GeneticMap(sorted);
  }

  /**
   * A map of so many chromosomes of one length.
   *
   * @throws IllegalArgumentException as {@link #of}
   */
  public static GeneticMap alike(int chromosomes, double morgans) {
    if (chromosomes < 1 || chromosomes > MOST_CHROMOSOMES) {
      throw tooMany(chromosomes);
    }
    double[] lengths = new double[chromosomes];
    Arrays.fill(lengths, morgans);
    return of(lengths);
  }

  /**
   * A map of chromosomes of these lengths.
   *
   * @param lengths the length of each chromosome of a set in centimorgans, above 0 and at most a
   *     hundred times {@link #LONGEST}
   * @throws IllegalArgumentException as {@link #of}
   */
  public static GeneticMap ofCentimorgans(List<BigDecimal> lengths) {
    return of(lengths.stream().mapToDouble(cm -> cm.doubleValue() / CENTIMORGANS).toArray());
  }

  /**
   * The map that is assumed where none is stated: eleven chromosomes of a morgan each. Eleven is
   * the base number of the cactus family (common knowledge in the literature, from memory); a
   * morgan, or one crossover a meiosis on the average in each gamete, is common practice for a
   * chromosome nobody mapped, no source.
   */
  public static GeneticMap assumed() {
    return alike(11, 1.0);
  }

  /**
   * Reads lengths in centimorgans, parted by commas: {@code 100, 80, 60}, or {@code 11 x 100} for
   * eleven alike.
   *
   * @throws IllegalArgumentException if the text reads otherwise, or as {@link #of}
   */
  public static GeneticMap parse(String centimorgans) {
    List<Double> lengths = new ArrayList<>();
    for (String part : centimorgans.split(",", -1)) {
      Matcher item = ITEM.matcher(part.strip());
      if (!item.matches()) {
        throw new IllegalArgumentException(
            "\""
                + part.strip()
                + "\" is no chromosome length; write centimorgans parted by commas, as 120,100,80,"
                + " or 11x100 for eleven alike");
      }
      int count = item.group(1) == null ? 1 : Integer.parseInt(item.group(1));
      if (count < 1 || lengths.size() + count > MOST_CHROMOSOMES) {
        throw tooMany(lengths.size() + count);
      }
      lengths.addAll(Collections.nCopies(count, Double.parseDouble(item.group(2)) / CENTIMORGANS));
    }
    return of(lengths.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static IllegalArgumentException tooMany(int chromosomes) {
    return new IllegalArgumentException(
        "a map of "
            + chromosomes
            + " chromosomes; state the 1 to "
            + MOST_CHROMOSOMES
            + " of one set, not of the whole plant");
  }

  /** How many chromosomes a set has. */
  public int chromosomes() {
    return lengths.length;
  }

  /** The length of a chromosome in morgans, the longest being number 0. */
  public double length(int chromosome) {
    return lengths[chromosome];
  }

  /** The lengths in centimorgans to the millionth, the longest first. */
  public List<BigDecimal> centimorgans() {
    return Arrays.stream(lengths)
        .mapToObj(length -> new BigDecimal(plain(length * CENTIMORGANS)))
        .toList();
  }

  /** The length of a set in morgans. */
  public double total() {
    double sum = 0;
    for (double length : lengths) {
      sum += length;
    }
    return sum;
  }

  /** The map in words, as {@code 11 chromosomes of 100 cM}, or {@code 120, 2 x 100, 80 cM}. */
  public String text() {
    if (lengths[0] == lengths[lengths.length - 1]) {
      return lengths.length
          + (lengths.length == 1 ? " chromosome of " : " chromosomes of ")
          + plain(lengths[0] * CENTIMORGANS)
          + " cM";
    }
    return lengths.length + " chromosomes of " + notation() + " cM";
  }

  /** The map as {@link #parse} reads it: {@code 120, 2 x 100, 80}. */
  public String notation() {
    List<String> parts = new ArrayList<>();
    for (int i = 0, next; i < lengths.length; i = next) {
      next = i + 1;
      while (next < lengths.length && lengths[next] == lengths[i]) {
        next++;
      }
      String length = plain(lengths[i] * CENTIMORGANS);
      parts.add(next - i == 1 ? length : (next - i) + " x " + length);
    }
    return String.join(", ", parts);
  }

  private static String plain(double value) {
    return Decimal.text(value, DECIMALS);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GeneticMap map && Arrays.equals(lengths, map.lengths);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(lengths);
  }

  /** As {@link #text}. */
  @Override
  public String toString() {
    return text();
  }
}

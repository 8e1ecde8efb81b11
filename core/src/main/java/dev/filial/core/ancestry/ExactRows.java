package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.Standing;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Exact shares of a pedigree in which every plant is half of one parent and half of another, or all
 * of one.
 *
 * <p>If the founders' shares are whole numbers over 2<sup>e</sup>, those of a plant of level g are
 * whole numbers over 2<sup>e+g</sup>, for halving a sum adds one power of two and no more. Only the
 * numerators are kept, and that of a child is the sum of its parents', with nothing to halve, if
 * both are of the level right below; that of an older parent is first brought to its denominator by
 * a shift to the left.
 *
 * <p>Two numerators of 32 bits, unsigned, lie side by side in a {@code long}, the even column in
 * the low half. Those of a plant sum to 2<sup>e+g</sup>, which is at most 2<sup>31</sup>, so none
 * ever runs over into its neighbour, and both are added or shifted at once.
 */
final class ExactRows implements ShareRows, FounderRows {

  /** The highest power of two that is a denominator. */
  static final int MOST_HALVINGS = 31;

  private static final long LOW = 0xFFFF_FFFFL;

  private final Pedigree pedigree;
  private final List<String> taxa;
  private final int width;

  /** How many {@code long}s a row takes; the last is half empty if the width is odd. */
  private final int stride;

  /** The power of two over which the founders' shares are whole numbers. */
  private final int founderHalvings;

  private final long[] pairs;

  private ExactRows(
      Pedigree pedigree, List<String> taxa, int width, int founderHalvings, long[] pairs) {
    this.pedigree = pedigree;
    this.taxa = taxa;
    this.width = width;
    this.stride = stride(width);
    this.founderHalvings = founderHalvings;
    this.pairs = pairs;
  }

  private static int stride(int width) {
    return (width + 1) / 2;
  }

  /**
   * The shares of all plants; empty if they are not of this kind, or have too many generations
   * behind them.
   *
   * @param spare rows that are no longer needed, whose array is taken if it is long enough
   * @throws IllegalArgumentException if plants times columns exceed twice 2,147,483,639
   */
  static Optional<ShareRows> of(
      Pedigree pedigree, List<String> taxa, int width, Optional<ShareRows> spare) {
    int bred = Math.max(0, pedigree.levels() - 1);
    if (bred > MOST_HALVINGS) {
      return Optional.empty();
    }
    int founderHalvings = founderHalvings(pedigree);
    if (founderHalvings + bred > MOST_HALVINGS || !isOfHalves(pedigree)) {
      return Optional.empty();
    }
    int needed = ExpectedShares.arrayLength(pedigree, width, stride(width));
    long[] pairs =
        spare.orElse(null) instanceof ExactRows old && old.pairs.length >= needed
            ? old.pairs
            : new long[needed];
    ExactRows rows = new ExactRows(pedigree, taxa, width, founderHalvings, pairs);
    LevelByLevel.run(pedigree, ExpectedShares.chunk(width), rows::fillPlants);
    return Optional.of(rows);
  }

  /** The e of the founders' 2<sup>e</sup>; more than {@link #MOST_HALVINGS} if there is none. */
  private static int founderHalvings(Pedigree pedigree) {
    int most = 0;
    int founders = pedigree.levels() == 0 ? 0 : pedigree.levelStart(1);
    for (int plant = 0; plant < founders && most <= MOST_HALVINGS; plant++) {
      Founder founder = Objects.requireNonNull(pedigree.founder(plant), "level 0 is founders");
      if (founder.standing() != Standing.PURE) {
        for (Fraction share : founder.makeup().shares().values()) {
          BigInteger parts = share.denominator();
          boolean powerOfTwo = parts.bitCount() == 1;
          most = Math.max(most, powerOfTwo ? parts.bitLength() - 1 : MOST_HALVINGS + 1);
        }
      }
    }
    return most;
  }

  private static boolean isOfHalves(Pedigree pedigree) {
    int plant = pedigree.levels() == 0 ? 0 : pedigree.levelStart(1);
    while (plant < pedigree.size()
        && (pedigree.isPlainCross(plant) || isOfHalves(pedigree, plant))) {
      plant++;
    }
    return plant == pedigree.size();
  }

  private static boolean isOfHalves(Pedigree pedigree, int plant) {
    if (pedigree.isRamet(plant)) {
      return true;
    }
    if (pedigree.caseCount(plant) != 1) {
      return false;
    }
    return !(pedigree.descents(plant).get(0) instanceof Descent.Sexual cross)
        || cross.seedSets() == cross.pollenSets();
  }

  private void fillPlants(int from, int to) {
    int level = pedigree.level(from);
    int at = from;
    while (at < to) {
      int end = Math.min(to, pedigree.levelStart(level + 1));
      if (level == 0) {
        FounderRows.each(pedigree, at, end, this);
      } else {
        fillLevel(level, at, end);
      }
      at = end;
      level++;
    }
  }

  @Override
  public void copy(int from, int to) {
    System.arraycopy(pairs, from * stride, pairs, to * stride, stride);
  }

  @Override
  public void fill(int plant, Makeup makeup) {
    Arrays.fill(pairs, plant * stride, (plant + 1) * stride, 0);
    makeup
        .shares()
        .forEach((taxon, share) -> add(plant, Collections.binarySearch(taxa, taxon), whole(share)));
    if (pedigree.hasUnknown()) {
      add(plant, taxa.size(), whole(makeup.unknownShare()));
    }
  }

  private long whole(Fraction share) {
    int shift = founderHalvings - (share.denominator().bitLength() - 1);
    return share.numerator().longValueExact() << shift;
  }

  private void add(int plant, int column, long numerator) {
    pairs[plant * stride + (column >> 1)] += numerator << ((column & 1) * 32);
  }

  /**
   * Some plants of one level. Of a plain cross whose parents are of the level right below, the sum
   * of two rows, a dozen numerators at a time. All of them are read before any is written: the
   * compiler cannot know that the rows are different ones, and would else wait for each.
   */
  private void fillLevel(int level, int from, int to) {
    long[] pairs = this.pairs;
    int stride = this.stride;
    int below = pedigree.levelStart(level - 1);
    for (int plant = from; plant < to; plant++) {
      int seed = pedigree.isPlainCross(plant) ? pedigree.seedParent(plant) : Pedigree.UNKNOWN;
      int pollen = seed < below ? Pedigree.UNKNOWN : pedigree.pollenParent(plant);
      if (pollen < below) {
        fillOther(level, plant);
        continue;
      }
      int s = seed * stride;
      int p = pollen * stride;
      int t = plant * stride;
      int end = t + stride;
      for (; t <= end - 6; t += 6, s += 6, p += 6) {
        long a = pairs[s] + pairs[p];
        long b = pairs[s + 1] + pairs[p + 1];
        long c = pairs[s + 2] + pairs[p + 2];
        long d = pairs[s + 3] + pairs[p + 3];
        long e = pairs[s + 4] + pairs[p + 4];
        long f = pairs[s + 5] + pairs[p + 5];
        pairs[t] = a;
        pairs[t + 1] = b;
        pairs[t + 2] = c;
        pairs[t + 3] = d;
        pairs[t + 4] = e;
        pairs[t + 5] = f;
      }
      for (; t < end; t++, s++, p++) {
        pairs[t] = pairs[s] + pairs[p];
      }
    }
  }

  /** A plant with a parent further back or unknown, a ramet or an apomict. */
  private void fillOther(int level, int plant) {
    if (pedigree.isRamet(plant)) {
      copy(level, plant, pedigree.rametOf(plant));
    } else if (!pedigree.isPlainCross(plant)
        && pedigree.descents(plant).get(0) instanceof Descent.Copy copy) {
      copy(level, plant, copy.of());
    } else {
      fillCross(level, plant, pedigree.seedParent(plant), pedigree.pollenParent(plant));
    }
  }

  private void copy(int level, int plant, int of) {
    int shift = level - pedigree.level(of);
    for (int k = 0; k < stride; k++) {
      pairs[plant * stride + k] = pairs[of * stride + k] << shift;
    }
  }

  /** A half is the numerators of a whole plant over twice the denominator. */
  private void fillCross(int level, int plant, int seed, int pollen) {
    if (seed == Pedigree.UNKNOWN || pollen == Pedigree.UNKNOWN) {
      int known = Math.max(seed, pollen);
      long half = 1L << (founderHalvings + level - 1);
      if (known == Pedigree.UNKNOWN) {
        Arrays.fill(pairs, plant * stride, (plant + 1) * stride, 0);
        add(plant, taxa.size(), 2 * half);
      } else {
        copy(level - 1, plant, known);
        add(plant, taxa.size(), half);
      }
      return;
    }
    int seedShift = level - 1 - pedigree.level(seed);
    int pollenShift = level - 1 - pedigree.level(pollen);
    for (int k = 0; k < stride; k++) {
      pairs[plant * stride + k] =
          (pairs[seed * stride + k] << seedShift) + (pairs[pollen * stride + k] << pollenShift);
    }
  }

  private int halvings(int plant) {
    return founderHalvings + pedigree.level(plant);
  }

  private long numerator(int plant, int column) {
    return (pairs[plant * stride + (column >> 1)] >>> ((column & 1) * 32)) & LOW;
  }

  @Override
  public double share(int plant, int column) {
    return numerator(plant, column) * Math.scalb(1.0, -halvings(plant));
  }

  @Override
  public Optional<Fraction> fraction(int plant, int column) {
    return Optional.of(Fraction.of(numerator(plant, column), 1L << halvings(plant)));
  }

  @Override
  public void copyTo(int from, int to, double[] target) {
    int at = from;
    for (int level = pedigree.level(from); at < to; level++) {
      int end = Math.min(to, pedigree.levelStart(level + 1));
      copyLevelTo(at, end, Math.scalb(1.0, -(founderHalvings + level)), target);
      at = end;
    }
  }

  /** Some plants of one level, whose numerators are all parts of one size. */
  private void copyLevelTo(int from, int to, double part, double[] target) {
    long[] pairs = this.pairs;
    int whole = width / 2;
    int t = from * width;
    for (int plant = from; plant < to; plant++) {
      int s = plant * stride;
      for (int k = 0; k < whole; k++) {
        long pair = pairs[s + k];
        target[t++] = (pair & LOW) * part;
        target[t++] = (pair >>> 32) * part;
      }
      if (whole < stride) {
        target[t++] = pairs[s + whole] * part;
      }
    }
  }
}

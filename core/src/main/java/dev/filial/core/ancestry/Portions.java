package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Makeup;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * The shares of all taxa in one plant as whole numbers of parts of one common denominator, which
 * spares the reduction of each share to lowest terms on the way down a pedigree.
 *
 * <p>The last part is the unknown share; the parts sum to the denominator. A {@code long} holds
 * them for some sixty generations, and what does not fit goes through {@link BigInteger}.
 */
sealed interface Portions {

  /** The largest denominator that can be doubled and its parts still be added up. */
  long LARGEST = Long.MAX_VALUE / 4;

  /** How many parts of the denominator make up a taxon, or the unknown share. */
  BigInteger part(int taxon);

  /** What the parts are parts of. */
  BigInteger of();

  /** Parts that fit into a {@code long}. */
  final class Small implements Portions {
    private final long[] parts;
    private final long denominator;

    private Small(long[] parts, long denominator) {
      this.parts = parts;
      this.denominator = denominator;
    }

    @Override
    public BigInteger part(int taxon) {
      return BigInteger.valueOf(parts[taxon]);
    }

    @Override
    public BigInteger of() {
      return BigInteger.valueOf(denominator);
    }
  }

  /** Parts that do not. */
  final class Large implements Portions {
    private final BigInteger[] parts;
    private final BigInteger denominator;

    private Large(BigInteger[] parts, BigInteger denominator) {
      this.parts = parts;
      this.denominator = denominator;
    }

    @Override
    public BigInteger part(int taxon) {
      return parts[taxon];
    }

    @Override
    public BigInteger of() {
      return denominator;
    }
  }

  /** All unknown, of {@code taxa} taxa. */
  static Portions unknown(int taxa) {
    long[] parts = new long[taxa + 1];
    parts[taxa] = 1;
    return new Small(parts, 1);
  }

  /** What a founder's stated make-up says. */
  static Portions of(Makeup makeup, List<String> taxa) {
    BigInteger denominator = makeup.unknownShare().denominator();
    for (Fraction share : makeup.shares().values()) {
      denominator = multiple(denominator, share.denominator());
    }
    BigInteger[] parts = new BigInteger[taxa.size() + 1];
    for (int taxon = 0; taxon < taxa.size(); taxon++) {
      parts[taxon] =
          partsOf(makeup.shares().getOrDefault(taxa.get(taxon), Fraction.ZERO), denominator);
    }
    parts[taxa.size()] = partsOf(makeup.unknownShare(), denominator);
    return fitted(parts, denominator);
  }

  private static BigInteger partsOf(Fraction share, BigInteger denominator) {
    return share.numerator().multiply(denominator.divide(share.denominator()));
  }

  /** The mean of two. */
  static Portions mean(Portions one, Portions other) {
    if (one instanceof Small a && other instanceof Small b) {
      long both = multiple(a.denominator, b.denominator);
      if (both > 0) {
        long ofA = both / a.denominator;
        long ofB = both / b.denominator;
        long[] sums = new long[a.parts.length];
        for (int taxon = 0; taxon < sums.length; taxon++) {
          sums[taxon] = a.parts[taxon] * ofA + b.parts[taxon] * ofB;
        }
        return new Small(sums, 2 * both);
      }
    }
    return mean(List.of(Fraction.HALF, Fraction.HALF), List.of(one, other));
  }

  /** The least common multiple, or 0 if it is above {@link #LARGEST}. */
  private static long multiple(long a, long b) {
    long large = Math.max(a, b);
    long small = Math.min(a, b);
    if (large % small != 0) {
      BigInteger both = multiple(BigInteger.valueOf(a), BigInteger.valueOf(b));
      large = both.bitLength() < Long.SIZE ? both.longValue() : Long.MAX_VALUE;
    }
    return large <= LARGEST ? large : 0;
  }

  /** The mean of several, weighted; the weights sum to 1. */
  static Portions mean(List<Fraction> weights, List<Portions> of) {
    BigInteger denominator = BigInteger.ONE;
    for (int i = 0; i < of.size(); i++) {
      denominator = multiple(denominator, weights.get(i).denominator().multiply(of.get(i).of()));
    }
    int size =
        of.get(0) instanceof Small small ? small.parts.length : ((Large) of.get(0)).parts.length;
    BigInteger[] sums = new BigInteger[size];
    Arrays.fill(sums, BigInteger.ZERO);
    for (int i = 0; i < of.size(); i++) {
      Fraction weight = weights.get(i);
      Portions one = of.get(i);
      BigInteger factor =
          weight.numerator().multiply(denominator.divide(weight.denominator().multiply(one.of())));
      for (int taxon = 0; taxon < size; taxon++) {
        sums[taxon] = sums[taxon].add(one.part(taxon).multiply(factor));
      }
    }
    return fitted(sums, denominator);
  }

  private static BigInteger multiple(BigInteger a, BigInteger b) {
    return a.equals(b) ? a : a.divide(a.gcd(b)).multiply(b);
  }

  /** In lowest common terms, and small if they fit. */
  private static Portions fitted(BigInteger[] parts, BigInteger denominator) {
    BigInteger common = denominator;
    for (BigInteger part : parts) {
      common = common.gcd(part);
    }
    BigInteger reduced = denominator.divide(common);
    BigInteger[] reducedParts = new BigInteger[parts.length];
    for (int taxon = 0; taxon < parts.length; taxon++) {
      reducedParts[taxon] = parts[taxon].divide(common);
    }
    if (reduced.bitLength() >= Long.SIZE || reduced.longValue() > LARGEST) {
      return new Large(reducedParts, reduced);
    }
    long[] small = new long[parts.length];
    for (int taxon = 0; taxon < parts.length; taxon++) {
      small[taxon] = reducedParts[taxon].longValue();
    }
    return new Small(small, reduced.longValue());
  }

  /** Each in lowest terms, under the names of the taxa in order of their numbers. */
  default Shares shares(List<String> taxa) {
    TreeMap<String, Fraction> shares = new TreeMap<>();
    for (int taxon = 0; taxon < taxa.size(); taxon++) {
      if (part(taxon).signum() != 0) {
        shares.put(taxa.get(taxon), new Fraction(part(taxon), of()));
      }
    }
    return new Shares(shares, new Fraction(part(taxa.size()), of()));
  }
}

package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The expected share of each taxon in every plant of a pedigree, in doubles.
 *
 * <p>The same means as {@link ExpectedAncestry}, taken level by level; the plants of a large level
 * are shared out among the threads of the common pool. Time is linear in plants times taxa, and
 * memory is one double for each of these. Within 1e-12 of the exact shares.
 */
public final class ExpectedShares {

  /** Below this many numbers a level is not worth handing to other threads. */
  private static final int PARALLEL_FROM = 1 << 15;

  private static final int CHUNK = 2048;

  private final Pedigree pedigree;
  private final List<String> taxa;
  private final int width;
  private final double[] shares;

  private ExpectedShares(Pedigree pedigree, double[] reuse) {
    this.pedigree = pedigree;
    this.taxa = List.copyOf(pedigree.taxa());
    this.width = taxa.size() + (pedigree.hasUnknown() ? 1 : 0);
    long needed = (long) pedigree.size() * width;
    if (needed > Integer.MAX_VALUE - 8) {
      throw new IllegalArgumentException(
          pedigree.size()
              + " plants times "
              + width
              + " taxa are more numbers than one array holds; ask for a part of the pedigree");
    }
    this.shares = reuse.length >= needed ? reuse : new double[(int) needed];
  }

  /**
   * The shares of all plants.
   *
   * @throws IllegalArgumentException if plants times taxa exceed 2,147,483,639
   */
  public static ExpectedShares of(Pedigree pedigree) {
    return of(pedigree, new double[0]);
  }

  /**
   * The shares of all plants, written into an array of the caller's if it is long enough, so that
   * asking again and again need not allocate. Whatever the array held is lost, an earlier result in
   * it included.
   *
   * @throws IllegalArgumentException if plants times taxa exceed 2,147,483,639
   */
  public static ExpectedShares of(Pedigree pedigree, double[] reuse) {
    ExpectedShares result = new ExpectedShares(pedigree, reuse);
    for (int level = 0; level < pedigree.levels(); level++) {
      int from = pedigree.levelStart(level);
      int to = pedigree.levelStart(level + 1);
      if ((long) (to - from) * result.width < PARALLEL_FROM) {
        result.fill(from, to);
      } else {
        int chunks = (to - from + CHUNK - 1) / CHUNK;
        IntStream.range(0, chunks)
            .parallel()
            .forEach(
                chunk ->
                    result.fill(from + chunk * CHUNK, Math.min(to, from + (chunk + 1) * CHUNK)));
      }
    }
    return result;
  }

  private void fill(int from, int to) {
    for (int plant = from; plant < to; plant++) {
      if (pedigree.isPlainCross(plant)) {
        int seed = pedigree.seedParent(plant);
        int pollen = pedigree.pollenParent(plant);
        if (seed >= 0 && pollen >= 0) {
          mean(shares, plant * width, seed * width, pollen * width, width);
          continue;
        }
      }
      fillOther(plant);
    }
  }

  /** Four at a time, all in one pass: what limits this is memory, not arithmetic. */
  private static void mean(double[] shares, int to, int seed, int pollen, int width) {
    int k = 0;
    for (; k < width - 3; k += 4) {
      double a = shares[seed + k] + shares[pollen + k];
      double b = shares[seed + k + 1] + shares[pollen + k + 1];
      double c = shares[seed + k + 2] + shares[pollen + k + 2];
      double d = shares[seed + k + 3] + shares[pollen + k + 3];
      shares[to + k] = 0.5 * a;
      shares[to + k + 1] = 0.5 * b;
      shares[to + k + 2] = 0.5 * c;
      shares[to + k + 3] = 0.5 * d;
    }
    for (; k < width; k++) {
      shares[to + k] = 0.5 * (shares[seed + k] + shares[pollen + k]);
    }
  }

  private void fillOther(int plant) {
    Arrays.fill(shares, plant * width, (plant + 1) * width, 0.0);
    Founder founder = pedigree.founder(plant);
    if (founder != null) {
      founder
          .makeup()
          .shares()
          .forEach((taxon, share) -> shares[plant * width + column(taxon)] = share.toDouble());
      if (pedigree.hasUnknown()) {
        addUnknown(plant, founder.makeup().unknownShare().toDouble());
      }
    } else if (pedigree.isRamet(plant)) {
      add(plant, 1.0, pedigree.rametOf(plant));
    } else {
      for (Descent descent : pedigree.descents(plant)) {
        double share = descent.share().toDouble();
        if (descent instanceof Descent.Sexual cross) {
          double seedWeight = (double) cross.seedSets() / cross.ploidy();
          double pollenWeight = (double) cross.pollenSets() / cross.ploidy();
          add(plant, share * seedWeight, cross.seed());
          add(plant, share * pollenWeight, cross.pollen());
        } else if (descent instanceof Descent.Copy copy) {
          add(plant, share, copy.of());
        }
      }
    }
  }

  private void add(int plant, double weight, int from) {
    if (from == Pedigree.UNKNOWN) {
      addUnknown(plant, weight);
      return;
    }
    for (int k = 0; k < width; k++) {
      shares[plant * width + k] += weight * shares[from * width + k];
    }
  }

  private void addUnknown(int plant, double weight) {
    if (pedigree.hasUnknown()) {
      shares[plant * width + taxa.size()] += weight;
    }
  }

  private int column(String taxon) {
    return Collections.binarySearch(taxa, taxon);
  }

  /** The pedigree whose plants these are. */
  public Pedigree pedigree() {
    return pedigree;
  }

  /** The taxa, sorted by name: the order of the columns. */
  public List<String> taxa() {
    return taxa;
  }

  /**
   * How many numbers a row has: one a taxon, and one more if anything in the pedigree is unknown.
   */
  public int width() {
    return width;
  }

  /** The share of a taxon in a plant, 0 if the pedigree does not know the taxon. */
  public double share(int plant, String taxon) {
    int column = column(taxon);
    return column < 0 ? 0.0 : shares[plant * width + column];
  }

  /** The unknown share of a plant. */
  public double unknown(int plant) {
    return pedigree.hasUnknown() ? shares[plant * width + taxa.size()] : 0.0;
  }

  /** A plant's shares: one a taxon in the order of {@link #taxa}, then the unknown share. */
  public double[] row(int plant) {
    double[] row = Arrays.copyOfRange(shares, plant * width, plant * width + taxa.size() + 1);
    row[taxa.size()] = unknown(plant);
    return row;
  }
}

package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
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
    result.fillFounders();
    for (int level = 1; level < pedigree.levels(); level++) {
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

  /** Level 0. Many founders are of one statement, whose row is worked out once and copied. */
  private void fillFounders() {
    IdentityHashMap<Founder, Integer> done = new IdentityHashMap<>();
    int founders = pedigree.levels() == 0 ? 0 : pedigree.levelStart(1);
    for (int plant = 0; plant < founders; plant++) {
      Founder founder = Objects.requireNonNull(pedigree.founder(plant), "level 0 is founders");
      Integer same = done.putIfAbsent(founder, plant);
      if (same != null) {
        System.arraycopy(shares, same * width, shares, plant * width, width);
      } else {
        fillFounder(plant, founder.makeup());
      }
    }
  }

  private void fillFounder(int plant, Makeup makeup) {
    Arrays.fill(shares, plant * width, (plant + 1) * width, 0.0);
    makeup
        .shares()
        .forEach((taxon, share) -> shares[plant * width + column(taxon)] = share.toDouble());
    if (pedigree.hasUnknown()) {
      addUnknown(plant, makeup.unknownShare().toDouble());
    }
  }

  /**
   * Some plants of one level. Of a plain cross, the mean of two rows, a dozen numbers at a time.
   * All of them are read before any is written: the compiler cannot know that the rows are
   * different ones, and would else wait for each number.
   */
  private void fill(int from, int to) {
    double[] shares = this.shares;
    int width = this.width;
    for (int plant = from; plant < to; plant++) {
      int seed = pedigree.isPlainCross(plant) ? pedigree.seedParent(plant) : Pedigree.UNKNOWN;
      int pollen = seed < 0 ? Pedigree.UNKNOWN : pedigree.pollenParent(plant);
      if (pollen < 0) {
        fillOther(plant);
        continue;
      }
      int k = 0;
      for (; k < width - 11; k += 12) {
        int s = seed * width + k;
        int p = pollen * width + k;
        double a = shares[s] + shares[p];
        double b = shares[s + 1] + shares[p + 1];
        double c = shares[s + 2] + shares[p + 2];
        double d = shares[s + 3] + shares[p + 3];
        double e = shares[s + 4] + shares[p + 4];
        double f = shares[s + 5] + shares[p + 5];
        double g = shares[s + 6] + shares[p + 6];
        double h = shares[s + 7] + shares[p + 7];
        double i = shares[s + 8] + shares[p + 8];
        double j = shares[s + 9] + shares[p + 9];
        double l = shares[s + 10] + shares[p + 10];
        double m = shares[s + 11] + shares[p + 11];
        int t = plant * width + k;
        shares[t] = 0.5 * a;
        shares[t + 1] = 0.5 * b;
        shares[t + 2] = 0.5 * c;
        shares[t + 3] = 0.5 * d;
        shares[t + 4] = 0.5 * e;
        shares[t + 5] = 0.5 * f;
        shares[t + 6] = 0.5 * g;
        shares[t + 7] = 0.5 * h;
        shares[t + 8] = 0.5 * i;
        shares[t + 9] = 0.5 * j;
        shares[t + 10] = 0.5 * l;
        shares[t + 11] = 0.5 * m;
      }
      for (; k < width; k++) {
        shares[plant * width + k] = 0.5 * (shares[seed * width + k] + shares[pollen * width + k]);
      }
    }
  }

  private void fillOther(int plant) {
    Arrays.fill(shares, plant * width, (plant + 1) * width, 0.0);
    if (pedigree.isRamet(plant)) {
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

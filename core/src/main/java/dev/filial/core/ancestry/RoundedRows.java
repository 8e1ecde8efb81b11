package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Shares of any pedigree in doubles: gametes of unequal sets, several ways weighed against each
 * other, make-ups in thirds, and lines of more generations than whole numbers hold.
 *
 * <p>Each share is a mean of shares, so its error grows by a rounding or two a generation.
 */
final class RoundedRows implements ShareRows, FounderRows {

  private final Pedigree pedigree;
  private final List<String> taxa;
  private final int width;
  private final double[] shares;

  private RoundedRows(Pedigree pedigree, List<String> taxa, int width, double[] shares) {
    this.pedigree = pedigree;
    this.taxa = taxa;
    this.width = width;
    this.shares = shares;
  }

  /**
   * The shares of all plants.
   *
   * @param spare rows that are no longer needed, whose array is taken if it is long enough
   * @throws IllegalArgumentException if plants times columns exceed 2,147,483,639
   */
  static ShareRows of(Pedigree pedigree, List<String> taxa, int width, Optional<ShareRows> spare) {
    int needed = ExpectedShares.arrayLength(pedigree, width, width);
    double[] shares =
        spare.orElse(null) instanceof RoundedRows old && old.shares.length >= needed
            ? old.shares
            : new double[needed];
    RoundedRows rows = new RoundedRows(pedigree, taxa, width, shares);
    LevelByLevel.run(pedigree, ExpectedShares.chunk(width), rows::fillPlants);
    return rows;
  }

  private void fillPlants(int from, int to) {
    int founders = Math.min(to, pedigree.levelStart(1));
    if (from < founders) {
      FounderRows.each(pedigree, from, founders, this);
    }
    fillBred(Math.max(from, founders), to);
  }

  @Override
  public void copy(int from, int to) {
    System.arraycopy(shares, from * width, shares, to * width, width);
  }

  @Override
  public void fill(int plant, Makeup makeup) {
    Arrays.fill(shares, plant * width, (plant + 1) * width, 0.0);
    makeup
        .shares()
        .forEach(
            (taxon, share) ->
                shares[plant * width + Collections.binarySearch(taxa, taxon)] = share.toDouble());
    if (pedigree.hasUnknown()) {
      addUnknown(plant, makeup.unknownShare().toDouble());
    }
  }

  /**
   * Of a plain cross, the mean of two rows, four numbers at a time. All of them are read before any
   * is written: the compiler cannot know that the rows are different ones, and would else wait for
   * each number.
   */
  private void fillBred(int from, int to) {
    double[] shares = this.shares;
    int width = this.width;
    for (int plant = from; plant < to; plant++) {
      int seed = pedigree.isPlainCross(plant) ? pedigree.seedParent(plant) : Pedigree.UNKNOWN;
      int pollen = seed < 0 ? Pedigree.UNKNOWN : pedigree.pollenParent(plant);
      if (pollen < 0) {
        fillOther(plant);
        continue;
      }
      int s = seed * width;
      int p = pollen * width;
      int t = plant * width;
      int k = 0;
      for (; k < width - 3; k += 4) {
        double a = shares[s + k] + shares[p + k];
        double b = shares[s + k + 1] + shares[p + k + 1];
        double c = shares[s + k + 2] + shares[p + k + 2];
        double d = shares[s + k + 3] + shares[p + k + 3];
        shares[t + k] = 0.5 * a;
        shares[t + k + 1] = 0.5 * b;
        shares[t + k + 2] = 0.5 * c;
        shares[t + k + 3] = 0.5 * d;
      }
      for (; k < width; k++) {
        shares[t + k] = 0.5 * (shares[s + k] + shares[p + k]);
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

  @Override
  public double share(int plant, int column) {
    return shares[plant * width + column];
  }

  @Override
  public Optional<Fraction> fraction(int plant, int column) {
    return Optional.empty();
  }

  @Override
  public void copyTo(int from, int to, double[] target) {
    System.arraycopy(shares, from * width, target, from * width, (to - from) * width);
  }
}

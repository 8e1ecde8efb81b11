package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The expected share of each taxon in every plant of a pedigree.
 *
 * <p>The same means as {@link ExpectedAncestry}, for all plants at once: a plant's shares are the
 * mean of its parents' shares weighted by the chromosome sets each gamete brought, and where it may
 * have come about in several ways, the mean over them.
 *
 * <p>They are exact where every plant that is no founder comes of one certain cross of two equal
 * gametes, or is a copy of another; where the founders' stated shares are halves, quarters and so
 * on; and where no line is longer than 31 generations, less one for each power of two in the
 * founders' denominators. A share is then a whole number over a power of two, and the mean of two
 * such a whole number over the next power: rational arithmetic, in which nothing is rounded. Every
 * other pedigree is reckoned in doubles throughout, within 1e-12 of the exact shares.
 *
 * <p>Time is linear in plants times taxa, and large levels are shared out among the threads of the
 * common pool. Where the shares are exact, a plant takes four bytes a taxon, their number rounded
 * up to an even one; else it takes eight bytes a taxon.
 *
 * <p>Safe to share between threads until it is given to {@link #of(Pedigree, ExpectedShares)}.
 */
public final class ExpectedShares {

  /** How many numbers are worth handing to another thread. */
  private static final int CHUNK = 1 << 14;

  private static final int LONGEST_ARRAY = Integer.MAX_VALUE - 8;

  private final Pedigree pedigree;
  private final List<String> taxa;
  private final int width;
  private final ShareRows rows;
  private volatile boolean givenAway;

  private ExpectedShares(Pedigree pedigree, Optional<ShareRows> spare) {
    this.pedigree = pedigree;
    this.taxa = List.copyOf(pedigree.taxa());
    this.width = taxa.size() + (pedigree.hasUnknown() ? 1 : 0);
    this.rows =
        ExactRows.of(pedigree, taxa, width, spare)
            .orElseGet(() -> RoundedRows.of(pedigree, taxa, width, spare));
  }

  /**
   * The shares of all plants.
   *
   * @throws IllegalArgumentException if plants times {@link #width} exceed 2,147,483,639, or twice
   *     that where the shares are exact
   */
  public static ExpectedShares of(Pedigree pedigree) {
    return new ExpectedShares(pedigree, Optional.empty());
  }

  /**
   * The shares of all plants, written over an earlier result if they fit into its memory, so that
   * asking again and again need not allocate. The earlier result is lost either way: asked for a
   * share from then on, it refuses. No thread may be asking it meanwhile.
   *
   * @throws IllegalArgumentException as {@link #of(Pedigree)} does
   * @throws IllegalStateException if the earlier result was already given away
   */
  public static ExpectedShares of(Pedigree pedigree, ExpectedShares earlier) {
    ShareRows spare = earlier.rows();
    earlier.givenAway = true;
    return new ExpectedShares(pedigree, Optional.of(spare));
  }

  /** How many plants of so many columns are worth handing to another thread. */
  static int chunk(int width) {
    return Math.max(1, CHUNK / Math.max(1, width));
  }

  /** The length of an array of so many elements a plant. */
  static int arrayLength(Pedigree pedigree, int width, int elements) {
    long length = (long) pedigree.size() * elements;
    if (length > LONGEST_ARRAY) {
      throw new IllegalArgumentException(
          pedigree.size()
              + " plants times "
              + width
              + " taxa are more numbers than one array holds; ask for a part of the pedigree");
    }
    return (int) length;
  }

  private ShareRows rows() {
    if (givenAway) {
      throw new IllegalStateException(
          "these shares were given away to be written over; ask the result that took them");
    }
    return rows;
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

  /** Whether the shares are exact; else they are within 1e-12. */
  public boolean isExact() {
    return rows() instanceof ExactRows;
  }

  /** The share of a taxon in a plant, 0 if the pedigree does not know the taxon. */
  public double share(int plant, String taxon) {
    int column = Collections.binarySearch(taxa, taxon);
    return column < 0 ? 0.0 : rows().share(plant, column);
  }

  /** The same as a fraction; empty unless the shares {@linkplain #isExact are exact}. */
  public Optional<Fraction> fraction(int plant, String taxon) {
    int column = Collections.binarySearch(taxa, taxon);
    return column >= 0
        ? rows().fraction(plant, column)
        : Optional.of(Fraction.ZERO).filter(zero -> isExact());
  }

  /** The unknown share of a plant. */
  public double unknown(int plant) {
    ShareRows rows = rows();
    return pedigree.hasUnknown() ? rows.share(plant, taxa.size()) : 0.0;
  }

  /** A plant's shares: one a taxon in the order of {@link #taxa}, then the unknown share. */
  public double[] row(int plant) {
    ShareRows rows = rows();
    double[] row = new double[taxa.size() + 1];
    Arrays.setAll(row, column -> column < width ? rows.share(plant, column) : 0.0);
    return row;
  }

  /**
   * Writes the shares of all plants into an array, row after row of {@link #width} numbers: that of
   * plant {@code i} in column {@code k} to {@code i * width() + k}. What the array holds beyond
   * stays as it is.
   *
   * @throws IllegalArgumentException if the array is shorter than plants times {@link #width}
   */
  public void copyTo(double[] target) {
    ShareRows rows = rows();
    int plants = pedigree.size();
    if (target.length < (long) plants * width) {
      throw new IllegalArgumentException(
          "%d plants times %d columns do not fit into an array of %d; give one of %d"
              .formatted(plants, width, target.length, (long) plants * width));
    }
    if (plants == 0) {
      return;
    }
    int chunk = chunk(width);
    int last = (plants - 1) / chunk;
    IntStream chunks = IntStream.rangeClosed(0, last);
    (last == 0 ? chunks : chunks.parallel())
        .forEach(i -> rows.copyTo(i * chunk, (int) Math.min(plants, (i + 1L) * chunk), target));
  }
}

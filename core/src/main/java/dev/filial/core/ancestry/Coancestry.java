package dev.filial.core.ancestry;

import dev.filial.core.heredity.Meiosis;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeException;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * How closely plants of a pedigree are related, and how inbred they are.
 *
 * <p>The coancestry of two plants is the chance that an allele drawn from one and an allele drawn
 * from the other at the same locus are copies of one allele of a founder; the inbreeding
 * coefficient of a plant is the same chance for two of its own chromosome sets (Malécot 1948;
 * Wright 1922, American Naturalist 56:330-338, from memory). Founders count as unrelated and not
 * inbred, and so does each parent that is not known. Ramets and certain apomicts are one genotype
 * with their source. Where a plant may have come about in several ways, the figures are the means
 * by how likely each is.
 *
 * <p>Any ploidy: an allele of a plant is of either parent in proportion to the sets each gave, and
 * two sets of one gamete are alike as {@code SetPairs} has it; a gamete of a tetraploid carries one
 * chromosome's allele twice with the chance of double reduction, 0 unless stated. Doubles, within
 * 1e-12.
 *
 * <p>Immutable; safe to share between threads.
 */
public final class Coancestry {

  private static final int CHUNK = 1 << 12;

  private final Pedigree pedigree;
  private final double doubleReduction;

  /** With more genotypes than this they are traced back, and no table is made. */
  private final int largestTable;

  private Coancestry(Pedigree pedigree, double doubleReduction, int largestTable) {
    this.pedigree = pedigree;
    this.doubleReduction = doubleReduction;
    this.largestTable = largestTable;
  }

  /** The relations within a pedigree, without double reduction. Nothing is computed yet. */
  public static Coancestry of(Pedigree pedigree) {
    return new Coancestry(pedigree, 0, CoancestryTable.MOST);
  }

  /**
   * The same with the chance α that a tetraploid's gamete carries one chromosome's allele twice.
   *
   * @param alpha 0 to 1/6
   * @throws IllegalArgumentException if it is not
   */
  public Coancestry withDoubleReduction(double alpha) {
    if (!(alpha >= 0 && alpha <= Meiosis.Tetrasomic.MOST.toDouble())) {
      throw new IllegalArgumentException(
          "a double reduction of " + alpha + "; it lies between 0 and 1/6");
    }
    return new Coancestry(pedigree, alpha, largestTable);
  }

  /** The same with another limit to tables, so that a test need not be large to trace back. */
  Coancestry withLargestTable(int genotypes) {
    return new Coancestry(pedigree, doubleReduction, genotypes);
  }

  /**
   * The coancestry of two plants, 0 to 1; of a plant with itself (1 + (m − 1) F) / m at ploidy m.
   * The cost is by the square of the plants behind them, up to some thousands, and then as {@link
   * #inbreeding()}.
   */
  public double between(int plant, int other) {
    return pair(plant, other).coancestry();
  }

  /**
   * Two plants, worked out together.
   *
   * @param coancestry of one with the other, 0 to 1
   * @param inbreedingOfOne the inbreeding coefficient of the first
   * @param inbreedingOfOther that of the other
   */
  public record Pair(double coancestry, double inbreedingOfOne, double inbreedingOfOther) {}

  /** The coancestry of two plants and their inbreeding coefficients, at the cost of one of them. */
  public Pair pair(int plant, int other) {
    GeneFlow flow = GeneFlow.behind(pedigree, plant, other);
    Kin kin = kin(flow);
    int one = flow.nodeOf(plant);
    int two = flow.nodeOf(other);
    return new Pair(kin.between(one, two), kin.inbreeding(one), kin.inbreeding(two));
  }

  /** The inbreeding coefficient of one plant, 0 to 1. The cost is as of {@link #between}. */
  public double inbreeding(int plant) {
    return pair(plant, plant).inbreedingOfOne();
  }

  /**
   * The inbreeding coefficient that seedlings of a cross would have, with ordinary gametes of half
   * the sets: for diploids, the coancestry of the parents.
   *
   * @throws PedigreeException if a parent is of odd ploidy or of one that is not certain, so that
   *     there is no half
   */
  public double inbreedingOfSeedlings(int seed, int pollen) {
    GeneFlow flow = GeneFlow.behind(pedigree, seed, pollen);
    GeneFlow.Way[] cross = {
      new GeneFlow.Way.Cross(1, flow.nodeOf(seed), half(seed), flow.nodeOf(pollen), half(pollen))
    };
    return new SetPairs(flow, doubleReduction).inbreeding(cross, kin(flow));
  }

  private int half(int plant) {
    int sets = pedigree.ploidy(plant);
    if (sets == 0 || sets % 2 == 1) {
      throw new PedigreeException(
          pedigree.code(plant)
              + (sets == 0
                  ? " has a ploidy that differs between the ways it may have come about"
                  : " has " + sets + " chromosome sets, of which there is no half")
              + "; state how many its gamete brings");
    }
    return sets / 2;
  }

  private Kin kin(GeneFlow flow) {
    SetPairs sets = new SetPairs(flow, doubleReduction);
    return flow.size() <= largestTable
        ? CoancestryTable.of(flow, sets)
        : TracedCoancestry.of(flow, sets);
  }

  /**
   * The inbreeding coefficients of all plants, by index.
   *
   * <p>Only plants that are parents are related to each other; any other has the coancestry of its
   * parents. Up to 8,192 parents that takes a table of their square, and one look a plant. With
   * more parents each pair of them that has offspring is traced back once: linear memory, and as
   * many steps a pair as plants stand behind it.
   */
  public double[] inbreeding() {
    GeneFlow parents = GeneFlow.ofParents(pedigree);
    SetPairs sets = new SetPairs(parents, doubleReduction);
    Kin kin = kin(parents);
    OfPair pairs =
        kin instanceof TracedCoancestry traced
            ? new PairsTraced(pedigree, parents, traced)
            : kin::between;
    double[] result = new double[pedigree.size()];
    int chunks = (pedigree.size() + CHUNK - 1) / CHUNK;
    IntStream.range(0, chunks)
        .parallel()
        .forEach(
            chunk -> {
              int to = Math.min(pedigree.size(), (chunk + 1) * CHUNK);
              for (int p = chunk * CHUNK; p < to; p++) {
                result[p] = inbreeding(p, parents, sets, kin, pairs);
              }
            });
    return result;
  }

  private double inbreeding(int plant, GeneFlow parents, SetPairs sets, Kin kin, OfPair pairs) {
    int node = parents.nodeOf(plant);
    if (node >= 0) {
      return kin.inbreeding(node);
    }
    if (isPlainDiploid(pedigree, plant)) {
      return pairs.between(
          parents.nodeOf(pedigree.seedParent(plant)), parents.nodeOf(pedigree.pollenParent(plant)));
    }
    int genotype = GeneFlow.genotype(pedigree, plant);
    if (genotype != plant) {
      return inbreeding(genotype, parents, sets, kin, pairs);
    }
    return pedigree.isFounder(plant) ? 0 : sets.inbreeding(parents.waysOf(plant), kin);
  }

  /** The coancestry of two parents. */
  private interface OfPair {
    double between(int seed, int pollen);
  }

  /** All pairs of parents that have offspring, each traced once. */
  private static final class PairsTraced implements OfPair {
    private final long[] pairs;
    private final double[] theta;

    PairsTraced(Pedigree pedigree, GeneFlow parents, TracedCoancestry kin) {
      pairs =
          TracedCoancestry.distinct(
              IntStream.range(0, pedigree.size())
                  .filter(p -> isPlainDiploid(pedigree, p) && parents.nodeOf(p) < 0)
                  .mapToLong(
                      p ->
                          TracedCoancestry.pair(
                              parents.nodeOf(pedigree.seedParent(p)),
                              parents.nodeOf(pedigree.pollenParent(p))))
                  .toArray());
      theta = kin.ofPairs(pairs);
    }

    @Override
    public double between(int seed, int pollen) {
      int at = Arrays.binarySearch(pairs, TracedCoancestry.pair(seed, pollen));
      return theta[at];
    }
  }

  private static boolean isPlainDiploid(Pedigree pedigree, int plant) {
    return pedigree.isPlainCross(plant) && pedigree.ploidy(plant) == 2;
  }

  /**
   * The coancestries of chosen plants with each other, in the order given. Two ramets of one plant
   * are one genotype, and alike to all others.
   *
   * @throws IllegalArgumentException if there are more than {@link CoancestryMatrix#MOST}; {@link
   *     #eachRow} gives them one plant at a time
   */
  public CoancestryMatrix matrix(int... plants) {
    CoancestryMatrix.requireSize(plants.length);
    double[][] rows = new double[plants.length][];
    eachRow((k, row) -> rows[k] = Arrays.copyOf(row, k + 1), plants);
    return new CoancestryMatrix(pedigree, plants.clone(), rows);
  }

  /** What takes the coancestries of one plant with all. */
  public interface RowReader {
    /**
     * Takes a row; it is overwritten after the call.
     *
     * @param index which of the chosen plants it is of
     * @param coancestries with each of the chosen plants, in the order given
     */
    void read(int index, double[] coancestries);
  }

  /**
   * The coancestries of chosen plants, one row after the other: memory is linear in the plants
   * behind them and in their number, so that no set is too large. A row costs as many steps as
   * there are plants behind.
   */
  public void eachRow(RowReader reader, int... plants) {
    GeneFlow flow = GeneFlow.behind(pedigree, plants);
    Kin kin = kin(flow);
    int[] nodes = new int[plants.length];
    for (int k = 0; k < nodes.length; k++) {
      nodes[k] = flow.nodeOf(plants[k]);
    }
    double[] all = new double[flow.size()];
    double[] row = new double[plants.length];
    for (int k = 0; k < plants.length; k++) {
      kin.row(nodes[k], all);
      for (int j = 0; j < row.length; j++) {
        row[j] = all[nodes[j]];
      }
      reader.read(k, row);
    }
  }
}

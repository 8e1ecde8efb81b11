package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Pedigree;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.jspecify.annotations.Nullable;

/**
 * The whole distribution of genome shares, by dropping genomes with crossovers down a pedigree
 * (MacCluer and others 1986, Zoo Biology 5:147-160, from memory; here with chromosomes for loci).
 *
 * <p>Chromosomes of founders are wholly of their taxon. A gamete starts on either of its parent's
 * two homologs and changes over at crossovers that fall at random along the map, one a morgan on
 * the average (Haldane 1919); each chromosome by itself. Where plants may have come about in
 * several ways, one is drawn for each genome. A parent nobody knows is wholly of an unknown taxon.
 *
 * <p>Blocks of genomes have random streams of their own (xoshiro256++, jumped), so that a seed
 * gives the same genomes on any number of threads. The cost of a genome is the crossovers and
 * chromosomes of all gametes behind the plant. Immutable.
 */
public final class GenomeDrop {

  /** How many genomes are dropped if nothing is said. */
  public static final int GENOMES = 10_000;

  /** The most numbers kept: 800 MB. */
  private static final long MOST_NUMBERS = 100_000_000;

  /** The most stretches of chromosomes made: a minute or so on two cores. */
  private static final double MOST_STRETCHES = 5e9;

  private static final int BLOCK = 256;

  private final Pedigree pedigree;
  private final GeneticMap map;
  private final int genomes;
  private final long seed;

  private GenomeDrop(Pedigree pedigree, GeneticMap map, int genomes, long seed) {
    this.pedigree = pedigree;
    this.map = map;
    this.genomes = genomes;
    this.seed = seed;
  }

  /** Dropping {@link #GENOMES} over {@link GeneticMap#assumed} with the seed 1. */
  public static GenomeDrop of(Pedigree pedigree) {
    return new GenomeDrop(pedigree, GeneticMap.assumed(), GENOMES, 1);
  }

  /** The same over another map. */
  public GenomeDrop withMap(GeneticMap other) {
    return new GenomeDrop(pedigree, other, genomes, seed);
  }

  /**
   * The same with another number of genomes.
   *
   * @throws IllegalArgumentException if it is below 1
   */
  public GenomeDrop withGenomes(int number) {
    if (number < 1) {
      throw new IllegalArgumentException(number + " genomes to drop; state 1 or more");
    }
    return new GenomeDrop(pedigree, map, number, seed);
  }

  /** The same with another seed. */
  public GenomeDrop withSeed(long other) {
    return new GenomeDrop(pedigree, map, genomes, other);
  }

  /**
   * What the dropped genomes of a plant hold.
   *
   * @param code the plant
   * @param map the map they were dropped over
   * @param seed what they can be dropped again with
   * @param taxa the taxa behind the plant, by name
   * @param shares the shares of each of these
   * @param unknown the share of what nobody knows; null if all is known
   * @param different the share of the map on which the two sets are of different known taxa
   * @param takenAsSelfed acquired plants of later stated generations, which were taken as selfed
   */
  public record Dropped(
      String code,
      GeneticMap map,
      long seed,
      List<String> taxa,
      List<ShareSample> shares,
      @Nullable ShareSample unknown,
      ShareSample different,
      List<String> takenAsSelfed) {

    /** Copies the lists. */
    public Dropped {
      taxa = List.copyOf(taxa);
      shares = List.copyOf(shares);
      takenAsSelfed = List.copyOf(takenAsSelfed);
    }

    /** The shares of a taxon; null if it is not behind the plant. */
    public @Nullable ShareSample of(String taxon) {
      int at = taxa.indexOf(taxon);
      return at < 0 ? null : shares.get(at);
    }
  }

  /**
   * Drops genomes to a plant.
   *
   * @throws NoSpreadException if the plant or one behind it is not diploid, or is an acquired
   *     hybrid of which only shares are stated
   * @throws IllegalArgumentException if so many genomes of so many taxa cannot be kept, or would
   *     take minutes to drop
   * @throws dev.filial.core.pedigree.PedigreeException if there is no plant of this code
   */
  public Dropped of(String code) {
    TaxonLines lines = TaxonLines.behind(pedigree, code);
    int kinds = lines.width() + 1;
    if ((long) genomes * kinds > MOST_NUMBERS) {
      throw new IllegalArgumentException(
          genomes
              + " genomes of "
              + lines.width()
              + " taxa are more than can be kept; drop at most "
              + MOST_NUMBERS / kinds);
    }
    // Each gamete ends a stretch at every crossover and at the end of every chromosome.
    double each = 2.0 * lines.flow().size() * (map.total() + map.chromosomes());
    if (genomes * each > MOST_STRETCHES) {
      throw new IllegalArgumentException(
          genomes
              + " genomes down "
              + lines.flow().size()
              + " plants over "
              + map.text()
              + " would take too long; drop at most "
              + Math.max(1, (long) (MOST_STRETCHES / each)));
    }
    double[][] found = new double[kinds][genomes];
    int blocks = (genomes + BLOCK - 1) / BLOCK;
    UniformRandomProvider[] streams = streams(blocks);
    IntStream all = IntStream.range(0, blocks);
    if (blocks > 4) {
      all = all.parallel();
    }
    all.forEach(
        block ->
            new Genomes(lines, map, streams[block])
                .fill(found, block * BLOCK, Math.min(genomes, (block + 1) * BLOCK)));
    List<ShareSample> samples =
        IntStream.range(0, kinds).mapToObj(k -> new ShareSample(found[k])).toList();
    return new Dropped(
        code,
        map,
        seed,
        lines.taxa(),
        samples.subList(0, lines.taxa().size()),
        lines.anyUnknown() ? samples.get(lines.unknownTaxon()) : null,
        samples.get(kinds - 1),
        lines.takenAsSelfed());
  }

  /** One stream a block, each 2^128 numbers after the one before. */
  private UniformRandomProvider[] streams(int blocks) {
    SplitMix64 bits = new SplitMix64(seed);
    XoShiRo256PlusPlus first =
        new XoShiRo256PlusPlus(
            new long[] {bits.nextLong(), bits.nextLong(), bits.nextLong(), bits.nextLong()});
    UniformRandomProvider[] streams = new UniformRandomProvider[blocks];
    for (int block = 0; block < blocks; block++) {
      // The stream that is handed out stays where it was; the other goes on behind it.
      streams[block] = first.jump();
    }
    return streams;
  }
}

package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.RandomPedigree;
import dev.filial.core.pedigree.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.ForkJoinPool;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.junit.jupiter.api.Test;

/** Genomes dropped with crossovers, against closed forms and the exact spread. */
class GenomeDropTest {

  private static final String A = "E. agavoides";
  private static final String B = "E. laui";
  private static final GeneticMap ONE_MORGAN = GeneticMap.of(1);

  private final List<PlantRecord> records = new ArrayList<>();

  private void start() {
    records.add(PlantRecord.pure("A", A));
    records.add(PlantRecord.pure("B", B));
    cross("F1", "A", "B");
    cross("BC1", "F1", "A");
    cross("BC2", "BC1", "A");
    cross("F2", "F1", "F1");
    cross("F2'", "F1", "F1");
    cross("F3", "F2", "F2'");
  }

  private void cross(String code, String seed, String pollen) {
    records.add(PlantRecord.cross(code, seed, pollen));
  }

  private GenomeDrop drop() {
    return GenomeDrop.of(Pedigree.of(records)).withMap(ONE_MORGAN).withGenomes(200_000);
  }

  private ShareSample ofB(String code) {
    return Objects.requireNonNull(drop().of(code).of(B));
  }

  private static void assertMoments(ShareSample sample, double mean, double variance) {
    double[] values = sample.values();
    double found = sample.mean();
    double fourth = 0;
    for (double value : values) {
      fourth += Math.pow(value - found, 4);
    }
    fourth /= values.length;
    double var = sample.variance();
    assertThat(found).isCloseTo(mean, within(5 * Math.sqrt(variance / values.length) + 1e-9));
    // Of two values by turns, as one way or another, the fourth moment is spent: what is left is of
    // the order of the variance over the number.
    double error =
        5 * Math.sqrt(Math.max(0, fourth - var * var) / values.length)
            + 20 * variance / values.length;
    assertThat(var).isCloseTo(variance, within(error + 1e-9));
  }

  /** Hill 1993 (BC1, F2); BC2 and F3 by sibs as simulated outside the project. */
  @Test
  void droppedGenomesHaveTheKnownVariances() {
    start();
    assertMoments(ofB("BC1"), 0.25, 0.1419169104 / 4);
    assertMoments(ofB("F2"), 0.5, 0.1419169104 / 2);
    assertMoments(ofB("BC2"), 0.125, 0.0236347615);
    assertMoments(ofB("F3"), 0.5, 0.0590598185);
  }

  /**
   * One chromosome of l morgans goes on whole with the chance e^(−l)/2: a BC1 of one morgan lacks
   * the donor altogether in 0.18394 of the seedlings, and in as many has the whole chromosome. Both
   * follow from crossovers falling as a Poisson process (Haldane 1919).
   */
  @Test
  void aChromosomeIsLostAltogetherAsOftenAsNoCrossoverFalls() {
    start();
    ShareSample sample = ofB("BC1");
    double expected = Math.exp(-1) / 2;
    assertThat(sample.none()).isCloseTo(expected, within(5 * sample.standardError(expected)));
    assertThat(1 - sample.below(0.5))
        .isCloseTo(expected, within(5 * sample.standardError(expected)));
    assertThat(sample.histogram(2)[1])
        .isEqualTo((int) Math.rint((1 - sample.below(0.5)) * 200_000));
    assertThat(sample.below(0.125)).isGreaterThan(sample.none()).isLessThan(0.5);
  }

  /**
   * A line selfed until it is fixed has two junctions a morgan (R = 2r/(1+2r), Haldane and
   * Waddington 1931; Fisher 1949, The Theory of Inbreeding): with 50 morgans a hundred.
   */
  @Test
  void aFixedLineHasTwoJunctionsAMorgan() {
    start();
    String last = "F2";
    for (int t = 3; t <= 25; t++) {
      cross("S" + t, last, last);
      last = "S" + t;
    }
    GeneticMap map = GeneticMap.of(50);
    TaxonLines lines = TaxonLines.behind(Pedigree.of(records), last);
    double junctions = 0;
    int genomes = 400;
    for (int seed = 0; seed < genomes; seed++) {
      Genomes dropping =
          new Genomes(lines, map, new XoShiRo256PlusPlus(new long[] {seed, 1, 2, 3}));
      dropping.fill(new double[3][1], 0, 1);
      junctions += dropping.egg(lines.target()).size - 1;
    }
    // Near Poisson: the standard error of the mean is about half a junction.
    assertThat(junctions / genomes).isCloseTo(100, within(3.0));
  }

  @Test
  void aSeedGivesTheSameGenomesOnAnyNumberOfThreads() throws Exception {
    start();
    GenomeDrop drop = drop().withGenomes(5_000).withSeed(7);
    double[] here = Objects.requireNonNull(drop.of("F3").of(B)).values();
    for (int threads : new int[] {1, 3}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        double[] there =
            pool.submit(() -> Objects.requireNonNull(drop.of("F3").of(B)).values()).get();
        assertThat(there).isEqualTo(here);
      } finally {
        pool.shutdown();
      }
    }
    assertThat(Objects.requireNonNull(drop.withSeed(8).of("F3").of(B)).values()).isNotEqualTo(here);
    double[] fewer = Objects.requireNonNull(drop.withGenomes(10).of("F3").of(B)).values();
    assertThat(here).contains(fewer);
  }

  @Test
  void centralRangesHoldWhatTheySay() {
    start();
    ShareSample sample = ofB("F2");
    ShareSample.Range range = sample.central(0.9);
    assertThat(sample.below(range.low())).isCloseTo(0.05, within(0.001));
    assertThat(sample.below(range.high())).isCloseTo(0.95, within(0.001));
    assertThat(sample.central(0).low()).isEqualTo(sample.quantile(0.5));
    assertThatThrownBy(() -> sample.quantile(1.5))
        .hasMessage("a fraction of 1.5 of the genomes; it lies between 0 and 1");
    assertThat(drop().of("F2").different().mean()).isCloseTo(0.5, within(0.01));
    assertThat(drop().of("F1").different().central(1)).isEqualTo(new ShareSample.Range(1, 1));
    assertThat(drop().of("F1").of("E. setosa")).isNull();
  }

  @Test
  void eachGenomeComesAboutInOneWay() {
    start();
    records.add(
        PlantRecord.seedling(
            "X",
            Case.cross(Fraction.of(3, 4), Route.CROSS, "A", "A"),
            Case.cross(Fraction.of(1, 4), Route.STRAY, "A", "B")));
    ShareSample sample = ofB("X");
    assertThat(sample.none()).isCloseTo(0.75, within(5 * sample.standardError(0.75)));
    assertThat(sample.below(0.49)).isEqualTo(sample.none());
  }

  @Test
  void tooManyGenomesAreRefusedBeforeTheyAreDropped() {
    start();
    assertThatThrownBy(() -> drop().withGenomes(Integer.MAX_VALUE).of("F2"))
        .hasMessage(
            "2147483647 genomes of 2 taxa are more than can be kept; drop at most 33333333");
    assertThatThrownBy(
            () -> drop().withMap(GeneticMap.alike(1000, 100)).withGenomes(3_000_000).of("F2"))
        .hasMessage(
            "3000000 genomes down 4 plants over 1000 chromosomes of 10000 cM would take too long;"
                + " drop at most 6188");
    assertThatThrownBy(() -> drop().withGenomes(0))
        .hasMessage("0 genomes to drop; state 1 or more");
  }

  @Provide
  Arbitrary<List<PlantRecord>> records() {
    return RandomPedigree.records();
  }

  /**
   * The exact spread and the dropped one have nothing in common but the pedigree. The seed is
   * fixed: a bound of five standard errors is passed once in a while.
   */
  @Property(tries = 60, seed = "20261125")
  void theExactSpreadIsThatOfDroppedGenomes(
      @ForAll("records") List<PlantRecord> some, @ForAll long seed) {
    Pedigree pedigree = Pedigree.of(some);
    String code = pedigree.code(pedigree.size() - 1);
    GenomeSpread.Spread exact;
    try {
      exact = GenomeSpread.of(pedigree).withMap(GeneticMap.of(1.5, 0.4)).of(code);
    } catch (NoSpreadException e) {
      Assume.that(false);
      return;
    }
    GenomeDrop.Dropped dropped =
        GenomeDrop.of(pedigree)
            .withMap(GeneticMap.of(1.5, 0.4))
            .withGenomes(20_000)
            .withSeed(seed)
            .of(code);
    for (GenomeSpread.OfTaxon one : exact.taxa()) {
      assertMoments(Objects.requireNonNull(dropped.of(one.taxon())), one.mean(), one.variance());
    }
    if (exact.unknown() != null) {
      assertMoments(
          Objects.requireNonNull(dropped.unknown()),
          exact.unknown().mean(),
          exact.unknown().variance());
    }
    ShareSample different = dropped.different();
    assertThat(different.mean())
        .isCloseTo(exact.different(), within(5 * Math.sqrt(different.variance() / 20_000) + 1e-9));
  }
}

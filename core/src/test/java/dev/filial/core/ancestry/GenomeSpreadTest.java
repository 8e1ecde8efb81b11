package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.StatedGeneration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** How far genome shares spread, against closed forms. */
class GenomeSpreadTest {

  private static final GeneticMap ONE_MORGAN = GeneticMap.of(1);
  private static final String A = "E. agavoides";
  private static final String B = "E. laui";
  private static final double NEAR = 1e-10;

  private final List<PlantRecord> records = new ArrayList<>();

  private void start() {
    records.add(PlantRecord.pure("A", A));
    records.add(PlantRecord.pure("B", B));
    cross("F1", "A", "B");
  }

  private void cross(String code, String seed, String pollen) {
    records.add(PlantRecord.cross(code, seed, pollen));
  }

  private GenomeSpread.Spread spread(String code, GeneticMap map) {
    return GenomeSpread.of(Pedigree.of(records)).withMap(map).of(code);
  }

  private GenomeSpread.OfTaxon ofB(String code, GeneticMap map) {
    return Objects.requireNonNull(spread(code, map).of(B));
  }

  private double variance(String code) {
    return ofB(code, ONE_MORGAN).variance();
  }

  @Test
  void everyF1IsHalfAndHalf() {
    start();
    GenomeSpread.Spread spread = spread("F1", ONE_MORGAN);
    assertThat(spread.taxa()).hasSize(2);
    assertThat(spread.of(B)).isEqualTo(new GenomeSpread.OfTaxon(B, 0.5, 0, 0));
    assertThat(spread.different()).isEqualTo(1);
    assertThat(spread.alike()).isZero();
    assertThat(spread.unknown()).isNull();
    assertThat(spread.of("E. setosa")).isNull();
  }

  /**
   * Hill 1993, Journal of Heredity 84:212-213: the share of one grandparental genome in an F1
   * gamete has the variance Σ(2l − 1 + e^(−2l)) / (8 (Σl)²), a BC1 a quarter of it, an F2 half of
   * it. Figures recomputed with R 4.2.2.
   */
  @Test
  void backcrossAndF2HaveHillsVariance() {
    start();
    cross("BC1", "F1", "A");
    cross("F2", "F1", "F1");
    assertThat(4 * variance("BC1")).isCloseTo(0.1419169104, within(NEAR));
    GenomeSpread.OfTaxon bc1 = ofB("BC1", ONE_MORGAN);
    assertThat(bc1.mean()).isEqualTo(0.25);
    assertThat(bc1.standardDeviation()).isCloseTo(0.1883593045, within(NEAR));
    assertThat(ofB("F2", ONE_MORGAN).standardDeviation()).isCloseTo(0.2663802831, within(NEAR));
    GeneticMap eleven = GeneticMap.alike(11, 1);
    assertThat(ofB("BC1", eleven).standardDeviation()).isCloseTo(0.0567924672, within(NEAR));
    assertThat(ofB("F2", eleven).standardDeviation()).isCloseTo(0.0803166773, within(NEAR));
    GeneticMap uneven = GeneticMap.of(1.3, 0.7, 0.2);
    double sum = 0;
    for (double l : new double[] {1.3, 0.7, 0.2}) {
      sum += 2 * l - 1 + Math.exp(-2 * l);
    }
    assertThat(ofB("BC1", uneven).variance()).isCloseTo(sum / (8 * 2.2 * 2.2) / 4, within(NEAR));
  }

  /** One chromosome of 1 M; values simulated outside the project. */
  @Test
  void laterGenerationsHaveTheSimulatedVariances() {
    start();
    cross("BC1", "F1", "A");
    cross("BC2", "BC1", "A");
    cross("BC3", "BC2", "A");
    cross("F2", "F1", "F1");
    cross("F2'", "F1", "F1");
    cross("F3 selfed", "F2", "F2");
    cross("F3 sibbed", "F2", "F2'");
    assertThat(variance("BC2")).isCloseTo(0.0236347615, within(NEAR));
    assertThat(variance("BC3")).isCloseTo(0.0121593233, within(NEAR));
    assertThat(variance("F3 selfed")).isCloseTo(0.0945390461, within(NEAR));
    assertThat(variance("F3 sibbed")).isCloseTo(0.0590598185, within(NEAR));
  }

  /**
   * Single-seed descent to fixation: two loci of a selfed line are recombined with R = 2r/(1+2r),
   * of a sib-crossed one with 4r/(1+6r) (Haldane and Waddington 1931, Genetics 16:357-374);
   * integrated over one morgan by Simpson's rule. The first is 0.1091127501.
   */
  @Test
  void fixedLinesRecombineAsHaldaneAndWaddingtonFound() {
    start();
    String last = "F1";
    for (int t = 2; t <= 60; t++) {
      cross("S" + t, last, last);
      last = "S" + t;
    }
    cross("x2", "F1", "F1");
    cross("y2", "F1", "F1");
    for (int t = 3; t <= 160; t++) {
      cross("x" + t, "x" + (t - 1), "y" + (t - 1));
      cross("y" + t, "y" + (t - 1), "x" + (t - 1));
    }
    assertThat(variance("S60")).isCloseTo(0.1091127501, within(NEAR));
    assertThat(variance("S60")).isCloseTo(fixed(r -> 2 * r / (1 + 2 * r)), within(1e-9));
    assertThat(variance("x160")).isCloseTo(fixed(r -> 4 * r / (1 + 6 * r)), within(1e-8));
    assertThat(spread("S60", ONE_MORGAN).different()).isCloseTo(0, within(NEAR));
  }

  /** The variance of the share of a fixed line: (1 − 2R)/4 over all pairs of positions. */
  private static double fixed(DoubleUnaryOperator recombined) {
    int n = 10_000;
    double sum = 0;
    for (int i = 0; i <= n; i++) {
      double d = (double) i / n;
      double r = -Math.expm1(-2 * d) / 2;
      double f = 2 * (1 - d) * (1 - 2 * recombined.applyAsDouble(r)) / 4;
      sum += f * (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2);
    }
    return sum / n / 3;
  }

  /** More generations than the Gauss rule has an exact degree for. */
  @Test
  void aThousandGenerationsOfSelfingEndAsFixedAsSixty() {
    start();
    String last = "F1";
    for (int t = 2; t <= 1000; t++) {
      cross("S" + t, last, last);
      last = "S" + t;
    }
    assertThat(variance(last)).isCloseTo(0.1091127501, within(1e-9));
  }

  /** F1 1; F2 and BC1 1/2; BC2 1/4; F3 selfed 1/4 but sib-crossed 1/2. */
  @Test
  void lociOfTwoTaxaAreCountedByPairsAndNotByShares() {
    start();
    cross("F2", "F1", "F1");
    cross("F2'", "F1", "F1");
    cross("BC1", "F1", "A");
    cross("BC2", "BC1", "A");
    cross("F3 selfed", "F2", "F2");
    cross("F3 sibbed", "F2", "F2'");
    cross("BC1F2", "BC1", "BC1");
    Map<String, Double> different =
        Map.of(
            "F1",
            1.0,
            "F2",
            0.5,
            "BC1",
            0.5,
            "BC2",
            0.25,
            "F3 selfed",
            0.25,
            "F3 sibbed",
            0.5,
            "BC1F2",
            0.25);
    different.forEach(
        (code, expected) ->
            assertThat(spread(code, ONE_MORGAN).different())
                .as(code)
                .isCloseTo(expected, within(NEAR)));
  }

  @Test
  void aTaxonIsAbsentAtALocusAsOftenAsMendelSays() {
    start();
    cross("F2", "F1", "F1");
    cross("BC1", "F1", "A");
    cross("BC2", "BC1", "A");
    assertThat(ofB("F2", ONE_MORGAN).absentAtLocus()).isCloseTo(0.25, within(NEAR));
    assertThat(ofB("BC1", ONE_MORGAN).absentAtLocus()).isCloseTo(0.5, within(NEAR));
    assertThat(ofB("BC2", ONE_MORGAN).absentAtLocus()).isCloseTo(0.75, within(NEAR));
  }

  @Test
  void anOpenPollinatedSeedlingIsHalfOfATaxonNobodyKnows() {
    start();
    records.add(PlantRecord.openPollinated("X", "F1"));
    GenomeSpread.Spread spread = spread("X", ONE_MORGAN);
    assertThat(spread.unknown()).isEqualTo(new GenomeSpread.OfTaxon("unknown", 0.5, 0, 0));
    assertThat(spread.different()).isZero();
    assertThat(spread.alike()).isZero();
    assertThat(variance("X")).isCloseTo(0.1419169104 / 4, within(NEAR));
  }

  /** Mean variance within the ways plus the variance of their means. */
  @Test
  void severalWaysAddTheSpreadBetweenThem() {
    start();
    cross("F2", "F1", "F1");
    cross("BC1", "F1", "A");
    records.add(
        PlantRecord.seedling(
            "X",
            Case.cross(Fraction.of(3, 4), Route.CROSS, "F1", "A"),
            Case.selfing(Fraction.of(1, 4), "F1")));
    double within = 0.75 * variance("BC1") + 0.25 * variance("F2");
    double between = 0.75 * 0.25 * 0.25 * 0.25;
    assertThat(ofB("X", ONE_MORGAN).mean()).isEqualTo(0.3125);
    assertThat(variance("X")).isCloseTo(within + between, within(NEAR));
    // And it is handed on: which way it was holds for all its chromosomes at once.
    cross("Y", "X", "A");
    GeneticMap many = GeneticMap.alike(500, 1);
    assertThat(ofB("Y", many).variance()).isCloseTo(between / 4, within(2e-4));
  }

  @Test
  void anAcquiredF2SpreadsAsOneRaisedHere() {
    start();
    cross("F2", "F1", "F1");
    cross("BC2", "BC1", "A");
    cross("BC1", "F1", "A");
    cross("F3", "F2", "F2");
    cross("BC2F2", "BC2", "BC2");
    acquired("bought F1", StatedGeneration.f1(A, B));
    acquired("bought F2", StatedGeneration.filial(2, A, B));
    acquired("bought F3", StatedGeneration.filial(3, A, B));
    acquired("bought BC2", StatedGeneration.backcross(2, A, B));
    acquired("bought BC2F2", new StatedGeneration.Backcross(2, A, B, 2));
    for (String one : List.of("F1", "F2", "F3", "BC2", "BC2F2")) {
      cross(one + " on A", one, "A");
      cross("bought " + one + " on A", "bought " + one, "A");
      assertThat(variance("bought " + one)).as(one).isCloseTo(variance(one), within(NEAR));
      assertThat(variance("bought " + one + " on A"))
          .isCloseTo(variance(one + " on A"), within(NEAR));
    }
    assertThat(spread("bought F2 on A", ONE_MORGAN).takenAsSelfed()).isEmpty();
    assertThat(spread("bought F3 on A", ONE_MORGAN).takenAsSelfed()).containsExactly("bought F3");
  }

  private void acquired(String code, StatedGeneration generation) {
    Makeup half = Makeup.of(Map.of(A, Fraction.HALF, B, Fraction.HALF));
    records.add(new PlantRecord(code, Founder.hybrid(half).withStated(generation)));
  }

  @Test
  void aHybridOfSharesOnlyHasNoSpread() {
    start();
    records.add(PlantRecord.hybrid("H", Makeup.of(Map.of(A, Fraction.HALF, B, Fraction.of(1, 4)))));
    cross("X", "H", "A");
    assertThatThrownBy(() -> spread("X", ONE_MORGAN))
        .isInstanceOf(NoSpreadException.class)
        .hasMessageStartingWith("H is a hybrid of stated shares only");
    assertThat(spread("F1", ONE_MORGAN).different()).isEqualTo(1);
  }

  @Test
  void beyondDiploidsThereIsNoSpread() {
    start();
    records.add(PlantRecord.pure("T", A, 4));
    records.add(PlantRecord.cross("3x", Gamete.of("T"), Gamete.of("B")));
    records.add(PlantRecord.cross("U", Gamete.unreduced("F1", 2), Gamete.of("B")));
    records.add(PlantRecord.doubled("FF", "F1"));
    for (String code : List.of("3x", "U", "FF")) {
      assertThatThrownBy(() -> spread(code, ONE_MORGAN))
          .isInstanceOf(NoSpreadException.class)
          .hasMessageContaining("worked out for plants of two sets");
    }
  }

  @Test
  void offsetsAndApomictsArePlantsOverAgain() {
    start();
    cross("F2", "F1", "F1");
    records.add(PlantRecord.ramet("F2'", "F2"));
    records.add(PlantRecord.apomict("F2''", "F2'"));
    cross("F3", "F2", "F2");
    cross("F3 too", "F2'", "F2''");
    assertThat(variance("F3 too")).isCloseTo(variance("F3"), within(NEAR));
  }
}

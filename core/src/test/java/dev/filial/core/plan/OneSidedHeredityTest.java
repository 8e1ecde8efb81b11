package dev.filial.core.plan;

import static dev.filial.core.plan.PlanBench.first;
import static dev.filial.core.plan.PlanBench.path;
import static dev.filial.core.plan.PlanBench.then;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Distortion;
import dev.filial.core.heredity.Distortion.Side;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Outcome;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.TraitModel.Row;
import dev.filial.core.heredity.Wish;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Plans where it matters which parent bears the seed: what lies in the cytoplasm, and gametes that
 * do not count alike. Every number is worked by hand.
 */
class OneSidedHeredityTest {

  private static final Locus CYTOPLASM = Locus.cytoplasmic("cytoplasm", "N", "S");
  private static final Locus RESTORER = Locus.of("restorer", "R", "r");
  private static final Genome STERILITY = Genome.unlinked(CYTOPLASM, RESTORER);

  /** Textbook cytoplasmic male sterility: only S without a restorer has no good pollen. */
  private static final TraitModel POLLEN =
      new TraitModel(
          "pollen",
          List.of("good", "none"),
          List.of(
              new Row(Pattern.read(STERILITY.loci(), "N"), Outcome.of("good")),
              new Row(Pattern.read(STERILITY.loci(), "S R_"), Outcome.of("good")),
              new Row(Pattern.read(STERILITY.loci(), "S rr"), Outcome.of("none"))));

  private static final Locus A = Locus.of("A", "A", "a");
  private static final Locus B = Locus.of("B", "B", "b");
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel WAX = TraitModel.dominant("wax", B, List.of("bare", "waxy"));

  private static PlanBench sterile() {
    return new PlanBench(STERILITY, List.of(POLLEN), Wish.showing(POLLEN, "none"));
  }

  private static PlanBench green(Side side) {
    return new PlanBench(
        Genome.unlinked(A).withDistortion(Distortion.share(A, side, "A", Fraction.of(7, 10))),
        List.of(EDGE),
        Wish.showing(EDGE, "green"));
  }

  private static int appearance(PlanBench bench, String... states) {
    return bench.genes().appearances().indexOf(List.of(states));
  }

  private static Optional<PlanSearch.Found> of(List<PlanSearch.Found> ways, CrossPath first) {
    return ways.stream()
        .filter(way -> way.path().seasons() == 2)
        .filter(way -> way.path().seed() == first.seed() && way.path().pollen() == first.pollen())
        .findFirst();
  }

  /**
   * By hand: S RR × N rr gives S Rr, all alike; that as the seed parent by N rr gives S rr 1 in 2,
   * log 0.05 / log 0.5 = 4.3, so 1 and 5. Round the other way all is N and has good pollen for
   * ever.
   */
  @Test
  void aSterileSeedlingComesOnlyOutOfThePlantWithTheSterileCytoplasm() {
    PlanBench bench = sterile().with("N rr").with("S RR");
    List<PlanSearch.Found> ways = bench.search(Goal.of(1, 0.95), 2).ways();
    CrossPath only = first(ways, 2);
    assertThat(only).isEqualTo(path(1, 0, then(0, new Mate.Plant(0, false))));
    // Two crosses beside each other take the cytoplasm from one that 1 bears.
    assertThat(ways)
        .extracting(PlanSearch.Found::path)
        .allMatch(
            path ->
                path.seed() == 1
                    || path.beside().filter(one -> one.seed() == 1 && one.asSeed()).isPresent());
    assertThat(bench.chances(only).seasonChances()).containsExactly(1.0, 0.5);
    assertThat(bench.sowing(only, 0.95).seeds()).containsExactly(1, 5);
    CrossPath other = path(0, 1, then(0, new Mate.Plant(0, false)));
    assertThat(bench.chances(other).seasonChances()).containsExactly(1.0, 0.0);
  }

  /**
   * By hand: N AA bb × N aa BB gives N Aa Bb, which has to be the pollen parent, for S aa bb alone
   * has the cytoplasm: A and B of the pollen 1 in 4, log 0.05 / log 0.75 = 10.4, so 1 and 11.
   */
  @Test
  void aKeptSeedlingIsThePollenParentWhereTheOtherHasTheCytoplasm() {
    Genome genome = Genome.unlinked(CYTOPLASM, A, B);
    PlanBench bench =
        new PlanBench(
                genome,
                List.of(EDGE, WAX),
                Wish.showing(EDGE, "red")
                    .andShowing(WAX, "bare")
                    .andCarrying(Pattern.read(genome.loci(), "S")))
            .with("S aa bb")
            .with("N AA bb")
            .with("N aa BB");
    List<PlanSearch.Found> ways = bench.search(Goal.of(1, 0.95), 2).ways();
    CrossPath best = path(1, 2, then(appearance(bench, "red", "bare"), new Mate.Plant(0, true)));
    assertThat(bench.chances(best).seasonChances()).containsExactly(1.0, 0.25);
    assertThat(bench.sowing(best, 0.95).seeds()).containsExactly(1, 11);
    // Of S aa bb × N AA bb all are S Aa bb; with N aa BB 1 in 2 is S Aa Bb: 1 and 5.
    CrossPath cheaper = first(ways, 2);
    assertThat(cheaper.seed()).isZero();
    assertThat(bench.sowing(cheaper, 0.95).seeds()).containsExactly(1, 5);
  }

  /**
   * Sibs have one seed parent and so one cytoplasm. By hand: of a seed parent that is N RR or S RR,
   * 1 in 2, by N rr, sibs are both S Rr or neither: 1/2 · (1 − 0.75ⁿ), at n = 11 0.479.
   */
  @Test
  void sibsShareTheCytoplasmOfAnUncertainSeedParent() {
    PlanBench bench = sterile();
    bench.with(Map.of("N RR", 0.5, "S RR", 0.5)).with("N rr");
    PlanChances chances = bench.chances(path(0, 1, then(0, new Mate.Sib())));
    assertThat(chances.seasonChances().get(1)).isEqualTo(1.0 / 8, within(1e-12));
    assertThat(Sowing.success(chances, 1, List.of(2, 11), List.of(1)))
        .isEqualTo(0.5 * (1 - Math.pow(0.75, 11)), within(1e-12));
    // More pairs of the same cytoplasm do not make it surer.
    Sowing sowing = bench.sowing(path(0, 1, then(0, new Mate.Sib())), 0.95);
    assertThat(sowing.reached()).isFalse();
    assertThat(sowing.reachable()).isEqualTo(0.5, within(1e-12));
  }

  /** By hand, of three seasons: S RR × N rr, S Rr × N rr, S rr as the seed parent by N rr: all. */
  @Test
  void aThirdSeasonKeepsTheCytoplasmOfTheFirstSeedParent() {
    PlanBench bench = sterile().with("N rr").with("S RR");
    int none = bench.genes().appearances().indexOf(List.of("none"));
    CrossPath path =
        path(1, 0, then(0, new Mate.Plant(0, false)), then(none, new Mate.Plant(0, false)));
    assertThat(bench.chances(path).seasonChances()).containsExactly(1.0, 0.5, 1.0);
    assertThat(bench.sowing(path, 0.95).seeds()).containsExactly(1, 5, 1);
  }

  /**
   * Seven of ten pollen grains of Aa carry A. By hand: as the seed parent it gives aa 1 in 2 with
   * aa, as pollen parent 3 in 10, selfed 1/2 · 3/10; log 0.05 over log 0.5, log 0.7, log 0.85 is
   * 4.3, 8.4 and 18.4.
   */
  @Test
  void aPlantWhosePollenFavoursTheOtherAlleleBearsTheSeed() {
    PlanBench bench = green(Side.POLLEN).with("Aa").with("aa");
    assertThat(bench.genes().isDirected()).isTrue();
    assertThat(bench.sowing(path(0, 1), 0.95).seeds()).containsExactly(5);
    assertThat(bench.sowing(path(1, 0), 0.95).seeds()).containsExactly(9);
    assertThat(bench.sowing(path(0, 0), 0.95).seeds()).containsExactly(19);
    List<CrossPath> ways =
        bench.search(Goal.of(1, 0.95), 1).ways().stream().map(PlanSearch.Found::path).toList();
    assertThat(ways).containsExactly(path(1, 1), path(0, 1), path(1, 0), path(0, 0));
  }

  /** By hand as above, the one kept of AA × aa being Aa: 1 and 5 as seed parent, 1 and 9 not. */
  @Test
  void theBackcrossIsMadeTheWayRoundThatTakesFewerSeeds() {
    PlanBench pollen = green(Side.POLLEN).with("AA").with("aa");
    CrossPath best = of(pollen.search(Goal.of(1, 0.95), 2).ways(), path(0, 1)).orElseThrow().path();
    assertThat(best.later().get(0).mate()).isEqualTo(new Mate.Plant(1, false));
    assertThat(pollen.sowing(best, 0.95).seeds()).containsExactly(1, 5);

    PlanBench eggs = green(Side.EGGS).with("AA").with("aa");
    CrossPath turned = of(eggs.search(Goal.of(1, 0.95), 2).ways(), path(0, 1)).orElseThrow().path();
    assertThat(turned.later().get(0).mate()).isEqualTo(new Mate.Plant(1, true));
    assertThat(eggs.sowing(turned, 0.95).seeds()).containsExactly(1, 5);
    assertThat(eggs.sowing(path(0, 1, then(0, new Mate.Plant(1, false))), 0.95).seeds())
        .containsExactly(1, 9);
  }

  /**
   * Where A comes through in every gamete of Aa, aa never comes out of it. By hand: no way but aa
   * selfed.
   */
  @Test
  void anAlleleThatDrivesTheOtherOutLeavesNoWay() {
    PlanBench bench =
        new PlanBench(
                Genome.unlinked(A)
                    .withDistortion(Distortion.share(A, Side.BOTH, "A", Fraction.ONE)),
                List.of(EDGE),
                Wish.showing(EDGE, "green"))
            .with("AA")
            .with("aa");
    assertThat(bench.search(Goal.of(1, 0.95), 3).ways())
        .extracting(PlanSearch.Found::path)
        .allMatch(path -> path.seed() == 1 && path.pollen() == 1);
  }
}

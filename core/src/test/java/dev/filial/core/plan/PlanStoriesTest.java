package dev.filial.core.plan;

import static dev.filial.core.plan.PlanBench.first;
import static dev.filial.core.plan.PlanBench.path;
import static dev.filial.core.plan.PlanBench.then;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import dev.filial.core.number.Fraction;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Textbook ways to a wanted seedling; every value is worked by hand unless it says otherwise. */
class PlanStoriesTest {

  private static final Locus A = Locus.of("A", "A", "a");
  private static final Locus B = Locus.of("B", "B", "b");
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel WAX = TraitModel.dominant("wax", B, List.of("bare", "waxy"));

  private static PlanBench green(String... plants) {
    PlanBench bench = new PlanBench(Genome.unlinked(A), List.of(EDGE), Wish.showing(EDGE, "green"));
    Arrays.stream(plants).forEach(bench::with);
    return bench;
  }

  private static PlanBench greenAndWaxy(String... plants) {
    PlanBench bench =
        new PlanBench(
            Genome.unlinked(A, B),
            List.of(EDGE, WAX),
            Wish.showing(EDGE, "green").andShowing(WAX, "waxy"));
    Arrays.stream(plants).forEach(bench::with);
    return bench;
  }

  @Test
  void aRecessiveFromTwoCarriersIsOneInFourAndTakesElevenSeeds() {
    PlanBench bench = green("Aa", "Aa");
    // log 0.05 / log 0.75 = 10.4
    assertThat(bench.sowing(path(0, 1), 0.95).seeds()).containsExactly(11);
    assertThat(bench.chances(path(0, 1)).seasonChances()).containsExactly(0.25);
    assertThat(bench.search(Goal.of(1, 0.95), 1).ways()).hasSize(3);
  }

  @Test
  void aRecessiveOutOfAHomozygoteTakesTwoSeasonsAndTheBackcrossFewerSeeds() {
    PlanBench bench = green("AA", "aa");
    List<PlanSearch.Found> ways = bench.search(Goal.of(1, 0.95), 2).ways();
    // aa selfed gives it at once; of the cross the best way is back to aa: 1 in 2.
    CrossPath best =
        ways.stream()
            .map(PlanSearch.Found::path)
            .filter(path -> path.seasons() == 2 && path.pollen() != path.seed())
            .findFirst()
            .orElseThrow();
    assertThat(best.later())
        .singleElement()
        .satisfies(one -> assertThat(one.mate()).isEqualTo(new Mate.Plant(1, false)));
    assertThat(bench.chances(best).seasonChances()).containsExactly(1.0, 0.5);
    // One seedling of the first season, all being Aa; log 0.05 / log 0.5 = 4.3.
    assertThat(bench.sowing(best, 0.95).seeds()).containsExactly(1, 5);
    Sowing selfed = bench.sowing(path(0, 1, then(0, new Mate.Itself())), 0.95);
    assertThat(selfed.seeds()).containsExactly(1, 11);
  }

  @Test
  void twoRecessivesFromTwoParentsAreOneInSixteenOfTheSecondGeneration() {
    PlanBench bench = greenAndWaxy("AA bb", "aa BB");
    CrossPath best = first(bench.search(Goal.of(1, 0.95), 2).ways(), 2);
    assertThat(best.seed()).isZero();
    assertThat(best.pollen()).isEqualTo(1);
    assertThat(bench.chances(best).seasonChances()).containsExactly(1.0, 1.0 / 16);
    // log 0.05 / log(15/16) = 46.4 (Mendel's 9:3:3:1; Sedcole 1977 for the number).
    assertThat(bench.sowing(best, 0.95).seeds()).containsExactly(1, 47);
  }

  @Test
  void aCarrierThatMayBeNoneBoundsTheCertaintyAtTwoThirds() {
    PlanBench bench = green();
    bench.with(Map.of("AA", 1.0 / 3, "Aa", 2.0 / 3)).with("aa");
    Sowing sowing = bench.sowing(path(0, 1), 0.95);
    assertThat(sowing.reached()).isFalse();
    assertThat(sowing.reachable()).isEqualTo(2.0 / 3, within(1e-12));
    // 1 - 0.5^5 = 0.969 is the first above 0.95 of what can be had.
    assertThat(sowing.seeds()).containsExactly(5);
    assertThat(sowing.certainty()).isEqualTo(2.0 / 3 * (1 - Math.pow(0.5, 5)), within(1e-12));
    // The mean chance is 1 in 3, which as a binomial would have promised 95 % of 8 seedlings.
    assertThat(Sowing.success(bench.chances(path(0, 1)), 1, List.of(8), List.of()))
        .isEqualTo(2.0 / 3 * (1 - Math.pow(0.5, 8)), within(1e-12));
  }

  @Test
  void severalSeedlingsAreKeptWhereOneOfThreeIsNoCarrier() {
    // Seedlings of Aa × Aa that show A are AA 1 in 3: one of them selfed is never surer than 2/3.
    PlanBench bench = green("Aa", "Aa");
    CrossPath path = path(0, 1, then(0, new Mate.Itself()));
    PlanChances chances = bench.chances(path);
    assertThat(chances.seasonChances().get(0)).isEqualTo(0.75);
    assertThat(chances.seasonChances().get(1)).isEqualTo(2.0 / 3 / 4, within(1e-12));
    Sowing sowing = bench.sowing(path, 0.9);
    assertThat(sowing.reached()).isTrue();
    assertThat(sowing.keep().get(0)).isGreaterThan(2); // 1 - 1/9 is not yet 0.9
    assertThat(sowing.certainty()).isGreaterThanOrEqualTo(0.9);
    assertThat(sowing.total())
        .isEqualTo(sowing.seeds().get(0) + (long) sowing.keep().get(0) * sowing.seeds().get(1));
    // With exactly three that show it, by hand: (1 - (1 - 2/3 (1 - 0.75^n))^3) if all three came.
    double three = 1 - Math.pow(1 - 2.0 / 3 * (1 - Math.pow(0.75, 12)), 3);
    assertThat(Sowing.success(chances, 1, List.of(1_000_000, 12), List.of(3)))
        .isEqualTo(three, within(1e-9));
  }

  /** By a simulation written apart: src/test/reference/two_seasons.py, a million trials each. */
  @Test
  void anUncertainSeedParentCrossedBackToItComesOutAsWhenDiceAreThrown() {
    PlanBench bench = green();
    bench.with(Map.of("AA", 1.0 / 3, "Aa", 2.0 / 3)).with("Aa");
    PlanChances chances = bench.chances(path(0, 1, then(0, new Mate.Plant(0, false))));
    assertThat(Sowing.success(chances, 1, List.of(3, 10), List.of(1)))
        .isEqualTo(0.41356, within(4 * 0.0005));
    assertThat(Sowing.success(chances, 1, List.of(5, 8), List.of(2)))
        .isEqualTo(0.55726, within(4 * 0.0005));
    assertThat(Sowing.success(chances, 1, List.of(4, 6), List.of(4)))
        .isEqualTo(0.58640, within(4 * 0.0005));
  }

  /**
   * Cuénot's yellow mice (1905): AA dies, so that of yellow by yellow 1 in 3 of the seen is not.
   */
  @Test
  void aLethalTakesOutOfTheSeenAndItsSeedsAreSownAllTheSame() {
    TraitModel yellow = EDGE.withLethal(Pattern.read(List.of(A), "AA"));
    PlanBench bench =
        new PlanBench(Genome.unlinked(A), List.of(yellow), Wish.showing(yellow, "green"))
            .with("Aa")
            .with("Aa");
    assertThat(bench.chances(path(0, 1)).seasonChances().get(0)).isEqualTo(1.0 / 3, within(1e-12));
    // Of the seeds sown it is 1 in 4 all the same.
    assertThat(bench.sowing(path(0, 1), 0.95).seeds()).containsExactly(11);
  }

  @Test
  void linkedRecessivesInRepulsionComeUpAsRarelyAsBothGametesAreRecombinant() {
    Genome genome = Genome.of(LinkageGroup.of(A, Fraction.of(1, 10), B));
    PlanBench bench =
        new PlanBench(
                genome, List.of(EDGE, WAX), Wish.showing(EDGE, "green").andShowing(WAX, "waxy"))
            .with("Ab/Ab")
            .with("aB/aB");
    CrossPath path = path(0, 1, then(0, new Mate.Itself()));
    // r/2 of the gametes are ab: (1/20)² of the seedlings.
    assertThat(bench.chances(path).seasonChances().get(1)).isEqualTo(1.0 / 400, within(1e-12));
  }

  @Test
  void twoCarriersThatSetNoSeedOnEachOtherAreNoPair() {
    PlanBench bench = green("Aa", "Aa");
    PlanSearch search = bench.search(Goal.of(1, 0.95), 1).withSeedSetting((seed, pollen) -> false);
    assertThat(search.refused()).isEqualTo(1);
    assertThat(search.ways()).allMatch(way -> way.path().seed() == way.path().pollen());
  }

  @Test
  void anIncestIsInbredAsKinshipTellsIt() {
    PlanBench bench = green("AA", "aa");
    Relations relations = bench.unrelated();
    // Sibs, backcrosses and selfings; here worked by hand.
    assertThat(relations.inbreeding(path(0, 1))).isZero();
    assertThat(relations.inbreeding(path(0, 0))).isEqualTo(0.5);
    assertThat(relations.inbreeding(path(0, 1, then(0, new Mate.Sib())))).isEqualTo(0.25);
    assertThat(relations.inbreeding(path(0, 1, then(0, new Mate.Plant(0, true))))).isEqualTo(0.25);
    assertThat(relations.inbreeding(path(0, 1, then(0, new Mate.Itself())))).isEqualTo(0.5);
    assertThat(
            relations.inbreeding(
                path(0, 1, then(0, new Mate.Itself()), then(0, new Mate.Itself()))))
        .isEqualTo(0.75);
  }

  @Test
  void theMostInbredBoundsTheWays() {
    PlanBench bench = green("AA", "aa");
    Goal goal = new Goal(1, 0.95, 0.3, List.of());
    assertThat(bench.search(goal, 2).ways()).isNotEmpty().allMatch(way -> way.inbreeding() <= 0.3);
  }

  @Test
  void aShareOfOneTaxonTurnsTheBackcrossRound() {
    PlanBench bench = greenAndWaxy("AA BB", "aa bb");
    // Candidate 0 is all of the taxon, 1 has none of it: three quarters need a backcross to 0.
    double[][] coancestry = {{0.5, 0}, {0, 0.5}};
    Relations relations = Relations.of(coancestry, new double[][] {{1}, {0}});
    CrossPath back = path(0, 1, then(0, new Mate.Plant(0, false)));
    assertThat(relations.shares(back)).containsExactly(0.75);
    Goal goal = new Goal(1, 0.95, 1, List.of(0.75));
    List<PlanSearch.Found> ways =
        PlanSearch.of(bench.genes(), bench.plants(), relations, goal).withSeasons(3).ways();
    assertThat(ways)
        .isNotEmpty()
        .allMatch(way -> way.path().seasons() == 3)
        .allMatch(way -> relations.shares(way.path())[0] >= 0.75);
  }

  @Test
  void absurdNumbersAreToldSo() {
    assertThatThrownBy(() -> Goal.of(0, 0.95)).hasMessageContaining("ask for 1 or more");
    assertThatThrownBy(() -> Goal.of(1, 1)).hasMessageContaining("between 0 and 1");
    assertThatThrownBy(() -> green("Aa").search(Goal.of(1, 0.95), 4))
        .hasMessageContaining("1, 2 or 3");
    assertThatThrownBy(() -> Candidate.of("x", new double[] {0.5, 0.4}))
        .hasMessageContaining("not to 1");
  }

  @Test
  void everySuccessIsWhatGoingThroughAllCasesGives() {
    // Aa × Aa, keep one that shows A, sib-cross two: small enough for all cases by hand.
    PlanBench bench = green("Aa", "Aa");
    PlanChances chances = bench.chances(path(0, 1, then(0, new Mate.Sib())));
    Map<Integer, Double> twoShow = new LinkedHashMap<>();
    for (int n = 2; n <= 4; n++) {
      twoShow.put(n, 1 - Math.pow(0.25, n) - n * 0.75 * Math.pow(0.25, n - 1));
    }
    // Both are Aa 4 in 9, and then 1 in 4 is aa.
    twoShow.forEach(
        (n, both) ->
            assertThat(Sowing.success(chances, 1, List.of(n, 3), List.of(1)))
                .isEqualTo(both * 4.0 / 9 * (1 - Math.pow(0.75, 3)), within(1e-9)));
  }
}

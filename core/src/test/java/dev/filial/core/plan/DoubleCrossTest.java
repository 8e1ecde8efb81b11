package dev.filial.core.plan;

import static dev.filial.core.plan.PlanBench.first;
import static dev.filial.core.plan.PlanBench.path;
import static dev.filial.core.plan.PlanBench.then;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Two crosses in one season, and what is kept of them crossed in the next. */
class DoubleCrossTest {

  private static final List<String> NAMES = List.of("A", "B", "C", "D");

  /** Four plants, each with one of four dominants twice. */
  private static PlanBench fourDominants() {
    List<Locus> loci = NAMES.stream().map(n -> Locus.of(n, n, n.toLowerCase(Locale.ROOT))).toList();
    List<TraitModel> models = new ArrayList<>();
    Wish wish = Wish.any();
    for (Locus locus : loci) {
      TraitModel model = TraitModel.dominant("trait " + locus.name(), locus, List.of("yes", "no"));
      models.add(model);
      wish = wish.andShowing(model, "yes");
    }
    return new PlanBench(Genome.unlinked(loci.toArray(Locus[]::new)), models, wish)
        .with("AA bb cc dd")
        .with("aa BB cc dd")
        .with("aa bb CC dd")
        .with("aa bb cc DD");
  }

  /**
   * By hand: Aa Bb and Cc Dd, each all alike, so one of each; AB of the one 1 in 4 and CD of the
   * other 1 in 4, 1 in 16; log 0.05 / log(15/16) = 46.4. One, one and 47 make 49.
   */
  @Test
  void whatFourPlantsHoldComesTogetherInTwoSeasons() {
    PlanBench bench = fourDominants();
    CrossPath best = first(bench.search(Goal.of(1, 0.95), 2).ways(), 2);
    assertThat(best.beside()).isPresent();
    PlanChances chances = bench.chances(best);
    assertThat(chances.seasonChances()).containsExactly(1.0, 1.0 / 16);
    assertThat(chances.chanceBeside()).contains(1.0);
    Sowing sowing = bench.sowing(best, 0.95);
    assertThat(sowing.seeds()).containsExactly(1, 47);
    assertThat(sowing.beside()).isEqualTo(1);
    assertThat(sowing.total()).isEqualTo(49);
    // Found from either of the two crosses it is told once; four unrelated plants inbreed nothing.
    assertThat(bench.unrelated().inbreeding(best)).isZero();
    assertThat(bench.search(Goal.of(1, 0.95), 2).ways()).hasSize(3);
  }

  /**
   * By hand: of either cross one, all alike, and 47 of the second season make 49; a pair of sibs of
   * one cross and 47 make as many, and they are inbred a quarter.
   */
  @Test
  void whatIsKeptOfTwoCrossesTakesNoMoreThanSibsAndIsLessInbred() {
    Locus r = Locus.of("R", "R", "r");
    Locus w = Locus.of("W", "W", "w");
    TraitModel edge = TraitModel.dominant("edge", r, List.of("red", "green"));
    TraitModel wax = TraitModel.dominant("wax", w, List.of("bare", "waxy"));
    PlanBench bench =
        new PlanBench(
                Genome.unlinked(r, w),
                List.of(edge, wax),
                Wish.showing(edge, "green").andShowing(wax, "waxy"))
            .with("RR ww")
            .with("rr WW")
            .with("RR ww")
            .with("rr WW");
    Goal unrelated = new Goal(1, 0.95, 0.2, List.of());
    CrossPath best = first(bench.search(unrelated, 2).ways(), 2);
    assertThat(best.beside()).isPresent();
    assertThat(bench.sowing(best, 0.95).total()).isEqualTo(49);
    Goal related = new Goal(1, 0.95, 0.25, List.of());
    assertThat(bench.search(related, 2).ways())
        .filteredOn(way -> way.path().seed() == 0 && way.path().pollen() == 1)
        .singleElement()
        .satisfies(way -> assertThat(way.inbreeding()).isZero())
        .satisfies(way -> assertThat(bench.sowing(way.path(), 0.95).total()).isEqualTo(49));
  }

  /** Selfed, a plant that breeds true gives what it gives itself, a season later. */
  @Test
  void noPlantThatBreedsTrueIsSelfedBesideAnotherCross() {
    assertThat(fourDominants().search(Goal.of(1, 0.95), 3).ways())
        .extracting(way -> way.path())
        .noneMatch(path -> path.seed() == path.pollen())
        .noneMatch(path -> path.beside().stream().anyMatch(o -> o.seed() == o.pollen()));
  }

  /** By a simulation written apart: src/test/reference/two_crosses.py, a million trials each. */
  @Test
  void twoCrossesOfOneUncertainPlantComeOutAsWhenDiceAreThrown() {
    Locus a = Locus.of("A", "A", "a");
    TraitModel edge = TraitModel.dominant("edge", a, List.of("red", "green"));
    PlanBench bench =
        new PlanBench(Genome.unlinked(a), List.of(edge), Wish.showing(edge, "green"))
            .with(Map.of("AA", 1.0 / 3, "Aa", 2.0 / 3))
            .with("Aa")
            .with("Aa");
    PlanChances chances = bench.chances(path(0, 1, then(0, new Mate.OtherCross(0, 2, 0, false))));
    assertThat(Sowing.success(chances, 1, List.of(3, 10), 2, List.of(1)))
        .isEqualTo(0.33661, within(4 * 0.0005));
    assertThat(Sowing.success(chances, 1, List.of(5, 8), 4, List.of(2)))
        .isEqualTo(0.54769, within(4 * 0.0005));
    assertThat(Sowing.success(chances, 1, List.of(4, 6), 6, List.of(4)))
        .isEqualTo(0.67586, within(4 * 0.0005));
  }

  /**
   * By hand: half sibs share one parent, their seedlings are inbred 1/8; shares are means of four.
   */
  @Test
  void seedlingsOfTwoCrossesWithAPlantInCommonAreInbredAnEighth() {
    Relations relations =
        Relations.of(
            new double[][] {{0.5, 0, 0}, {0, 0.5, 0}, {0, 0, 0.5}}, new double[][] {{1}, {0}, {0}});
    CrossPath path = path(0, 1, then(0, new Mate.OtherCross(0, 2, 0, false)));
    assertThat(relations.inbreeding(path)).isEqualTo(0.125);
    assertThat(relations.shares(path)).containsExactly(0.5);
  }

  @Test
  void twoCrossesAreMadeInTheFirstSeasonAlone() {
    assertThatThrownBy(
            () ->
                path(
                    0, 1, then(0, new Mate.Itself()), then(0, new Mate.OtherCross(2, 3, 0, false))))
        .hasMessageContaining("first season");
  }
}

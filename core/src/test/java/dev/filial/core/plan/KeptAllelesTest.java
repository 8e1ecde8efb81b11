package dev.filial.core.plan;

import static dev.filial.core.plan.PlanBench.path;
import static dev.filial.core.plan.PlanBench.then;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.SelfIncompatibility;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How often kept seedlings set seed with what they are crossed with. Figures are of
 * src/test/reference/kept_s_alleles.py, which goes through all cases one by one.
 */
class KeptAllelesTest {

  private static final Locus S = Locus.of("S", "S1", "S2", "S3", "S4", "S5", "Sf");
  private static final Genome ALLELES =
      Genome.unlinked(S)
          .withSelfIncompatibility(new SelfIncompatibility(S, Fraction.ZERO, List.of("Sf")));

  private static final Locus R = Locus.of("R", "R", "r");
  private static final TraitModel EDGE = TraitModel.dominant("edge", R, List.of("red", "green"));
  private static final int RED = 0;

  private static final CrossPath.Later SIBS = then(RED, new Mate.Sib());

  private final PlanBench bench =
      new PlanBench(Genome.unlinked(R), List.of(EDGE), Wish.showing(EDGE, "green"));

  private PlanBench plant(String genotype, String alleles) {
    return bench.with(genotype).carrying(ALLELES.genotype(alleles));
  }

  private List<Optional<Double>> along(CrossPath path) {
    return new KeptAlleles(bench.plants())
        .along(path).stream().map(one -> one.map(Setting::mean)).toList();
  }

  private void assertSets(CrossPath path, double share) {
    List<Optional<Double>> found = along(path);
    assertThat(found.get(found.size() - 1).orElseThrow()).isEqualTo(share, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"S1S2, S3S4, 0.75", "S1S2, S1S3, 0.5", "S1S2, S1Sf, 1"})
  void ofSibsThoseWithTheSameTwoAllelesSetNone(String seed, String pollen, double share) {
    plant("RR", seed);
    plant("rr", pollen);
    assertSets(path(0, 1, SIBS), share);
  }

  /** With S1 in common the seedlings are S1S3 and S2S3: half of them are as their pollen parent. */
  @Test
  void aBackcrossToThePollenParentMaySetNoneToTheSeedParentItAlwaysSets() {
    plant("RR", "S1S2");
    plant("rr", "S1S3");
    assertSets(path(0, 1, then(RED, new Mate.Plant(0, false))), 1);
    assertSets(path(0, 1, then(RED, new Mate.Plant(0, true))), 1);
    assertSets(path(0, 1, then(RED, new Mate.Plant(1, false))), 0.5);
    assertSets(path(0, 1, then(RED, new Mate.Plant(1, true))), 0.5);
  }

  @Test
  void anotherPlantAndTheSeedlingOfAnotherCrossRefuseTheirLike() {
    plant("RR", "S1S2");
    plant("rr", "S3S4");
    plant("rr", "S1S3");
    plant("rr", "S3S5");
    assertSets(path(0, 1, then(RED, new Mate.Plant(2, false))), 0.75);
    assertSets(path(0, 1, then(RED, new Mate.OtherCross(0, 3, RED, false))), 0.875);
    assertSets(path(0, 1, then(RED, new Mate.OtherCross(0, 3, RED, true))), 0.875);
  }

  @Test
  void aSeedlingSelfsIfItHasTheAlleleThatNoStyleRefuses() {
    plant("RR", "S1Sf");
    plant("rr", "S2S3");
    plant("rr", "S1S2");
    assertSets(path(0, 1, then(RED, new Mate.Itself())), 0.5);
    assertSets(path(2, 0, then(RED, new Mate.Itself())), 1); // on S1S2 only Sf of S1Sf works
    assertSets(path(1, 2, then(RED, new Mate.Itself())), 0);
  }

  @Test
  void sibsOfSibsThatSetRefuseMoreOften() {
    plant("RR", "S1S2");
    plant("rr", "S3S4");
    plant("rr", "S1S3");
    assertSets(path(0, 1, SIBS, SIBS), 7.0 / 12);
    assertSets(path(0, 2, then(RED, new Mate.Plant(2, false)), SIBS), 0.5);
  }

  @Test
  void ofAPlantOfUnknownAllelesNothingIsReckonedFromThereOn() {
    plant("RR", "S1S2");
    plant("rr", "S3S4");
    bench.with("rr");
    assertThat(along(path(0, 2, SIBS, SIBS))).containsExactly(Optional.empty(), Optional.empty());
    assertThat(along(path(0, 1, SIBS, then(RED, new Mate.Plant(2, false)))))
        .containsExactly(Optional.of(0.75), Optional.empty());
    assertThat(along(path(0, 1, then(RED, new Mate.OtherCross(0, 2, RED, false)))))
        .containsExactly(Optional.empty());
  }

  /**
   * S1S1 by S2S2 gives nothing but S1S2, which refuses itself, its sibs, S1S1 and the third plant,
   * an S1S2. Otherwise the third plant would do, 1 in 8 of the seedlings being green.
   */
  @Test
  void aWayOnWhichNoMatingSetsIsNoWay() {
    plant("Rr", "S1S1");
    plant("RR", "S2S2");
    plant("Rr", "S1S2");
    assertThat(bench.search(Goal.of(1, 0.95), 2).ways())
        .extracting(PlanSearch.Found::path)
        .isNotEmpty()
        .noneMatch(path -> path.seed() == 0 && path.pollen() == 1);
  }

  @ParameterizedTest
  @CsvSource({"2, 5, 0.5720214844", "4, 5, 0.7150268555", "6, 10, 0.9289413840"})
  void theFirstPairThatSetsGivesTheSeed(int raised, int sown, double success) {
    plant("RR", "S1S2");
    plant("rr", "S3S4");
    PlanChances chances = bench.chances(path(0, 1, SIBS));
    assertThat(Sowing.success(chances, 1, List.of(raised, sown), List.of(1)))
        .isEqualTo(success, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"2, 2, 5, 0.0417098999", "3, 4, 6, 0.1113070473", "4, 3, 4, 0.0854283571"})
  void theSeedlingsOfOnePairHaveTheAllelesOfThatPair(
      int raised, int ofThese, int sown, double success) {
    plant("Rr", "S1S2");
    plant("Rr", "S3S4");
    PlanChances chances = bench.chances(path(0, 1, SIBS, SIBS));
    assertThat(Sowing.success(chances, 1, List.of(raised, ofThese, sown), List.of(1, 1)))
        .isEqualTo(success, within(1e-9));
  }

  /**
   * By hand: all alike, so 8 are four pairs, of which none sets 1 time in 256; of one that sets 1
   * in 4 is rr, and 255/256 · (1 − 0.75¹¹) is 0.954. Of 6, three pairs, 63/64 · (1 − 0.75¹²) is
   * 0.953: one seed less.
   */
  @Test
  void moreIsKeptWhereSomeSetNoneAndItIsSownOfOneThatSets() {
    plant("RR", "S1S2");
    plant("rr", "S3S4");
    Sowing sowing = bench.sowing(path(0, 1, SIBS), 0.95);
    assertThat(sowing.seeds()).containsExactly(6, 12);
    assertThat(sowing.keep()).containsExactly(1);
    assertThat(sowing.spare()).containsExactly(2);
    assertThat(sowing.total()).isEqualTo(18);
    assertThat(sowing.certainty()).isEqualTo(63.0 / 64 * (1 - Math.pow(0.75, 12)), within(1e-12));
  }

  /** S1S2 by S1S3: to the seed parent all set, to the pollen parent one of two. */
  @Test
  void whereAllSetNothingIsSpare() {
    plant("Rr", "S1S2");
    plant("Rr", "S1S3");
    assertThat(bench.sowing(path(0, 1, then(RED, new Mate.Plant(0, false))), 0.95).spare())
        .containsExactly(0);
    assertThat(bench.sowing(path(0, 1, then(RED, new Mate.Plant(1, false))), 0.95).spare().get(0))
        .isPositive();
  }

  @Test
  void sAllelesAreOfAnSLocus() {
    Candidate plant = Candidate.of("one", new double[] {1});
    assertThatThrownBy(() -> plant.withAlleles(Genome.unlinked(R).genotype("Rr")))
        .hasMessageContaining("no S locus");
  }
}

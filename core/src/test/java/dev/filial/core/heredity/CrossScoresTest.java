package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Scores of very many crosses are those of each cross. */
class CrossScoresTest {

  private static final Locus S = Locus.of("S", "S1", "S2", "S3");
  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel HAIR = TraitModel.dominant("hair", B, List.of("long", "none"));

  @Provide
  Arbitrary<RandomCross> crossesWithLosses() {
    return RandomCross.crossesWithLosses();
  }

  @Property(tries = 200)
  void scoresAreChances(@ForAll("crossesWithLosses") RandomCross random) {
    Genome genome = random.genome();
    List<Genotype> plants = new ArrayList<>();
    for (int plant = 0; plant < random.plants.size(); plant++) {
      plants.add(genome.genotype(random.text(plant)));
    }
    Wish wish = Wish.any();
    for (TraitModel model : random.models) {
      wish = wish.andShowing(model, "red", "pink");
    }

    CrossScores scores = CrossScores.of(wish, plants);

    assertThat(scores.plants()).isEqualTo(plants.size());
    for (int seed = 0; seed < plants.size(); seed++) {
      for (int pollen = 0; pollen < plants.size(); pollen++) {
        Cross cross = random.cross(genome, seed, pollen);
        double expected =
            BruteForce.of(random, seed, pollen).living.isZero() ? 0 : cross.chance(wish).toDouble();
        assertThat(scores.chance(seed, pollen)).isCloseTo(expected, within(1e-12));
      }
    }
  }

  /** The last table is asked only who dies. */
  @Property(tries = 100)
  void lossesNobodyAsksAboutCount(@ForAll("crossesWithLosses") RandomCross random) {
    Genome genome = random.genome();
    List<Genotype> plants =
        List.of(genome.genotype(random.text(0)), genome.genotype(random.text(1)));
    TraitModel losses = random.models.get(random.models.size() - 1);
    Wish wish = Wish.showing(random.models.get(0), "red", "pink");

    CrossScores scores = CrossScores.of(wish, plants, List.of(losses));

    double expected =
        BruteForce.of(random, 0, 1).living.isZero()
            ? 0
            : random.cross(genome, 0, 1).withLosses(losses).chance(wish).toDouble();
    assertThat(scores.chance(0, 1)).isCloseTo(expected, within(1e-12));
  }

  /** With a leak or without one, and whether the wish has to do with the S locus or not. */
  @ParameterizedTest
  @ValueSource(strings = {"0", "1/100"})
  void pollenThatIsRefusedCountsForNothing(String leak) {
    Genome genome =
        Genome.of(LinkageGroup.of(S, Fraction.of(1, 10), A), LinkageGroup.of(B))
            .withSelfIncompatibility(SelfIncompatibility.of(S).withLeak(Fraction.parse(leak)));
    List<Genotype> plants =
        List.of(
            genome.genotype("S1.A/S2.a Bb"),
            genome.genotype("S1.a/S3.A bb"),
            genome.genotype("S2.a/S1.a Bb"));
    for (Wish wish :
        List.of(
            Wish.showing(EDGE, "red"),
            Wish.showing(HAIR, "none"),
            Wish.showing(EDGE, "green").andShowing(HAIR, "long"))) {
      CrossScores scores = CrossScores.of(wish, plants);
      for (int seed = 0; seed < 3; seed++) {
        for (int pollen = 0; pollen < 3; pollen++) {
          assertThat(scores.chance(seed, pollen))
              .isCloseTo(chance(plants.get(seed), plants.get(pollen), wish), within(1e-12));
        }
      }
    }
  }

  private static double chance(Genotype seed, Genotype pollen, Wish wish) {
    return Compatibility.of(seed, pollen).effective().isZero()
        ? 0
        : Cross.of(seed, pollen).chance(wish).toDouble();
  }

  @Test
  void theBestOfManyPairsIsFound() {
    Genome genome = Genome.unlinked(A, B);
    List<Genotype> plants =
        List.of(genome.genotype("AA bb"), genome.genotype("aa bb"), genome.genotype("Aa bb"));

    CrossScores scores =
        CrossScores.of(Wish.showing(EDGE, "green").andShowing(HAIR, "none"), plants);

    assertThat(scores.chance(0, 1)).isZero();
    assertThat(scores.chance(1, 1)).isEqualTo(1);
    assertThat(scores.chance(2, 1)).isEqualTo(0.5);
    assertThat(scores.chance(2, 2)).isEqualTo(0.25);
  }

  @Test
  void whatCannotBeScoredInBulkIsRefused() {
    Genome genome = Genome.unlinked(A, B);
    Genotype plant = genome.genotype("Aa Bb");
    Wish red = Wish.showing(EDGE, "red");

    assertThatIllegalArgumentException()
        .isThrownBy(() -> CrossScores.of(red, List.of()))
        .withMessage("there are no plants to cross; name some");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CrossScores.of(red.andBreedingTrue(EDGE), List.of(plant)))
        .withMessage("whether seedlings breed true is not scored in bulk; ask a cross at a time");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CrossScores.of(red, List.of(plant, plant.doubled())))
        .withMessage("AAaa BBbb is no diploid of the same genes as the others");
  }
}

package dev.filial.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of plans, whatever the plants carry. */
class PlanLawsTest {

  private static final Locus A = Locus.of("A", "A", "a");
  private static final Locus B = Locus.of("B", "B", "b");
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel WAX = TraitModel.dominant("wax", B, List.of("bare", "waxy"));
  private static final PlanGenes GENES =
      PlanGenes.of(
          GenomeStates.of(Genome.unlinked(A, B)),
          List.of(EDGE, WAX),
          List.of(),
          Wish.showing(EDGE, "green").andShowing(WAX, "waxy"));

  @Provide
  Arbitrary<Candidate> plants() {
    return Arbitraries.integers()
        .between(0, 5)
        .array(int[].class)
        .ofSize(9)
        .filter(PlanLawsTest::any)
        .map(PlanLawsTest::plant);
  }

  private static boolean any(int[] weights) {
    int sum = 0;
    for (int weight : weights) {
      sum += weight;
    }
    return sum > 0;
  }

  private static Candidate plant(int[] weights) {
    double sum = 0;
    for (int weight : weights) {
      sum += weight;
    }
    double[] odds = new double[weights.length];
    for (int i = 0; i < odds.length; i++) {
      odds[i] = weights[i] / sum;
    }
    return Candidate.of("plant", odds);
  }

  private static PlanChances chances(CrossPath path, List<Candidate> plants) {
    List<PlanChances.Both> both = new ArrayList<>();
    double[] seed = plants.get(path.seed()).odds();
    double[] pollen = plants.get(path.pollen()).odds();
    for (int i = 0; i < seed.length; i++) {
      for (int j = 0; j < pollen.length; j++) {
        if (seed[i] * pollen[j] > 0) {
          both.add(new PlanChances.Both(i, j, seed[i] * pollen[j]));
        }
      }
    }
    return PlanChances.of(GENES, path, both, plants);
  }

  @Property(tries = 60)
  void swappingSeedAndPollenParentChangesNoChance(
      @ForAll("plants") Candidate one, @ForAll("plants") Candidate other) {
    List<Candidate> plants = List.of(one, other);
    CrossPath.Later later = new CrossPath.Later(0, new Mate.Itself());
    List<Double> there = chances(new CrossPath(0, 1, List.of(later)), plants).seasonChances();
    List<Double> back = chances(new CrossPath(1, 0, List.of(later)), plants).seasonChances();
    for (int i = 0; i < there.size(); i++) {
      assertThat(there.get(i)).isEqualTo(back.get(i), within(1e-9));
    }
  }

  @Property(tries = 40)
  void moreCertaintyNeverNeedsFewerSeeds(
      @ForAll("plants") Candidate one,
      @ForAll("plants") Candidate other,
      @ForAll @DoubleRange(min = 0.05, max = 0.9) double certainty) {
    List<Candidate> plants = List.of(one, other);
    PlanChances chances = chances(new CrossPath(0, 1, List.of()), plants);
    if (chances.seasonChances().get(0) > 0) {
      Sowing less = Sowing.of(chances, Goal.of(1, certainty), 1, List.of());
      Sowing more = Sowing.of(chances, Goal.of(1, certainty + 0.05), 1, List.of());
      if (more.reached()) {
        assertThat(less.reached()).isTrue();
        assertThat(more.total()).isGreaterThanOrEqualTo(less.total());
      }
    }
  }

  @Property(tries = 40)
  void anUnrelatedPlantThatCannotHelpChangesNoNumbers(
      @ForAll("plants") Candidate one, @ForAll("plants") Candidate other) {
    double[] dominant = new double[9];
    dominant[0] = 1; // AA BB
    List<Candidate> two = List.of(one, other);
    List<Candidate> three = List.of(one, other, Candidate.of("AA BB", dominant));
    List<PlanSearch.Found> before = ways(two);
    List<PlanSearch.Found> after =
        ways(three).stream()
            .filter(way -> way.path().seed() < 2 && way.path().pollen() < 2)
            .toList();
    assertThat(after).isEqualTo(before);
  }

  private static List<PlanSearch.Found> ways(List<Candidate> plants) {
    double[][] coancestry = new double[plants.size()][plants.size()];
    for (int i = 0; i < coancestry.length; i++) {
      coancestry[i][i] = 0.5;
    }
    return PlanSearch.of(
            GENES, plants, Relations.of(coancestry, new double[plants.size()][0]), Goal.of(1, 0.95))
        .withSeasons(2)
        .ways();
  }
}

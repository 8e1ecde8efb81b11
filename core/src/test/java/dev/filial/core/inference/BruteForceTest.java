package dev.filial.core.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Locus;
import dev.filial.core.number.Fraction;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.assertj.core.data.Offset;

/** The odds over small pedigrees are what going through every case in plain terms gives. */
class BruteForceTest {

  private static final Offset<Double> ROUNDING = within(1e-10);

  /** Chances that are divided by are no polynomials of a frequency, and no rule is exact. */
  private static final Offset<Double> INTEGRAL = within(1e-7);

  @Property(tries = 200)
  void aDiploidLocusIsWhatEveryCaseTogetherGives(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Garden garden = Garden.random(random, Garden.diploid(), 8);
    agrees(garden, Enumerated.of(garden), random, ROUNDING);
  }

  @Property(tries = 60)
  void whereSomeDieAsSeedlingsThoseThatLiveAreWhatEveryCaseTogetherGives(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Garden garden = Garden.random(random, Garden.diploid(), 7);
    garden.lethal = true;
    agrees(garden, Enumerated.of(garden), random, ROUNDING);
  }

  @Property(tries = 30)
  void twoLinkedLociWithTheirPhaseAreWhatEveryCaseTogetherGives(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Garden garden = Garden.random(random, Garden.linked(Fraction.of(random.nextInt(6), 10)), 4);
    agrees(garden, Enumerated.of(garden), random, ROUNDING);
  }

  @Property(tries = 40)
  void aTetraploidLocusIsWhatEveryCaseTogetherGives(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Garden garden = Garden.random(random, Garden.tetraploid(Fraction.of(random.nextInt(5), 24)), 6);
    agrees(garden, Enumerated.of(garden), random, ROUNDING);
  }

  @Property(tries = 60)
  void theCytoplasmIsWhatEveryCaseTogetherGives(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Garden garden = Garden.random(random, Garden.cytoplasm(), 8);
    agrees(garden, Enumerated.of(garden), random, ROUNDING);
  }

  @Property(tries = 30)
  void anUnknownFrequencyIsAnIntegralOverIt(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Garden garden = Garden.random(random, Garden.diploid(), 5);
    garden.dominant.remove(Garden.LAUI);
    agrees(garden, Enumerated.ofUnknown(garden, Garden.LAUI, 100), random, INTEGRAL);
  }

  @Property(tries = 30)
  void unknownFrequenciesOfNobodysPollenAreAnIntegralToo(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Garden garden = Garden.random(random, Garden.diploid(), 5);
    garden.dominant.remove(Garden.NOBODYS);
    agrees(garden, Enumerated.ofUnknown(garden, Garden.NOBODYS, 100), random, INTEGRAL);
  }

  private static void agrees(
      Garden garden, Enumerated all, SplittableRandom random, Offset<Double> near) {
    PedigreeOdds odds = garden.odds();
    assertThat(odds.isPossible()).as("%s", garden).isEqualTo(all.weight > 0);
    if (all.weight <= 0) {
      // Plants that nothing ties to what cannot be still have their odds.
      assertThat(garden.plants.stream().anyMatch(plant -> isImpossible(odds, plant.code())))
          .as("%s", garden)
          .isTrue();
      return;
    }
    assertThat(odds.logLikelihood())
        .as("how likely what was seen is%n%s", garden)
        .isCloseTo(Math.log(all.weight), near);
    EveryPlant every = odds.everyPlant();
    int n = garden.plants.size();
    for (int plant = 0; plant < n; plant++) {
      genotypesAgree(garden, all, odds, every, plant, near);
      if (garden.plants.get(plant).ways().size() > 1) {
        waysAgree(garden, all, odds, plant, near);
      }
    }
    int one = random.nextInt(n);
    int other = random.nextInt(n);
    togetherAgree(garden, all, odds, one, other, near);
    togetherAgree(garden, all, odds, one, one, near);
    for (int t = 0; t < garden.kind.traits().size(); t++) {
      String trait = garden.kind.traits().get(t);
      String state = Garden.states(trait).get(0);
      String first = garden.plants.get(one).code();
      assertThat(odds.cross(first, garden.plants.get(other).code(), trait).of(state))
          .as("seedlings of %d and %d%n%s", one, other, garden)
          .isCloseTo(all.crossShows(one, other, trait), near);
      assertThat(odds.cross(first, first, trait).of(state))
          .as("%d selfed%n%s", one, garden)
          .isCloseTo(all.crossShows(one, one, trait), near);
      assertThat(odds.states(first, trait).of(state))
          .as("what %d really shows of %s%n%s", one, trait, garden)
          .isCloseTo(all.shows[one][t], near);
    }
  }

  private static boolean isImpossible(PedigreeOdds odds, String plant) {
    try {
      odds.genotype(plant);
      return false;
    } catch (ImpossibleFindingsException e) {
      return true;
    }
  }

  private static void genotypesAgree(
      Garden garden,
      Enumerated all,
      PedigreeOdds odds,
      EveryPlant every,
      int plant,
      Offset<Double> near) {
    String code = garden.plants.get(plant).code();
    GenotypeOdds found = odds.genotype(code);
    int genotypes = garden.textbook.genotypes();
    for (int g = 0; g < genotypes; g++) {
      assertThat(found.of(garden.textbook.text(g)))
          .as("%s being %s%n%s", code, garden.textbook.text(g), garden)
          .isCloseTo(all.genotypes[plant][g], near);
    }
    for (Locus locus : garden.genome().loci()) {
      String allele = locus.alleles().get(1);
      for (int least = 1; least <= garden.kind.sets(); least++) {
        double expected = 0;
        for (int g = 0; g < genotypes; g++) {
          long copies = garden.textbook.text(g).chars().filter(c -> c == allele.charAt(0)).count();
          expected += copies >= least ? all.genotypes[plant][g] : 0;
        }
        assertThat(every.copies(code, locus, allele, least))
            .as("%s having %d of %s%n%s", code, least, allele, garden)
            .isCloseTo(expected, near);
      }
    }
  }

  private static void waysAgree(
      Garden garden, Enumerated all, PedigreeOdds odds, int plant, Offset<Double> near) {
    Garden.Plant its = garden.plants.get(plant);
    WayOdds found = odds.ways(its.code());
    assertThat(found.ways()).hasSameSizeAs(its.ways());
    for (int w = 0; w < its.ways().size(); w++) {
      WayOdds.Chance way = found.ways().get(w);
      assertThat(way.way()).isEqualTo(garden.told(its.ways().get(w)));
      assertThat(way.after())
          .as("%s by %s%n%s", its.code(), its.ways().get(w), garden)
          .isCloseTo(all.ways[plant][w], near);
    }
  }

  private static void togetherAgree(
      Garden garden, Enumerated all, PedigreeOdds odds, int one, int other, Offset<Double> near) {
    JointOdds found = odds.jointly(garden.plants.get(one).code(), garden.plants.get(other).code());
    for (int g = 0; g < garden.textbook.genotypes(); g++) {
      for (int h = 0; h < garden.textbook.genotypes(); h++) {
        String first = garden.textbook.text(g);
        String second = garden.textbook.text(h);
        double chance =
            found.pairs().stream()
                .filter(pair -> pair.first().text().equals(first))
                .filter(pair -> pair.second().text().equals(second))
                .mapToDouble(JointOdds.Pair::chance)
                .sum();
        assertThat(chance)
            .as("%d being %s and %d being %s%n%s", one, first, other, second, garden)
            .isCloseTo(all.joint[one][other][g][h], near);
      }
    }
  }
}

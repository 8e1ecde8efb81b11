package dev.filial.core.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Cross;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Parent;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Ramet;
import dev.filial.core.pedigree.Seedling;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;

/** What holds of the odds over any pedigree, larger ones too than can be gone through by hand. */
class PedigreeLawsTest {

  private static final Offset<Double> ROUNDING = within(1e-10);

  /** Gardens of one locus or two, in which what was seen can be. */
  @Provide
  Arbitrary<Garden> gardens() {
    return Arbitraries.longs()
        .map(
            seed -> {
              SplittableRandom random = new SplittableRandom(seed);
              return switch (random.nextInt(4)) {
                case 0 -> Garden.random(random, Garden.linked(Fraction.of(1, 5)), 6);
                case 1 -> Garden.random(random, Garden.tetraploid(Fraction.of(1, 7)), 8);
                default -> Garden.random(random, Garden.diploid(), 14);
              };
            });
  }

  /** By plant and genotype. */
  private static Map<String, Map<String, Double>> all(PedigreeOdds odds, Garden garden) {
    Map<String, Map<String, Double>> all = new HashMap<>();
    for (Garden.Plant plant : garden.plants) {
      all.put(plant.code(), of(odds, plant.code()));
    }
    return all;
  }

  private static Map<String, Double> of(PedigreeOdds odds, String plant) {
    Map<String, Double> chances = new HashMap<>();
    odds.genotype(plant)
        .genotypes()
        .forEach(one -> chances.put(one.genotype().text(), one.chance()));
    return chances;
  }

  private static void alike(
      Map<String, Double> found, Map<String, Double> expected, Garden garden) {
    for (String genotype : expected.keySet()) {
      assertThat(found.getOrDefault(genotype, 0.0))
          .as("%s in%n%s", genotype, garden)
          .isCloseTo(expected.get(genotype), ROUNDING);
    }
    assertThat(found.values().stream().mapToDouble(chance -> chance).sum())
        .as("%s", garden)
        .isCloseTo(1, ROUNDING);
  }

  private static void allAlike(PedigreeOdds found, PedigreeOdds expected, Garden garden) {
    Map<String, Map<String, Double>> these = all(found, garden);
    all(expected, garden).forEach((plant, chances) -> alike(these.get(plant), chances, garden));
  }

  private static String trait(Garden garden) {
    return garden.kind.traits().get(0);
  }

  @Property(tries = 60)
  void whatIsSeenOfAnUnrelatedPlantOfAnotherTaxonChangesNothing(@ForAll("gardens") Garden garden) {
    PedigreeOdds odds = garden.odds();
    Assume.that(odds.isPossible());
    List<PlantRecord> more = new ArrayList<>(garden.records());
    more.add(PlantRecord.pure("stranger", Garden.ALBA, garden.kind.sets()));
    List<Evidence> seen = new ArrayList<>(garden.seen);
    String plain = Garden.states(trait(garden)).get(1);
    seen.add(Evidence.Shown.of("stranger", trait(garden), plain, "a look"));
    PedigreeOdds looked = garden.odds(more, seen);
    allAlike(looked, odds, garden);
    // It was looked at: of itself that says something.
    assertThat(of(looked, "stranger")).isNotEqualTo(of(garden.odds(more, garden.seen), "stranger"));
  }

  @Property(tries = 60)
  void anUnrelatedPlantNobodyLookedAtChangesNothing(@ForAll("gardens") Garden garden) {
    PedigreeOdds odds = garden.odds();
    Assume.that(odds.isPossible());
    List<PlantRecord> more = new ArrayList<>();
    more.add(PlantRecord.pure("a stranger", Garden.LAUI, garden.kind.sets()));
    more.addAll(garden.records());
    more.add(PlantRecord.cross("its seedling", "a stranger", garden.plants.get(0).code()));
    PedigreeOdds grown = garden.odds(more, garden.seen);
    allAlike(grown, odds, garden);
    assertThat(grown.logLikelihood()).isCloseTo(odds.logLikelihood(), ROUNDING);
    // Nor does one in the same pass as all others.
    EveryPlant every = grown.everyPlant();
    for (Garden.Plant plant : garden.plants) {
      assertThat(every.carries(plant.code(), garden.genome().loci().get(0), "t"))
          .isCloseTo(
              odds.genotype(plant.code()).carries(garden.genome().loci().get(0), "t"), ROUNDING);
    }
  }

  @Property(tries = 60)
  void whatARametShowsIsWhatThePlantShows(@ForAll("gardens") Garden garden, @ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String plant = garden.plants.get(random.nextInt(garden.plants.size())).code();
    String state = Garden.states(trait(garden)).get(random.nextInt(2));
    List<PlantRecord> more = new ArrayList<>(garden.records());
    more.add(new PlantRecord("offset", new Ramet(plant, false)));
    List<Evidence> ofPlant = new ArrayList<>(garden.seen);
    ofPlant.add(Evidence.Shown.of(plant, trait(garden), state, "a look"));
    List<Evidence> ofOffset = new ArrayList<>(garden.seen);
    ofOffset.add(Evidence.Shown.of("offset", trait(garden), state, "a look"));
    PedigreeOdds direct = garden.odds(more, ofPlant);
    Assume.that(direct.isPossible());
    PedigreeOdds through = garden.odds(more, ofOffset);
    allAlike(through, direct, garden);
    alike(of(through, "offset"), of(direct, plant), garden);
    assertThat(through.logLikelihood()).isCloseTo(direct.logLikelihood(), ROUNDING);
  }

  @Property(tries = 60)
  void theOrderOfWhatWasSeenChangesNothing(@ForAll("gardens") Garden garden, @ForAll long seed) {
    PedigreeOdds odds = garden.odds();
    List<Evidence> shuffled = new ArrayList<>(garden.seen);
    List<PlantRecord> records = new ArrayList<>(garden.records());
    shuffle(shuffled, new SplittableRandom(seed));
    shuffle(records, new SplittableRandom(seed));
    PedigreeOdds other = garden.odds(records, shuffled);
    assertThat(other.isPossible()).isEqualTo(odds.isPossible());
    Assume.that(odds.isPossible());
    allAlike(other, odds, garden);
    assertThat(other.logLikelihood()).isCloseTo(odds.logLikelihood(), ROUNDING);
  }

  /** Codes come into how plants are ordered and found, and never into what they carry. */
  @Property(tries = 60)
  void renamingThePlantsChangesNothing(@ForAll("gardens") Garden garden, @ForAll long seed) {
    PedigreeOdds odds = garden.odds();
    Assume.that(odds.isPossible());
    List<String> names = new ArrayList<>();
    for (int i = 0; i < garden.plants.size(); i++) {
      names.add("n" + i);
    }
    shuffle(names, new SplittableRandom(seed));
    UnaryOperator<String> name = code -> names.get(garden.number(code));
    Garden renamed = renamed(garden, name);
    PedigreeOdds other = renamed.odds();
    for (Garden.Plant plant : garden.plants) {
      alike(of(other, name.apply(plant.code())), of(odds, plant.code()), garden);
    }
  }

  private static Garden renamed(Garden garden, UnaryOperator<String> name) {
    Garden renamed = new Garden(garden.kind);
    renamed.dominant.putAll(garden.dominant);
    renamed.inbreeding.putAll(garden.inbreeding);
    renamed.penetrance.putAll(garden.penetrance);
    renamed.fruits.putAll(garden.fruits);
    renamed.misread = garden.misread;
    for (Garden.Plant one : garden.plants) {
      renamed.plants.add(
          new Garden.Plant(
              name.apply(one.code()), one.taxon(), one.again(), one.ramet(), one.ways()));
    }
    for (Evidence finding : garden.seen) {
      String plant = name.apply(finding.plant());
      if (finding instanceof Evidence.Shown one) {
        renamed.seen.add(
            new Evidence.Shown(plant, one.trait(), one.state(), one.picked(), one.source()));
      } else if (finding instanceof Evidence.Counted one) {
        renamed.seen.add(new Evidence.Counted(plant, one.trait(), one.counts(), one.source()));
      } else if (finding instanceof Evidence.Carried one) {
        renamed.seen.add(new Evidence.Carried(plant, one.patterns(), one.whole(), one.source()));
      }
    }
    return renamed;
  }

  @Property(tries = 60)
  void whichOfTwoParentsBoreTheSeedChangesNoGenesOfTheNucleus(@ForAll("gardens") Garden garden) {
    PedigreeOdds odds = garden.odds();
    Assume.that(odds.isPossible());
    PedigreeOdds swapped =
        garden.odds(garden.records().stream().map(PedigreeLawsTest::swapped).toList(), garden.seen);
    allAlike(swapped, odds, garden);
    String first = garden.plants.get(0).code();
    String last = garden.plants.get(garden.plants.size() - 1).code();
    String shown = Garden.states(trait(garden)).get(0);
    assertThat(odds.cross(first, last, trait(garden)).of(shown))
        .isCloseTo(odds.cross(last, first, trait(garden)).of(shown), ROUNDING);
  }

  private static PlantRecord swapped(PlantRecord plant) {
    if (!(plant.origin() instanceof Seedling seedling)) {
      return plant;
    }
    List<Case> cases = new ArrayList<>();
    for (Case one : seedling.cases()) {
      if (one instanceof Case.Sexual cross) {
        Gamete seed = cross.pollen();
        cases.add(new Case.Sexual(cross.share(), cross.route(), seed, cross.seed()));
      } else {
        cases.add(one);
      }
    }
    return new PlantRecord(plant.code(), new Seedling(cases));
  }

  /** Mendel 1866: heterozygotes halve with each selfing. */
  @Property(tries = 12)
  void heterozygotesHalveWithEachSelfing(@ForAll @IntRange(min = 2, max = 13) int generation) {
    Garden garden = new Garden(Garden.diploid());
    garden.penetrance.put("tips", Fraction.ONE);
    List<PlantRecord> plants = new ArrayList<>();
    plants.add(PlantRecord.pure("one", Garden.LAUI));
    plants.add(PlantRecord.pure("other", Garden.ALBA));
    plants.add(PlantRecord.cross("F1", "one", "other"));
    for (int f = 2; f <= generation; f++) {
      plants.add(PlantRecord.selfing("F" + f, "F" + (f - 1)));
    }
    PedigreeOdds odds =
        garden.odds(
            plants,
            List.of(
                Evidence.Carried.of("one", garden.genome().genotype("TT"), "one"),
                Evidence.Carried.of("other", garden.genome().genotype("tt"), "other")));
    Map<String, Double> chances = of(odds, "F" + generation);
    double heterozygous = Math.pow(2, 1 - generation);
    assertThat(chances.get("Tt")).isCloseTo(heterozygous, within(1e-14));
    assertThat(chances.get("TT")).isCloseTo((1 - heterozygous) / 2, within(1e-14));
    assertThat(chances.get("tt")).isCloseTo((1 - heterozygous) / 2, within(1e-14));
  }

  /** What one plant carries and another, and then Mendel's tables for the two: the other engine. */
  @Property(tries = 60)
  void aCrossIsWhatEachPairOfParentsThrowsWeighedByTheirOdds(
      @ForAll("gardens") Garden garden, @ForAll long seed) {
    PedigreeOdds odds = garden.odds();
    Assume.that(odds.isPossible());
    SplittableRandom random = new SplittableRandom(seed);
    String one = garden.plants.get(random.nextInt(garden.plants.size())).code();
    String other = garden.plants.get(random.nextInt(garden.plants.size())).code();
    for (TraitModel model : garden.models()) {
      double sum = 0;
      String state = model.states().get(0);
      for (JointOdds.Pair pair : odds.jointly(one, other).pairs()) {
        Cross cross =
            Cross.of(garden.genome(), parent(garden, pair.first()), parent(garden, pair.second()));
        sum += pair.chance() * cross.odds(model).chanceOf(state).toDouble();
      }
      assertThat(odds.cross(one, other, model.trait()).of(state))
          .as("%s by %s in%n%s", one, other, garden)
          .isCloseTo(sum, ROUNDING);
    }
  }

  private static Parent parent(Garden garden, Genotype genotype) {
    return Parent.of(genotype, garden.kind.sets() == 4 ? garden.kind.meiosis() : Meiosis.REDUCED);
  }

  @Property(tries = 60)
  void oddsSumToOne(@ForAll("gardens") Garden garden) {
    PedigreeOdds odds = garden.odds();
    Assume.that(odds.isPossible());
    String first = garden.plants.get(0).code();
    for (Garden.Plant plant : garden.plants) {
      String code = plant.code();
      assertThat(odds.genotype(code).genotypes().stream().mapToDouble(one -> one.chance()).sum())
          .isCloseTo(1, ROUNDING);
      assertThat(odds.jointly(first, code).pairs().stream().mapToDouble(one -> one.chance()).sum())
          .isCloseTo(1, ROUNDING);
      assertThat(
              odds.states(code, trait(garden)).states().stream()
                  .mapToDouble(one -> one.chance())
                  .sum())
          .isCloseTo(1, ROUNDING);
      if (plant.ways().size() > 1) {
        assertThat(odds.ways(code).ways().stream().mapToDouble(one -> one.after()).sum())
            .isCloseTo(1, ROUNDING);
      }
    }
  }

  /**
   * The law of total probability: one more plant will be looked at. What it may show, each weighed
   * by how likely that is, leaves all odds on average where they were.
   */
  @Property(tries = 60)
  void aLookThatIsYetToComeLeavesTheOddsWhereTheyAreOnAverage(
      @ForAll("gardens") Garden garden, @ForAll long seed) {
    PedigreeOdds odds = garden.odds();
    Assume.that(odds.isPossible());
    SplittableRandom random = new SplittableRandom(seed);
    String looked = garden.plants.get(random.nextInt(garden.plants.size())).code();
    List<Double> chances = new ArrayList<>();
    List<PedigreeOdds> after = new ArrayList<>();
    for (String state : Garden.states(trait(garden))) {
      List<Evidence> more = new ArrayList<>(garden.seen);
      more.add(Evidence.Shown.of(looked, trait(garden), state, "a look to come"));
      PedigreeOdds then = garden.odds(garden.records(), more);
      double chance = Math.exp(then.logLikelihood() - odds.logLikelihood());
      if (chance > 1e-12) {
        chances.add(chance);
        after.add(then);
      }
    }
    assertThat(chances.stream().mapToDouble(chance -> chance).sum())
        .as("%s", garden)
        .isCloseTo(1, ROUNDING);
    for (Garden.Plant plant : garden.plants) {
      Map<String, Double> average = new HashMap<>();
      for (int i = 0; i < chances.size(); i++) {
        double chance = chances.get(i);
        of(after.get(i), plant.code())
            .forEach((genotype, one) -> average.merge(genotype, chance * one, Double::sum));
      }
      alike(average, of(odds, plant.code()), garden);
    }
  }

  private static <T> void shuffle(List<T> things, SplittableRandom random) {
    for (int i = things.size() - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      T moved = things.get(i);
      things.set(i, things.get(j));
      things.set(j, moved);
    }
  }
}

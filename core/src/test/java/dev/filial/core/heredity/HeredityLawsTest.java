package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds of every cross. */
class HeredityLawsTest {

  @Provide
  Arbitrary<RandomCross> crosses() {
    return RandomCross.crosses();
  }

  @Provide
  Arbitrary<RandomCross> crossesWithLosses() {
    return RandomCross.crossesWithLosses();
  }

  @Provide
  Arbitrary<Fraction> recombinations() {
    return Arbitraries.integers().between(0, 30).map(n -> Fraction.of(n, 60));
  }

  private static Fraction sum(List<Fraction> chances) {
    return chances.stream().reduce(Fraction.ZERO, Fraction::plus);
  }

  /**
   * All joint genotypes one by one against the sets of rows that each linkage group leaves open.
   */
  @Property(tries = 300)
  void tablesReadGroupByGroupAreTablesReadPlantByPlant(
      @ForAll("crossesWithLosses") RandomCross random) {
    BruteForce force = BruteForce.of(random, 0, 1);
    Cross cross = random.cross();
    if (force.living.isZero()) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> cross.odds(random.models))
          .withMessage("no seedling of this cross lives");
      return;
    }

    Odds odds = cross.odds(random.models);

    Map<List<String>, Fraction> classes = new LinkedHashMap<>();
    odds.classes().forEach(one -> classes.put(one.states(), one.chance()));
    Map<List<String>, Fraction> expected = new LinkedHashMap<>();
    force.classes.forEach((states, mass) -> expected.put(states, mass.dividedBy(force.living)));
    assertThat(classes).isEqualTo(expected);
    assertThat(odds.lost()).isEqualTo(Fraction.ONE.minus(force.living));
  }

  @Property(tries = 200)
  void chancesSumToOne(@ForAll("crosses") RandomCross random) {
    Cross cross = random.cross();

    assertThat(sum(cross.odds(random.models).classes().stream().map(Odds.Share::chance).toList()))
        .isEqualTo(Fraction.ONE);
    assertThat(sum(cross.genotypes().stream().map(Cross.GenotypeChance::chance).toList()))
        .isEqualTo(Fraction.ONE);
    assertThat(sum(cross.eggs().stream().map(Cross.GameteChance::chance).toList()))
        .isEqualTo(Fraction.ONE);
    assertThat(sum(cross.pollenGrains().stream().map(Cross.GameteChance::chance).toList()))
        .isEqualTo(Fraction.ONE);
  }

  @Property(tries = 200)
  void whatIsLostAndWhatLivesIsAll(@ForAll("crossesWithLosses") RandomCross random) {
    Assume.that(!BruteForce.of(random, 0, 1).living.isZero());

    Odds odds = random.cross().odds(random.models);

    assertThat(sum(odds.classes().stream().map(Odds.Share::chance).toList()))
        .isEqualTo(Fraction.ONE);
    assertThat(odds.lost()).isBetween(Fraction.ZERO, Fraction.ONE);
  }

  @Property(tries = 200)
  void reciprocalCrossesAreAlike(@ForAll("crossesWithLosses") RandomCross random) {
    Assume.that(!BruteForce.of(random, 0, 1).living.isZero());
    Genome genome = random.genome();

    assertThat(random.cross(genome, 1, 0).odds(random.models))
        .isEqualTo(random.cross(genome, 0, 1).odds(random.models));
  }

  @Property(tries = 150)
  void aGeneNobodyAsksAboutChangesNothing(
      @ForAll("crosses") RandomCross random, @ForAll @IntRange(max = 3) int genotype) {
    Locus stranger = Locus.of("stranger", "Z", "z");
    List<LinkageGroup> more = new ArrayList<>(random.genome().groups());
    more.add(0, LinkageGroup.of(stranger));
    Genome genome = Genome.of(more);
    String its = List.of("ZZ", "Zz", "zZ", "zz").get(genotype);

    Cross cross =
        Cross.of(
            genome.genotype(random.text(0) + " " + its), genome.genotype("Zz " + random.text(1)));

    assertThat(cross.odds(random.models)).isEqualTo(random.cross().odds(random.models));
  }

  @Property(tries = 150)
  void theOrderOfTheChromosomesChangesNothing(@ForAll("crosses") RandomCross random) {
    List<LinkageGroup> turned = new ArrayList<>(random.genome().groups());
    Collections.reverse(turned);

    assertThat(random.cross(Genome.of(turned), 0, 1).odds(random.models))
        .isEqualTo(random.cross().odds(random.models));
  }

  /** The strands of a chromosome have no first and second, and it no upper end. */
  @Property(tries = 150)
  void aChromosomeMayBeReadFromEitherEnd(@ForAll("crosses") RandomCross random) {
    List<LinkageGroup> turned = new ArrayList<>();
    for (LinkageGroup group : random.genome().groups()) {
      List<Locus> loci = new ArrayList<>(group.loci());
      List<Fraction> recombination = new ArrayList<>(group.recombination());
      Collections.reverse(loci);
      Collections.reverse(recombination);
      turned.add(new LinkageGroup(loci, recombination, true));
    }

    assertThat(random.cross(Genome.of(turned), 0, 1).odds(random.models))
        .isEqualTo(random.cross().odds(random.models));
  }

  @Property(tries = 150)
  void halfRecombinedIsNotLinked(@ForAll("crosses") RandomCross random) {
    List<LinkageGroup> loose = new ArrayList<>();
    for (LinkageGroup group : random.genome().groups()) {
      loose.add(
          new LinkageGroup(
              group.loci(), Collections.nCopies(group.loci().size() - 1, Fraction.HALF), true));
    }
    Genome unlinked = Genome.unlinked(random.loci().toArray(Locus[]::new));

    assertThat(random.cross(Genome.of(loose), 0, 1).odds(random.models))
        .isEqualTo(
            Cross.of(unlinked.genotype(byGene(random, 0)), unlinked.genotype(byGene(random, 1)))
                .odds(random.models));
  }

  private static String byGene(RandomCross random, int plant) {
    List<String> parts = new ArrayList<>();
    Genotype genotype = random.genome().genotype(random.text(plant));
    random.loci().forEach(locus -> parts.add(String.join("/", genotype.alleles(locus))));
    return String.join(" ", parts);
  }

  @Property(tries = 200)
  void aGenotypeIsReadAsItIsWritten(@ForAll("crosses") RandomCross random) {
    Genome genome = random.genome();
    for (int plant = 0; plant < random.plants.size(); plant++) {
      Genotype genotype = genome.genotype(random.text(plant));
      assertThat(genome.genotype(genotype.text())).isEqualTo(genotype);
      assertThat(genome.genotype(genotype.doubled().text())).isEqualTo(genotype.doubled());
      for (Genotype arranged : genotype.doubled().disomicArrangements()) {
        assertThat(genome.genotype(arranged.text())).isEqualTo(arranged);
      }
    }
  }

  /** Gametes by every way through the strands. */
  @Property(tries = 200)
  void gametesAreWaysThroughTheStrands(@ForAll("crosses") RandomCross random) {
    Map<String, Fraction> expected = new LinkedHashMap<>(Map.of("", Fraction.ONE));
    for (int g = 0; g < random.groups.size(); g++) {
      Map<String, Fraction> next = new LinkedHashMap<>();
      for (BruteForce.Gamete gamete :
          BruteForce.gametes(random.plants.get(0)[g], random.recombination.get(g))) {
        List<String> symbols = new ArrayList<>();
        for (int i = 0; i < gamete.alleles().size(); i++) {
          symbols.add(random.groups.get(g).get(i).alleles().get(gamete.alleles().get(i)));
        }
        String text = String.join(".", symbols);
        expected.forEach(
            (before, chance) ->
                next.merge(
                    before.isEmpty() ? text : before + " " + text,
                    chance.times(gamete.chance()),
                    Fraction::plus));
      }
      expected = next;
    }

    Map<String, Fraction> eggs = new LinkedHashMap<>();
    random.cross().eggs().forEach(egg -> eggs.put(egg.text(), egg.chance()));

    assertThat(eggs).isEqualTo(expected);
  }

  /** r₁₃ = r₁₂ + r₂₃ − 2r₁₂r₂₃ (Haldane 1919), and what is left of a group has the same gametes. */
  @Property(tries = 100)
  void leavingOutTheMiddleGeneAddsTheIntervals(
      @ForAll("recombinations") Fraction one, @ForAll("recombinations") Fraction other) {
    Locus first = Locus.of("first", "A", "a");
    Locus middle = Locus.of("middle", "B", "b");
    Locus last = Locus.of("last", "C", "c");
    LinkageGroup all = new LinkageGroup(List.of(first, middle, last), List.of(one, other), true);

    LinkageGroup outer = all.only(List.of(first, last));

    Fraction both = one.times(other);
    assertThat(outer.recombination()).containsExactly(one.plus(other).minus(both).minus(both));
    Map<String, Fraction> summed = new LinkedHashMap<>();
    Cross.selfing(Genome.of(all).genotype("ABc/abC"))
        .eggs()
        .forEach(
            egg ->
                summed.merge(
                    egg.text().substring(0, 1) + egg.text().substring(2),
                    egg.chance(),
                    Fraction::plus));
    Map<String, Fraction> ofTwo = new LinkedHashMap<>();
    Cross.selfing(Genome.of(outer).genotype("Ac/aC"))
        .eggs()
        .forEach(egg -> ofTwo.put(egg.text(), egg.chance()));
    assertThat(ofTwo).isEqualTo(summed);
  }

  /** Keeping whatever shows is not choosing: followed together or group by group. */
  @Property(tries = 60)
  void withoutChoosingGroupsMayBeFollowedOneByOne(
      @ForAll("crosses") RandomCross random, @ForAll @IntRange(max = 3) int selfings) {
    SelfedLine line = SelfedLine.of(random.cross());
    Wish all = Wish.any();
    Wish wish = Wish.any();
    for (TraitModel model : random.models) {
      all = all.andShowing(model, "red", "pink", "white");
      wish = wish.andShowing(model, "red");
    }

    assertThat(line.keeping(all).chance(selfings, wish)).isEqualTo(line.chance(selfings, wish));
  }

  /** One selfing of a line is the seedlings' own selfings, weighed by their chances. */
  @Property(tries = 60)
  void aSelfedLineIsTheSeedlingsSelfed(@ForAll("crossesWithLosses") RandomCross random) {
    Assume.that(!BruteForce.of(random, 0, 1).living.isZero());
    TraitModel life = random.models.get(0);
    Cross cross = random.cross();
    Wish red = Wish.showing(life, "red");
    Fraction wished = Fraction.ZERO;
    Fraction living = Fraction.ZERO;
    for (Cross.GenotypeChance seedling : cross.genotypes()) {
      Genotype plant = seedling.genotype();
      Fraction alive = seedling.chance().times(lives(plant, life));
      if (!alive.isZero()) {
        Cross selfed = Cross.selfing(plant);
        Fraction offspring = Fraction.ZERO;
        for (Cross.GenotypeChance child : selfed.genotypes()) {
          offspring = offspring.plus(child.chance().times(lives(child.genotype(), life)));
        }
        living = living.plus(alive.times(offspring));
        if (!offspring.isZero()) {
          wished = wished.plus(alive.times(offspring).times(selfed.chance(red)));
        }
      }
    }
    Assume.that(!living.isZero());

    assertThat(SelfedLine.of(cross).chance(1, red)).isEqualTo(wished.dividedBy(living));
  }

  private static Fraction lives(Genotype plant, TraitModel life) {
    Genome genome = plant.genome();
    Tables tables = Tables.parted(genome, Set.of(life)).get(0);
    List<Long> homologs = new ArrayList<>();
    tables.groups().forEach(group -> homologs.add(plant.homologs(group)));
    return Seedlings.lives(tables, Seedlings.open(tables, homologs));
  }

  /** Whatever the four alleles and however often sisters go together. */
  @Property(tries = 200)
  void gametesOfATetraploidAreSixPairsAndFourDoubles(
      @ForAll List<@IntRange(max = 3) Integer> drawn, @ForAll @IntRange(max = 10) int sixtieths) {
    Assume.that(drawn.size() >= 4);
    Locus locus = Locus.of("coat", "P", "Q", "R", "S");
    Genome genome = Genome.unlinked(locus);
    Fraction alpha = Fraction.of(sixtieths, 60);
    List<String> alleles = new ArrayList<>();
    drawn.subList(0, 4).forEach(i -> alleles.add(locus.alleles().get(i)));
    Collections.sort(alleles);
    Map<String, Fraction> expected = new LinkedHashMap<>();
    for (int i = 0; i < 4; i++) {
      expected.merge(
          alleles.get(i) + alleles.get(i), alpha.times(Fraction.of(1, 4)), Fraction::plus);
      for (int j = i + 1; j < 4; j++) {
        expected.merge(
            alleles.get(i) + alleles.get(j),
            Fraction.ONE.minus(alpha).times(Fraction.of(1, 6)),
            Fraction::plus);
      }
    }
    expected.values().removeIf(Fraction::isZero);

    Parent plant = Parent.of(genome.genotype(String.join("", alleles)), Meiosis.tetrasomic(alpha));
    Map<String, Fraction> eggs = new LinkedHashMap<>();
    Cross.of(genome, plant, plant).eggs().forEach(egg -> eggs.put(egg.text(), egg.chance()));

    assertThat(eggs).isEqualTo(expected);
  }
}

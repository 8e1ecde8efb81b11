package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Plants of four chromosome sets, and of three.
 *
 * <p>Ratios under random chromosome segregation: Haldane 1930, Journal of Genetics 22:359-372, and
 * textbook tables; under random chromatid segregation (a double reduction of 1/7) textbook tables;
 * from memory, and derived below.
 */
class TetraploidTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Genome GENOME = Genome.unlinked(A);
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));

  private static Parent autotetraploid(String genotype, Fraction doubleReduction) {
    return Parent.of(GENOME.genotype(genotype), Meiosis.tetrasomic(doubleReduction));
  }

  private static Map<String, Fraction> eggs(Parent seed) {
    Map<String, Fraction> eggs = new TreeMap<>();
    Cross.of(GENOME, seed, Parent.of(GENOME.genotype("aa")))
        .eggs()
        .forEach(egg -> eggs.put(egg.text(), egg.chance()));
    return eggs;
  }

  private static String selfed(Parent plant) {
    return Cross.of(GENOME, plant, plant).odds(EDGE).ratio().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "AAaa, 0, 1/6, 4/6, 1/6",
    "Aaaa, 0, 0, 1/2, 1/2",
    "AAAa, 0, 1/2, 1/2, 0",
    "AAaa, 1/7, 3/14, 8/14, 3/14",
    "Aaaa, 1/7, 1/28, 12/28, 15/28",
    "AAAa, 1/7, 15/28, 12/28, 1/28",
    "AAAA, 1/7, 1, 0, 0"
  })
  void gametesOfAnAutotetraploid(
      String plant, String doubleReduction, String both, String one, String none) {
    Map<String, Fraction> eggs = eggs(autotetraploid(plant, Fraction.parse(doubleReduction)));

    assertThat(eggs.getOrDefault("AA", Fraction.ZERO)).isEqualTo(Fraction.parse(both));
    assertThat(eggs.getOrDefault("Aa", Fraction.ZERO)).isEqualTo(Fraction.parse(one));
    assertThat(eggs.getOrDefault("aa", Fraction.ZERO)).isEqualTo(Fraction.parse(none));
  }

  @ParameterizedTest
  @CsvSource({
    "AAaa, 0, 35:1",
    "Aaaa, 0, 3:1",
    "AAaa, 1/7, 187:9",
    "Aaaa, 1/7, 559:225",
    "AAAa, 1/7, 783:1"
  })
  void selfedAutotetraploids(String plant, String doubleReduction, String ratio) {
    assertThat(selfed(autotetraploid(plant, Fraction.parse(doubleReduction)))).isEqualTo(ratio);
  }

  @ParameterizedTest
  @CsvSource({
    "AAaa, 0, 5:1",
    "Aaaa, 0, 1:1",
    "AAAa, 1/7, 27:1",
    "AAaa, 1/7, 11:3",
    "Aaaa, 1/7, 13:15"
  })
  void autotetraploidsByTheRecessive(String plant, String doubleReduction, String ratio) {
    Cross cross =
        Cross.of(
            GENOME,
            autotetraploid(plant, Fraction.parse(doubleReduction)),
            autotetraploid("aaaa", Fraction.ZERO));

    assertThat(cross.ploidy()).isEqualTo(4);
    assertThat(cross.odds(EDGE).ratio()).contains(ratio);
  }

  /** Without double reduction a triplex never throws the recessive in its first offspring. */
  @Test
  void selfedTriplexShowsNoRecessiveAtRandomPairing() {
    Parent triplex = autotetraploid("AAAa", Fraction.ZERO);

    assertThat(Cross.of(GENOME, triplex, triplex).odds(EDGE).chanceOf("red"))
        .isEqualTo(Fraction.ONE);
  }

  /** Two of four drawn without replacement; the distribution is Apache Commons Math's. */
  @ParameterizedTest
  @CsvSource({"AAAA, 4", "AAAa, 3", "AAaa, 2", "Aaaa, 1", "aaaa, 0"})
  void randomPairingDrawsTwoOfFour(String plant, int dominants) {
    Map<String, Fraction> eggs = eggs(autotetraploid(plant, Fraction.ZERO));
    HypergeometricDistribution drawn = new HypergeometricDistribution(4, dominants, 2);

    List<String> kinds = List.of("aa", "Aa", "AA");
    for (int copies = 0; copies <= 2; copies++) {
      assertThat(eggs.getOrDefault(kinds.get(copies), Fraction.ZERO).toDouble())
          .isCloseTo(drawn.probability(copies), within(1e-12));
    }
  }

  /**
   * 1 − F′ = (1 − F)(5/6 − α/3), Haldane 1930, from memory. Derived: of two of a seedling's four
   * alleles two pairs of six lie in one gamete and four in different ones. Those of one gamete are
   * sisters with chance α, else two different ones; those of two gametes are copies of one allele
   * with chance 1/4. So 1 − F′ = (1 − F)((1 − α)/3 + (2/3)(3/4)) = (1 − F)(5/6 − α/3).
   */
  @ParameterizedTest
  @CsvSource({"0", "1/7", "1/6", "1/20"})
  void selfingLosesASixthOfTheHeterozygosity(String doubleReduction) {
    Fraction alpha = Fraction.parse(doubleReduction);
    Parent duplex = autotetraploid("AAaa", alpha);
    SelfedLine line = SelfedLine.of(Cross.of(GENOME, duplex, duplex));
    Fraction kept = Fraction.of(5, 6).minus(alpha.dividedBy(Fraction.of(3)));

    Fraction expected = Fraction.of(2, 3); // of two alleles of AAaa, four pairs of six differ
    for (int selfings = 0; selfings < 6; selfings++) {
      expected = expected.times(kept);
      assertThat(heterozygosity(line, selfings)).isEqualTo(expected);
    }
  }

  @Test
  void inbreedingOfASelfedAutotetraploid() {
    Parent duplex = autotetraploid("AAaa", Fraction.ZERO);
    SelfedLine line = SelfedLine.of(Cross.of(GENOME, duplex, duplex));

    assertThat(List.of(0, 1, 2).stream().map(selfings -> inbreeding(line, selfings)))
        .containsExactly(Fraction.of(1, 6), Fraction.of(11, 36), Fraction.of(91, 216));
  }

  private static Fraction inbreeding(SelfedLine line, int selfings) {
    return Fraction.ONE.minus(heterozygosity(line, selfings).dividedBy(Fraction.of(2, 3)));
  }

  /** The chance that two different ones of a plant's four alleles differ. */
  private static Fraction heterozygosity(SelfedLine line, int selfings) {
    Fraction sum = Fraction.ZERO;
    for (String one : List.of("AAAa", "Aaaa")) {
      sum = sum.plus(carrying(line, selfings, one).times(Fraction.HALF));
    }
    return sum.plus(carrying(line, selfings, "AAaa").times(Fraction.of(2, 3)));
  }

  private static Fraction carrying(SelfedLine line, int selfings, String genotype) {
    return line.chance(selfings, Wish.any().andCarrying(Pattern.read(List.of(A), genotype)));
  }

  @Test
  void doubleReductionIsAtMostASixth() {
    assertThat(selfed(autotetraploid("AAaa", Fraction.of(1, 6)))).isEqualTo("77:4"); // (2/9)²
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Meiosis.tetrasomic(Fraction.of(1, 5)))
        .withMessage("a double reduction of 1/5; it lies between 0 and 1/6");
    assertThatIllegalArgumentException().isThrownBy(() -> Meiosis.tetrasomic(Fraction.of(-1, 100)));
  }

  /** Two genes in two subgenomes: either will do, as in shepherd's purse. */
  @Test
  void twoSubgenomesSegregateLikeTwoGenes() {
    assertThat(selfed(Parent.of(GENOME.genotype("Aa|Aa")))).isEqualTo("15:1");
    assertThat(selfed(Parent.of(GENOME.genotype("Aa|aa")))).isEqualTo("3:1");
    assertThat(eggs(Parent.of(GENOME.genotype("AA|aa"))))
        .containsExactly(Map.entry("A|a", Fraction.ONE));
  }

  /** AA|aa by aa|AA: what lies in which subgenome tells the seedlings' offspring apart. */
  @Test
  void subgenomesKeepToThemselvesThroughACross() {
    Cross alike = Cross.selfing(GENOME.genotype("AA|aa"));
    Cross turned = Cross.of(GENOME.genotype("AA|aa"), GENOME.genotype("aa|AA"));

    assertThat(alike.genotypes().get(0).genotype().text()).isEqualTo("AA|aa");
    assertThat(turned.genotypes().get(0).genotype().text()).isEqualTo("Aa|Aa");
    assertThat(SelfedLine.of(alike).chance(1, Wish.showing(EDGE, "green")))
        .isEqualTo(Fraction.ZERO);
    assertThat(SelfedLine.of(turned).chance(1, Wish.showing(EDGE, "green")))
        .isEqualTo(Fraction.of(1, 16));
  }

  @Test
  void howFourChromosomesPairHasToBeSaid() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.selfing(GENOME.genotype("AAaa")))
        .withMessage(
            "a tetraploid's gametes depend on how its chromosomes pair; say whether any two of the"
                + " four (tetrasomic), or only those of one subgenome (disomic)");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Cross.of(
                    GENOME,
                    Parent.of(GENOME.genotype("Aa"), Meiosis.tetrasomic(Fraction.ZERO)),
                    Parent.of(GENOME.genotype("aa"))))
        .withMessage(
            "tetrasomic inheritance is reckoned for plants of 4 chromosome sets, and this one has"
                + " 2");
  }

  /** AA, Aa, aa as 1:4:1 by a, or by A and a. */
  @ParameterizedTest
  @CsvSource({"AAaa, aa, 5:1", "AAaa, Aa, 11:1", "Aaaa, aa, 1:1", "Aaaa, Aa, 3:1"})
  void tetraploidByDiploidGivesTriploids(String tetraploid, String diploid, String ratio) {
    Parent four = autotetraploid(tetraploid, Fraction.ZERO);
    Parent two = Parent.of(GENOME.genotype(diploid));
    Cross cross = Cross.of(GENOME, four, two);

    assertThat(cross.ploidy()).isEqualTo(3);
    assertThat(cross.odds(EDGE).ratio()).contains(ratio);
    assertThat(Cross.of(GENOME, two, four).odds(EDGE).ratio()).contains(ratio);
  }

  @Test
  void dosageTellsTriploidsApart() {
    Cross cross =
        Cross.of(GENOME, autotetraploid("AAaa", Fraction.ZERO), Parent.of(GENOME.genotype("aa")));

    assertThat(cross.genotypes())
        .extracting(each -> each.genotype().text() + " " + each.chance())
        .containsExactlyInAnyOrder("AAa 1/6", "Aaa 2/3", "aaa 1/6");
  }

  /** Of AAa: A 2, a 1, and AA 1, Aa 2, as in the textbook's trisomics. */
  @Test
  void aTriploidsGametesAreWhicheverOfItsThree() {
    Genotype triploid = GENOME.genotype("AAa");

    assertThat(eggs(Parent.of(triploid, new Meiosis.OfTriploid(1))))
        .isEqualTo(Map.of("A", Fraction.of(2, 3), "a", Fraction.of(1, 3)));
    assertThat(eggs(Parent.of(triploid, new Meiosis.OfTriploid(2))))
        .isEqualTo(Map.of("AA", Fraction.of(1, 3), "Aa", Fraction.of(2, 3)));
  }

  @Test
  void aTriploidByDiploidDependsOnWhichGametesWork() {
    Parent recessive = Parent.of(GENOME.genotype("aa"));
    Genotype simplex = GENOME.genotype("Aaa");

    Cross ofOne = Cross.of(GENOME, Parent.of(simplex, new Meiosis.OfTriploid(1)), recessive);
    Cross ofTwo = Cross.of(GENOME, Parent.of(simplex, new Meiosis.OfTriploid(2)), recessive);

    assertThat(ofOne.ploidy()).isEqualTo(2);
    assertThat(ofOne.odds(EDGE).ratio()).contains("1:2");
    assertThat(ofTwo.ploidy()).isEqualTo(3);
    assertThat(ofTwo.odds(EDGE).ratio()).contains("2:1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.of(GENOME, Parent.of(simplex), recessive))
        .withMessage("a triploid forms gametes of one set or of two; say which");
  }

  @Test
  void moreThanFourSetsAreNotReckoned() {
    Parent four = autotetraploid("AAaa", Fraction.ZERO);
    Cross triploids = Cross.of(GENOME, four, Parent.of(GENOME.genotype("aa")));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> SelfedLine.of(triploids).chance(1, Wish.showing(EDGE, "red")))
        .withMessage(
            "the seedlings are triploid, and what a triploid throws when it is selfed is not"
                + " computed");
    assertThatIllegalArgumentException().isThrownBy(() -> new Meiosis.OfTriploid(3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SelfedLine.of(triploids).withMeiosis(new Meiosis.OfTriploid(1)))
        .withMessageEndingWith("lines are followed through gametes with half of them");
  }

  @Test
  void linkageThroughPolyploidsIsNotComputed() {
    Locus b = Locus.of("hair", "B", "b");
    Genome linked = Genome.of(LinkageGroup.of(A, Fraction.of(1, 10), b));
    Meiosis tetrasomic = Meiosis.tetrasomic(Fraction.ZERO);
    Parent both = Parent.of(linked.genotype("AB/AB/ab/ab"), tetrasomic);
    Parent one = Parent.of(linked.genotype("AAaa BBBB"), tetrasomic);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.of(linked, both, one))
        .withMessage(
            "the genes edge, hair are linked and more than one of them segregates; linkage is"
                + " computed through reduced gametes of diploids, not through polyploids or"
                + " unreduced gametes. Ask for one of them");
    assertThat(Cross.of(linked, one, one).odds(EDGE).ratio()).contains("35:1");
  }
}

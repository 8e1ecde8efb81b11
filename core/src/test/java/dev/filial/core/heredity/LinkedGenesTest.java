package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.LinkageGroup.Placed;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Genes on one chromosome. */
class LinkedGenesTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final Locus C = Locus.of("spine", "C", "c");
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel HAIR = TraitModel.dominant("hair", B, List.of("long", "none"));

  private static Genome linked(Fraction recombination) {
    return Genome.of(LinkageGroup.of(A, recombination, B));
  }

  /**
   * (2 + θ) : (1 − θ) : (1 − θ) : θ over 4, with θ = (1 − r)² in coupling and r² in repulsion;
   * Fisher and Balmukand 1928, Journal of Genetics 20:79-92.
   */
  @ParameterizedTest
  @ValueSource(strings = {"0", "1/100", "1/10", "1/5", "1/3", "1/2"})
  void anF2OfLinkedGenesHasOneParameter(String recombination) {
    Fraction r = Fraction.parse(recombination);
    Fraction kept = Fraction.ONE.minus(r);
    Genome genome = linked(r);

    assertTheta(Cross.selfing(genome.genotype("AB/ab")), kept.times(kept));
    assertTheta(Cross.selfing(genome.genotype("Ab/aB")), r.times(r));
    assertTheta(Cross.of(genome.genotype("AB/ab"), genome.genotype("Ab/aB")), kept.times(r));
  }

  private static void assertTheta(Cross cross, Fraction theta) {
    Odds odds = cross.odds(EDGE, HAIR);
    Fraction quarter = Fraction.of(1, 4);
    Fraction one = Fraction.ONE.minus(theta).times(quarter);
    assertThat(odds.chanceOf("red", "long")).isEqualTo(Fraction.of(2).plus(theta).times(quarter));
    assertThat(odds.chanceOf("red", "none")).isEqualTo(one);
    assertThat(odds.chanceOf("green", "long")).isEqualTo(one);
    assertThat(odds.chanceOf("green", "none")).isEqualTo(theta.times(quarter));
  }

  @Test
  void aTestCrossShowsTheGametes() {
    Genome genome = linked(Fraction.of(1, 10));

    Odds odds = Cross.of(genome.genotype("Ab/aB"), genome.genotype("ab/ab")).odds(EDGE, HAIR);

    assertThat(odds.ratio()).contains("1:9:9:1");
  }

  /** Nothing between them: repulsion shows no double recessive, coupling is 3:1. */
  @Test
  void genesThatNeverPartGoTogether() {
    Genome genome = linked(Fraction.ZERO);

    assertThat(Cross.selfing(genome.genotype("AB/ab")).odds(EDGE, HAIR).ratio()).contains("3:1");
    assertThat(Cross.selfing(genome.genotype("Ab/aB")).odds(EDGE, HAIR).ratio()).contains("2:1:1");
  }

  /** Three genes: eight gametes by two intervals, multiplied by hand. */
  @Test
  void doubleRecombinantsAreAsRareAsBothIntervalsSay() {
    Genome genome =
        Genome.of(
            new LinkageGroup(
                List.of(A, B, C), List.of(Fraction.of(1, 10), Fraction.of(1, 5)), true));

    Map<String, Fraction> eggs = new TreeMap<>();
    Cross.selfing(genome.genotype("ABC/abc"))
        .eggs()
        .forEach(egg -> eggs.put(egg.text(), egg.chance()));

    assertThat(eggs)
        .isEqualTo(
            Map.of(
                "ABC", Fraction.of(36, 100),
                "abc", Fraction.of(36, 100),
                "Abc", Fraction.of(4, 100),
                "aBC", Fraction.of(4, 100),
                "ABc", Fraction.of(9, 100),
                "abC", Fraction.of(9, 100),
                "AbC", Fraction.of(1, 100),
                "aBc", Fraction.of(1, 100)));
  }

  /**
   * Lines selfed to the end are recombined with R = 2r/(1 + 2r): Haldane and Waddington 1931,
   * Genetics 16:357-374. Half of the recombined are AAbb.
   */
  @ParameterizedTest
  @CsvSource({"0", "1/100", "1/10", "1/4", "1/2"})
  void recombinantInbredLines(String recombination) {
    Fraction r = Fraction.parse(recombination);
    Genome genome = linked(r);
    double expected = 2 * r.toDouble() / (1 + 2 * r.toDouble());
    Wish one = Wish.any().andCarrying(Pattern.read(genome.loci(), "AA bb"));
    Wish other = Wish.any().andCarrying(Pattern.read(genome.loci(), "aa BB"));

    SelfedLine coupling = SelfedLine.of(Cross.selfing(genome.genotype("AB/ab")));
    SelfedLine repulsion = SelfedLine.of(Cross.selfing(genome.genotype("Ab/aB")));

    assertThat(coupling.chance(45, one).toDouble() * 2).isCloseTo(expected, within(1e-12));
    assertThat(coupling.chance(45, other).toDouble() * 2).isCloseTo(expected, within(1e-12));
    assertThat(1 - repulsion.chance(45, one).toDouble() * 2).isCloseTo(expected, within(1e-12));
  }

  @Test
  void ofAGroupOnlySomeGenesAreKept() {
    LinkageGroup three =
        new LinkageGroup(List.of(A, B, C), List.of(Fraction.of(1, 10), Fraction.of(1, 5)), true);

    LinkageGroup two = three.only(List.of(C, A));

    assertThat(two.loci()).containsExactly(A, C);
    assertThat(two.recombination()).containsExactly(Fraction.of(26, 100)); // 0.1 + 0.2 − 0.04
    assertThat(three.only(List.of(B)).recombination()).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> three.only(List.of()));
  }

  @Test
  void genesAreOrderedByTheirPlaceOnTheMap() {
    LinkageGroup group =
        LinkageGroup.mapped(
            MapFunction.HALDANE,
            List.of(
                new Placed(B, new BigDecimal("25")),
                new Placed(A, new BigDecimal("15")),
                new Placed(C, new BigDecimal("25"))));

    assertThat(group.loci()).containsExactly(A, B, C);
    assertThat(group.recombination().get(0).toDouble()).isCloseTo(0.0906346235, within(1e-10));
    assertThat(group.recombination().get(1)).isEqualTo(Fraction.ZERO);
    assertThat(group.exact()).isFalse();
  }

  /** A ratio of numbers with sixteen digits would say more than is known. */
  @Test
  void oddsByMapDistancesAreNotCalledExact() {
    LinkageGroup mapped =
        LinkageGroup.mapped(
            MapFunction.KOSAMBI,
            List.of(new Placed(A, BigDecimal.ZERO), new Placed(B, BigDecimal.TEN)));
    Genome genome = Genome.of(mapped, LinkageGroup.of(C));
    TraitModel spine = TraitModel.dominant("spine", C, List.of("long", "short"));
    Cross cross = Cross.selfing(genome.genotype("AB/ab Cc"));

    Odds odds = cross.odds(EDGE, HAIR);

    assertThat(odds.exact()).isFalse();
    assertThat(odds.ratio()).isEmpty();
    assertThat(odds.chanceOf("green", "none").toDouble())
        .isCloseTo(Math.pow(1 - 0.0986876601, 2) / 4, within(1e-10));
    assertThat(cross.odds(spine).ratio()).contains("3:1");
    assertThat(genome.isExact()).isFalse();
  }

  @Test
  void recombinationLiesBetweenNoughtAndAHalf() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LinkageGroup.of(A, Fraction.of(3, 5), B))
        .withMessage(
            "a recombination of 3/5 between edge and hair; it lies between 0 and 1/2, which is no"
                + " linkage");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LinkageGroup.of(A, Fraction.of(-1, 5), B));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LinkageGroup(List.of(A, B), List.of(), true))
        .withMessage(
            "2 genes of one chromosome with 0 recombinations; there is one between each gene and"
                + " the next");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LinkageGroup.of(A, Fraction.HALF, Locus.cytoplasmic("plastid", "G", "W")))
        .withMessage(
            "the gene plastid sits in the cytoplasm, and cannot be linked to genes of a"
                + " chromosome");
  }

  @Test
  void aGeneStandsInOneGroup() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Genome.of(LinkageGroup.of(A, Fraction.HALF, B), LinkageGroup.of(A)))
        .withMessage("the gene edge stands in two places; leave one out");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> linked(Fraction.HALF).locus("spine"))
        .withMessage("there is no gene spine; there are edge, hair");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Cross.selfing(linked(Fraction.HALF).genotype("AB/ab"))
                    .odds(TraitModel.dominant("spine", C, List.of("long", "short"))))
        .withMessage("the gene spine is not among those reckoned with; add it to the genome");
  }
}

package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.heredity.Distortion.Side;
import dev.filial.core.heredity.TraitModel.Row;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Families that are not as even as they should be; shares derived by hand. */
class DistortionTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel HAIR = TraitModel.dominant("hair", B, List.of("long", "none"));

  private static Genome single(Side side, String share) {
    return Genome.unlinked(A).withDistortion(Distortion.share(A, side, "A", Fraction.parse(share)));
  }

  /** Seven of ten grains carry A: aa is 1/2 · 3/10. */
  @Test
  void pollenMayFavourAnAllele() {
    Genome genome = single(Side.POLLEN, "7/10");
    Genotype hybrid = genome.genotype("Aa");
    Genotype recessive = genome.genotype("aa");

    assertThat(Cross.selfing(hybrid).odds(EDGE).ratio()).contains("17:3");
    assertThat(Cross.of(recessive, hybrid).odds(EDGE).ratio()).contains("7:3");
    assertThat(Cross.of(hybrid, recessive).odds(EDGE).ratio()).contains("1:1");
  }

  @Test
  void eggsMayToo() {
    Genome genome = single(Side.EGGS, "7/10");

    assertThat(Cross.of(genome.genotype("Aa"), genome.genotype("aa")).odds(EDGE).ratio())
        .contains("7:3");
    assertThat(Cross.selfing(single(Side.BOTH, "7/10").genotype("Aa")).odds(EDGE).ratio())
        .contains("91:9");
  }

  /** Of B beside A 7/10 · (1 − r) and of B beside a 3/10 · r. */
  @ParameterizedTest
  @CsvSource({"0, 7:3", "1/10, 33:17", "1/2, 1:1"})
  void aLinkedGeneIsDraggedAlong(String recombination, String ratio) {
    Genome genome =
        Genome.of(LinkageGroup.of(A, Fraction.parse(recombination), B))
            .withDistortion(Distortion.share(A, Side.POLLEN, "A", Fraction.of(7, 10)));

    assertThat(Cross.of(genome.genotype("ab/ab"), genome.genotype("AB/ab")).odds(HAIR).ratio())
        .contains(ratio);
  }

  /** Complete drive: only A of a hybrid; a homozygote still hands on what it has, linked or not. */
  @Test
  void aHomozygoteHasNothingToFavour() {
    Genome genome =
        Genome.of(LinkageGroup.of(A, Fraction.of(1, 10), B))
            .withDistortion(Distortion.share(A, Side.BOTH, "A", Fraction.ONE));
    Genotype tester = genome.genotype("ab/ab");

    assertThat(Cross.of(genome.genotype("AB/ab"), tester).odds(EDGE).chanceOf("red"))
        .isEqualTo(Fraction.ONE);
    assertThat(Cross.of(genome.genotype("AB/ab"), tester).odds(HAIR).ratio()).contains("9:1");
    assertThat(Cross.of(genome.genotype("aB/ab"), tester).odds(EDGE, HAIR).ratio()).contains("1:1");
    assertThat(Cross.selfing(tester).odds(EDGE).chanceOf("green")).isEqualTo(Fraction.ONE);
  }

  /** Weights 3, 2, 1 of three alleles: of any two the ratio of theirs. */
  @Test
  void manyAllelesHaveWeights() {
    Locus coat = Locus.of("coat", "P", "Q", "R");
    Genome genome =
        Genome.unlinked(coat)
            .withDistortion(
                new Distortion(coat, Side.EGGS, Map.of("P", Fraction.of(3), "Q", Fraction.of(2))));
    TraitModel colour = TraitModel.dominant("colour", coat, List.of("p", "q", "r"));
    Genotype tester = genome.genotype("RR");

    assertThat(Cross.of(genome.genotype("PQ"), tester).odds(colour).ratio()).contains("3:2");
    assertThat(Cross.of(genome.genotype("QR"), tester).odds(colour).ratio()).contains("2:1");
    assertThat(Cross.of(genome.genotype("PR"), tester).odds(colour).ratio()).contains("3:1");
  }

  /** Of an unknown plant what is favoured is favoured in Aa alone: p² + 2pq · 9/10. */
  @Test
  void inATaxonOnlyHeterozygotesAreDistorted() {
    Genome genome = single(Side.POLLEN, "9/10");
    Parent taxon =
        new Parent.OfTaxon(Map.of("edge", Map.of("A", Fraction.of(1, 3), "a", Fraction.of(2, 3))));
    Parent tester = Parent.of(genome.genotype("aa"));

    assertThat(Cross.of(genome, tester, taxon).odds(EDGE).chanceOf("red"))
        .isEqualTo(Fraction.of(23, 45)); // 1/9 + 4/9 · 9/10
    assertThat(Cross.of(genome, taxon, tester).odds(EDGE).chanceOf("red"))
        .isEqualTo(Fraction.of(1, 3));
  }

  /** A taxon of which nothing is known but frequencies is in Hardy-Weinberg proportions. */
  @Test
  void twoPlantsOfATaxonGiveHardyWeinbergSeedlings() {
    Genome genome = Genome.unlinked(A);
    Parent taxon =
        new Parent.OfTaxon(Map.of("edge", Map.of("A", Fraction.of(1, 3), "a", Fraction.of(2, 3))));

    assertThat(Cross.of(genome, taxon, taxon).genotypes())
        .extracting(each -> each.genotype().text() + " " + each.chance())
        .containsExactlyInAnyOrder("AA 1/9", "Aa 4/9", "aa 4/9");
    Parent strange = new Parent.OfTaxon(Map.of());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.of(genome, taxon, strange))
        .withMessage("nothing is said of how often each allele of the gene edge is found");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Parent.OfTaxon(Map.of("edge", Map.of("A", Fraction.of(1, 3)))))
        .withMessage(
            "the frequencies of the alleles of the gene edge (A) come to 1/3; together they are 1");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Parent.OfTaxon(
                    Map.of("edge", Map.of("A", Fraction.of(-1), "a", Fraction.of(2)))));
  }

  /**
   * The recessive lethal l lies beside a: of Aa seedlings' selfing aa dies unless recombined. aall
   * is ((1 − r)/2)², so of those that live aa are (1 − (1 − r)²)/3, and 1/4 without linkage.
   */
  @ParameterizedTest
  @CsvSource({"0, 0", "1/10, 19/300", "1/2, 1/4"})
  void lossesAtALinkedGeneTakeTheRecessiveWithThem(String recombination, String green) {
    Locus lethal = Locus.of("life", "L", "l");
    Genome genome = Genome.of(LinkageGroup.of(lethal, Fraction.parse(recombination), A));
    TraitModel life =
        new TraitModel(
            "life",
            List.of("lives"),
            List.of(
                new Row(Pattern.read(List.of(lethal), "ll"), Outcome.lethal()),
                new Row(List.of(), Outcome.of("lives"))));
    Cross cross = Cross.selfing(genome.genotype("LA/la")).withLosses(life);

    assertThat(cross.odds(EDGE).chanceOf("green")).isEqualTo(Fraction.parse(green));
    assertThat(cross.odds(EDGE).lost()).isEqualTo(Fraction.of(1, 4));
    assertThat(cross.chance(Wish.showing(EDGE, "green"))).isEqualTo(Fraction.parse(green));
  }

  @Test
  void weightsAreNotNegative() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Distortion.share(A, Side.BOTH, "A", Fraction.of(3, 2)))
        .withMessage("a share of 3/2 of the gametes with A; it lies between 0 and 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Distortion(A, Side.BOTH, Map.of("A", Fraction.of(-1))))
        .withMessage("gametes with A count -1; a weight is 0 or more, and 1 is no distortion");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new Distortion(A, Side.BOTH, Map.of("A", Fraction.ZERO, "a", Fraction.ZERO)))
        .withMessage("no allele of the gene edge is handed on at all; leave one above 0");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Distortion.share(Locus.of("coat", "P", "Q", "R"), Side.BOTH, "P", Fraction.HALF))
        .withMessage(
            "the gene coat has more than two alleles; give a weight for each that is favoured");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Genome.unlinked(B)
                    .withDistortion(Distortion.share(A, Side.BOTH, "A", Fraction.HALF)));
  }

  /** Of three alleles two are not handed on at all: a plant of these two has no gametes. */
  @Test
  void aPlantWithoutGametesIsRefused() {
    Locus coat = Locus.of("coat", "P", "Q", "R");
    Genome genome =
        Genome.unlinked(coat)
            .withDistortion(
                new Distortion(coat, Side.EGGS, Map.of("P", Fraction.ZERO, "Q", Fraction.ZERO)));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.selfing(genome.genotype("PQ")))
        .withMessage("no gamete is left: the plant carries none of the alleles that are handed on");
  }
}

package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.number.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plants all of whose offspring by selfing are alike. */
class BreedingTrueTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final Genome UNLINKED = Genome.unlinked(A, B);
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel HAIR = TraitModel.dominant("hair", B, List.of("long", "none"));

  private static final Cross F2 = Cross.selfing(UNLINKED.genotype("Aa Bb"));

  /** Of nine dominant in both only AABB breeds true. */
  @Test
  void oneInSixteenBreedsTrueForBothDominants() {
    Wish wish = Wish.any().andBreedingTrue(EDGE, "red").andBreedingTrue(HAIR, "long");

    assertThat(F2.chance(wish)).isEqualTo(Fraction.of(1, 16));
    assertThat(wish.text()).isEqualTo("true-breeding for edge red, true-breeding for hair long");
  }

  /** AA or aa, whatever stands at the other gene. */
  @Test
  void halfOfAnF2BreedsTrueForOneGene() {
    assertThat(F2.chance(Wish.any().andBreedingTrue(EDGE))).isEqualTo(Fraction.of(1, 2));
    assertThat(F2.chance(Wish.any().andBreedingTrue(EDGE).andBreedingTrue(HAIR)))
        .isEqualTo(Fraction.of(1, 4));
  }

  /**
   * White for want of A or of B (9:7). All seven sixteenths breed true for white: aa whatever
   * stands at the other gene (4/16), and A_ bb (3/16), for what is missing never comes back by
   * selfing. Of the coloured nine only AABB does (1/16).
   */
  @Test
  void allWhitesOfNineToSevenBreedTrue() {
    TraitModel flower =
        TraitModel.interaction(
            "flower", Interaction.COMPLEMENTARY, A, B, List.of("purple", "white"));

    assertThat(F2.chance(Wish.any().andBreedingTrue(flower, "white")))
        .isEqualTo(Fraction.of(7, 16));
    assertThat(F2.chance(Wish.any().andBreedingTrue(flower, "purple")))
        .isEqualTo(Fraction.of(1, 16));
    assertThat(F2.chance(Wish.any().andBreedingTrue(flower))).isEqualTo(Fraction.of(1, 2));
  }

  /**
   * Either gene will do (15:1): true for the dominant are AA or BB, 4 + 4 − 1 = 7 of 16; aabb is
   * the one recessive.
   */
  @Test
  void sevenOfFifteenBreedTrueWhereEitherGeneWillDo() {
    TraitModel capsule =
        TraitModel.interaction(
            "capsule", Interaction.DUPLICATE, A, B, List.of("triangular", "ovoid"));

    assertThat(F2.chance(Wish.any().andBreedingTrue(capsule, "triangular")))
        .isEqualTo(Fraction.of(7, 16));
    assertThat(F2.chance(Wish.any().andBreedingTrue(capsule, "ovoid")))
        .isEqualTo(Fraction.of(1, 16));
  }

  /** A state asked for beside it must be the plant's own. */
  @Test
  void aWhiteThatBreedsTrueForPurpleIsNone() {
    assertThat(F2.chance(Wish.showing(EDGE, "green").andBreedingTrue(EDGE, "red")))
        .isEqualTo(Fraction.ZERO);
    assertThat(F2.chance(Wish.showing(EDGE, "green").andBreedingTrue(EDGE)))
        .isEqualTo(Fraction.of(1, 4));
  }

  /** The heterozygote is the state, and never fixed. */
  @Test
  void noPinkBreedsTrue() {
    TraitModel flower = TraitModel.intermediate("flower", A, List.of("red", "pink", "white"));

    assertThat(F2.chance(Wish.any().andBreedingTrue(flower, "pink"))).isEqualTo(Fraction.ZERO);
    assertThat(F2.chance(Wish.any().andBreedingTrue(flower, "red"))).isEqualTo(Fraction.of(1, 4));
  }

  /** What shows only now and then in one genotype is never true. */
  @Test
  void whatShowsOnlyNowAndThenBreedsTrueForNothing() {
    TraitModel crest = EDGE.withPenetrance("red", Fraction.of(9, 10), "green");

    assertThat(F2.chance(Wish.any().andBreedingTrue(crest, "red"))).isEqualTo(Fraction.ZERO);
    assertThat(F2.chance(Wish.any().andBreedingTrue(crest, "green"))).isEqualTo(Fraction.of(1, 4));
  }

  /**
   * Two recessive lethals in repulsion with nothing between them: both kinds of homozygote die, and
   * the heterozygote breeds true (Muller 1918, Genetics 3:422-499, from memory).
   */
  @Test
  void balancedLethalsBreedTrue() {
    Locus one = Locus.of("one", "L", "l");
    Locus two = Locus.of("two", "M", "m");
    Locus wing = Locus.of("wing", "W", "w");
    Genome genome =
        Genome.of(
            new LinkageGroup(List.of(one, wing, two), List.of(Fraction.ZERO, Fraction.ZERO), true));
    TraitModel first = lethal(one, "l");
    TraitModel second = lethal(two, "m");
    TraitModel shape =
        TraitModel.intermediate("wing", wing, List.of("normal", "beaded", "shrunken"));
    Cross cross = Cross.selfing(genome.genotype("LWm/lwM")).withLosses(first).withLosses(second);

    assertThat(cross.odds(shape).chanceOf("beaded")).isEqualTo(Fraction.ONE);
    assertThat(cross.odds(shape).lost()).isEqualTo(Fraction.HALF);
    assertThat(cross.chance(Wish.any().andBreedingTrue(shape, "beaded"))).isEqualTo(Fraction.ONE);
    assertThat(SelfedLine.of(cross).chance(12, Wish.showing(shape, "beaded")))
        .isEqualTo(Fraction.ONE);
  }

  private static TraitModel lethal(Locus locus, String allele) {
    return new TraitModel(
        "life " + locus.name(),
        List.of("lives"),
        List.of(
            new TraitModel.Row(
                List.of(new Pattern(locus, List.of(allele, allele), false)), Outcome.lethal()),
            new TraitModel.Row(List.of(), Outcome.of("lives"))));
  }

  /** AA|aa gives nothing but Aa gametes: the hybrid is fixed. */
  @Test
  void aHybridOfTwoSubgenomesBreedsTrue() {
    Genome genome = Genome.unlinked(A);
    Genotype fixed = genome.genotype("AA|aa");
    Cross selfed = Cross.selfing(fixed);

    assertThat(selfed.genotypes())
        .extracting(each -> each.genotype().text())
        .containsExactly("AA|aa");
    TraitModel both = TraitModel.intermediate("edge", A, List.of("red", "both", "green"));
    assertThat(selfed.chance(Wish.any().andBreedingTrue(both, "both"))).isEqualTo(Fraction.ONE);
  }

  /**
   * AAaa selfed at random pairing: true for red are AAAA alone (1/36), for a recessive aaaa (1/36);
   * AAAa throws none in its first offspring but AAaa, which does.
   */
  @Test
  void oneTetraploidInThirtySixBreedsTrueForTheDominant() {
    Genome genome = Genome.unlinked(A);
    Parent duplex = Parent.of(genome.genotype("AAaa"), Meiosis.tetrasomic(Fraction.ZERO));
    Cross selfed = Cross.of(genome, duplex, duplex);

    assertThat(selfed.chance(Wish.any().andBreedingTrue(EDGE, "red")))
        .isEqualTo(Fraction.of(1, 36));
    assertThat(selfed.chance(Wish.any().andBreedingTrue(EDGE))).isEqualTo(Fraction.of(1, 18));
  }

  @Test
  void ofTriploidsItIsNotKnown() {
    Genome genome = Genome.unlinked(A);
    Cross cross =
        Cross.of(
            genome,
            Parent.of(genome.genotype("AAaa"), Meiosis.tetrasomic(Fraction.ZERO)),
            Parent.of(genome.genotype("aa")));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> cross.chance(Wish.any().andBreedingTrue(EDGE)))
        .withMessageStartingWith("the seedlings are triploid");
  }

  @Test
  void theStateSaidOnceStandsAndTwoStatesAreNone() {
    Wish red = Wish.any().andBreedingTrue(EDGE, "red");

    assertThat(F2.chance(red.andBreedingTrue(EDGE))).isEqualTo(Fraction.of(1, 4));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> red.andBreedingTrue(EDGE, "green"))
        .withMessage("a plant cannot breed true for red and green of edge at once");
  }
}

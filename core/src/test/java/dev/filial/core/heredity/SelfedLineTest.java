package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.number.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is left after selfing again and again, with and without choosing. */
class SelfedLineTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final Genome UNLINKED = Genome.unlinked(A, B);
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel HAIR = TraitModel.dominant("hair", B, List.of("long", "none"));
  private static final Cross F2 = Cross.selfing(UNLINKED.genotype("Aa Bb"));

  private static Wish carrying(String patterns) {
    return Wish.any().andCarrying(Pattern.read(UNLINKED.loci(), patterns));
  }

  /** F = 1/2, 3/4, 7/8 …: Falconer and Mackay 1996, Table 5.1, from memory. */
  @Test
  void selfingHalvesTheHeterozygotes() {
    SelfedLine line = SelfedLine.of(F2);
    Fraction heterozygous = Fraction.HALF;
    for (int selfings = 0; selfings <= 20; selfings++) {
      assertThat(line.chance(selfings, carrying("Aa"))).isEqualTo(heterozygous);
      heterozygous = heterozygous.times(Fraction.HALF);
    }
    assertThat(List.of(0, 1, 2, 3).stream().map(f -> inbreeding(line, f)))
        .containsExactly(
            Fraction.of(1, 2), Fraction.of(3, 4), Fraction.of(7, 8), Fraction.of(15, 16));
  }

  /** Against the heterozygosity of the F1, all of which is Aa. */
  private static Fraction inbreeding(SelfedLine line, int selfings) {
    return Fraction.ONE.minus(line.chance(selfings, carrying("Aa")));
  }

  /** (1 − 1/2^k)ⁿ of the lines are homozygous at n genes: textbook, and halving. */
  @Test
  void afterThreeSelfingsMostLinesAreFixedAtTwoGenes() {
    Wish fixed = Wish.any().andBreedingTrue(EDGE).andBreedingTrue(HAIR);

    assertThat(SelfedLine.of(F2).chance(3, fixed))
        .isEqualTo(Fraction.of(15, 16).times(Fraction.of(15, 16)));
  }

  /**
   * Recessives are rejected before each selfing. Of the plants kept h are heterozygous; these throw
   * h/4 recessives, and of the rest (h/2)/(1 − h/4) = 2h/(4 − h) are heterozygous. From h = 2/3 in
   * the F2 that is 2/5, 2/9, 2/17: 2/(2^k + 1). So 1/6, 1/10, 1/18 of the F3, F4, F5 are recessive:
   * 1/(2(2^k + 1)) after k selfings.
   */
  @Test
  void rejectingRecessivesLeavesEverFewer() {
    SelfedLine chosen = SelfedLine.of(F2).keeping(Wish.showing(EDGE, "red"));

    assertThat(chosen.chance(0, Wish.showing(EDGE, "green"))).isEqualTo(Fraction.of(1, 4));
    for (int selfings = 1; selfings <= 12; selfings++) {
      assertThat(chosen.chance(selfings, Wish.showing(EDGE, "green")))
          .isEqualTo(Fraction.of(1, 2 * ((1L << selfings) + 1)));
    }
  }

  /** Without choosing, half of what is not heterozygous is recessive. */
  @Test
  void withoutChoosingRecessivesGather() {
    SelfedLine line = SelfedLine.of(F2);

    assertThat(line.chance(1, Wish.showing(EDGE, "green"))).isEqualTo(Fraction.of(3, 8));
    assertThat(line.chance(2, Wish.showing(EDGE, "green"))).isEqualTo(Fraction.of(7, 16));
    assertThat(line.chance(30, Wish.showing(EDGE, "green")).toDouble()).isLessThan(0.5);
  }

  /** Choosing for one gene does nothing to another that is not linked to it. */
  @Test
  void choosingForOneGeneLeavesAnUnlinkedOneAlone() {
    SelfedLine chosen = SelfedLine.of(F2).keeping(Wish.showing(EDGE, "red"));

    assertThat(chosen.chance(2, Wish.showing(HAIR, "none"))).isEqualTo(Fraction.of(7, 16));
    assertThat(chosen.chance(2, Wish.showing(HAIR, "none").andShowing(EDGE, "green")))
        .isEqualTo(Fraction.of(7, 160));
  }

  /** With nothing between them, keeping red keeps B of AB/ab: 1/6 as for A itself. */
  @Test
  void choosingForOneGeneDragsALinkedOneAlong() {
    Genome linked = Genome.of(LinkageGroup.of(A, Fraction.ZERO, B));
    SelfedLine chosen =
        SelfedLine.of(Cross.selfing(linked.genotype("AB/ab"))).keeping(Wish.showing(EDGE, "red"));

    assertThat(chosen.chance(1, Wish.showing(HAIR, "none"))).isEqualTo(Fraction.of(1, 6));
  }

  /** Green is recessive: the first one kept is fixed. */
  @Test
  void aRecessiveIsFixedAtOnce() {
    SelfedLine chosen = SelfedLine.of(F2).keeping(Wish.showing(EDGE, "green"));

    assertThat(chosen.chance(1, Wish.any().andBreedingTrue(EDGE, "green"))).isEqualTo(Fraction.ONE);
  }

  /** Heterozygotes kept each time: half of the next are so again, for ever. */
  @Test
  void keepingThePinksFixesNothing() {
    TraitModel flower = TraitModel.intermediate("flower", A, List.of("red", "pink", "white"));
    SelfedLine pinks = SelfedLine.of(F2).keeping(Wish.showing(flower, "pink"));

    assertThat(pinks.chance(7, Wish.showing(flower, "pink"))).isEqualTo(Fraction.HALF);
  }

  /**
   * By hand: of Aa selfed, AA dying, ⅔ of those that live are Aa and ⅓ aa. One seedling of each: ⅔
   * × ¼ = 1/6 AA, which die, ⅔ × ½ = ⅓ Aa, and ⅔ × ¼ + ⅓ = ½ aa; of the 5/6 that live ⅖ are Aa and
   * ⅗ aa. These selfed again: ⅖ × ¼ = 1/10 die.
   */
  @Test
  void seedlingsOfTheLastGenerationDieToo() {
    TraitModel lethal = EDGE.withLethal(Pattern.read(List.of(A), "AA"));
    SelfedLine line = SelfedLine.of(F2);
    Odds odds = line.odds(1, List.of(lethal));

    assertThat(odds.lost()).isEqualTo(Fraction.of(1, 6));
    assertThat(odds.chanceOf("red")).isEqualTo(Fraction.of(2, 5));
    assertThat(odds.chanceOf("green")).isEqualTo(Fraction.of(3, 5));
    assertThat(line.lost(0, List.of(lethal))).isEqualTo(Fraction.of(1, 4));
    assertThat(line.lost(2, List.of(lethal))).isEqualTo(Fraction.of(1, 10));
    // A trait nobody asks after kills as well, and one that kills nobody changes nothing.
    assertThat(SelfedLine.of(F2.withLosses(lethal)).lost(1, List.of(HAIR)))
        .isEqualTo(Fraction.of(1, 6));
    assertThat(line.lost(1, List.of(HAIR))).isEqualTo(Fraction.ZERO);
    // Only red ones are selfed, which are all Aa: a quarter of what they throw dies, every time.
    assertThat(line.keeping(Wish.showing(lethal, "red")).lost(5, List.of(lethal)))
        .isEqualTo(Fraction.of(1, 4));
  }

  /** A lethal recessive goes the way of a rejected one, though nobody asks after it. */
  @Test
  void dyingRecessivesAreRejectedByThemselves() {
    TraitModel lethal = EDGE.withLethal(Pattern.read(List.of(A), "aa"));
    SelfedLine line = SelfedLine.of(F2.withLosses(lethal));

    // Of the F2 that live 2/3 are Aa, of the F3 that live 2/5.
    assertThat(line.chance(0, carrying("Aa"))).isEqualTo(Fraction.of(2, 3));
    assertThat(line.chance(1, carrying("Aa"))).isEqualTo(Fraction.of(2, 5));
    assertThat(line.chance(2, carrying("Aa"))).isEqualTo(Fraction.of(2, 9));
  }

  /** A backcross is followed as well: Aa and aa one each, h = 1/4 after one selfing. */
  @Test
  void linesMayBeginWithABackcross() {
    Cross backcross = Cross.of(UNLINKED.genotype("Aa BB"), UNLINKED.genotype("aa BB"));

    assertThat(SelfedLine.of(backcross).chance(1, carrying("Aa"))).isEqualTo(Fraction.of(1, 4));
    assertThat(SelfedLine.of(backcross).chance(1, carrying("AA"))).isEqualTo(Fraction.of(1, 8));
  }

  @Test
  void whatCannotBeFollowedIsRefused() {
    SelfedLine line = SelfedLine.of(F2);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> line.keeping(Wish.any().andBreedingTrue(EDGE)))
        .withMessage(
            "whether a seedling breeds true cannot be seen before it is selfed; keep by what"
                + " shows");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> line.chance(-1, Wish.any()))
        .withMessage("-1 generations of selfing; ask for 0 to 200");
    assertThatIllegalArgumentException().isThrownBy(() -> line.chance(201, Wish.any()));
    SelfedLine none =
        SelfedLine.of(Cross.selfing(UNLINKED.genotype("AA BB")))
            .keeping(Wish.showing(EDGE, "green"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> none.chance(1, Wish.showing(EDGE, "red")))
        .withMessage("no seedling of the cross can be kept to be selfed");
  }
}

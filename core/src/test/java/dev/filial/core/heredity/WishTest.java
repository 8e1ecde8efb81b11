package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.number.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The plant that is wanted. */
class WishTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final Locus C = Locus.of("spine", "C", "c");
  private static final Genome GENOME = Genome.unlinked(A, B, C);
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel HAIR = TraitModel.dominant("hair", B, List.of("long", "none"));
  private static final TraitModel SPINE =
      TraitModel.intermediate("spine", C, List.of("long", "middling", "short"));
  private static final Cross F2 = Cross.selfing(GENOME.genotype("Aa Bb Cc"));

  private static List<Pattern> patterns(String text) {
    return Pattern.read(GENOME.loci(), text);
  }

  @Test
  void wishesOfUnlinkedGenesMultiply() {
    Wish wish = Wish.showing(EDGE, "green").andShowing(HAIR, "long").andShowing(SPINE, "middling");

    assertThat(F2.chance(wish)).isEqualTo(Fraction.of(3, 32));
    assertThat(wish.text()).isEqualTo("edge green, hair long, spine middling");
  }

  @Test
  void anyOfSeveralStatesWillDo() {
    Wish wish = Wish.showing(SPINE, "middling", "short");

    assertThat(F2.chance(wish)).isEqualTo(Fraction.of(3, 4));
    assertThat(F2.chance(wish.andShowing(SPINE, "long", "short"))).isEqualTo(Fraction.of(1, 4));
    assertThat(wish.text()).isEqualTo("spine middling or short");
  }

  @Test
  void allelesMayBeWishedForThoughTheyDoNotShow() {
    Wish hidden = Wish.showing(EDGE, "red").andCarrying(patterns("Aa"));

    assertThat(F2.chance(hidden)).isEqualTo(Fraction.HALF);
    assertThat(F2.chance(hidden.andCarrying(patterns("bb C_")))).isEqualTo(Fraction.of(3, 32));
    assertThat(hidden.text()).isEqualTo("edge red, Aa");
  }

  @Test
  void aWishThatContradictsItselfHasNoChance() {
    assertThat(F2.chance(Wish.showing(EDGE, "green").andCarrying(patterns("AA"))))
        .isEqualTo(Fraction.ZERO);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Wish.showing(EDGE, "red").andShowing(EDGE, "green"))
        .withMessage("a plant cannot show red and green of edge at once");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Wish.showing(EDGE))
        .withMessage("say which state of edge is wanted");
    assertThatIllegalArgumentException().isThrownBy(() -> Wish.any().andBreedingTrue(EDGE, "blue"));
  }

  @Test
  void anyPlantIsCertain() {
    assertThat(F2.chance(Wish.any())).isEqualTo(Fraction.ONE);
    assertThat(Wish.any().text()).isEqualTo("any");
  }

  /** Two tables on one gene are read together: red and carrying a is Aa. */
  @Test
  void tablesOfOneGeneAreReadTogether() {
    TraitModel leaf = TraitModel.intermediate("leaf", A, List.of("dark", "middling", "pale"));

    assertThat(F2.chance(Wish.showing(EDGE, "red").andShowing(leaf, "middling")))
        .isEqualTo(Fraction.HALF);
    assertThat(F2.chance(Wish.showing(EDGE, "green").andShowing(leaf, "dark")))
        .isEqualTo(Fraction.ZERO);
  }

  /** 1/4 dies: of those that live 2/3 are Aa, and of these 1/4 is bb. */
  @Test
  void aWishIsForPlantsThatLive() {
    TraitModel lethal = EDGE.withLethal(patterns("AA"));

    assertThat(F2.chance(Wish.showing(lethal, "red").andShowing(HAIR, "none")))
        .isEqualTo(Fraction.of(1, 6));
  }

  /** The three kinds of true-breeding, by hand: 1/4 · 1/2 · 1/4. */
  @Test
  void showingCarryingAndBreedingTrueTogether() {
    Wish wish =
        Wish.any()
            .andBreedingTrue(EDGE, "red")
            .andCarrying(patterns("Bb"))
            .andShowing(SPINE, "short");

    assertThat(F2.chance(wish)).isEqualTo(Fraction.of(1, 32));
  }
}

package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.TraitModel.Row;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The ratios of the textbooks; organisms and authors from memory, ratios by counting sixteenths.
 */
class GeneInteractionTest {

  private static final Locus A = Locus.of("first", "A", "a");
  private static final Locus B = Locus.of("second", "B", "b");
  private static final Genome UNLINKED = Genome.unlinked(A, B);
  private static final Cross F2 = Cross.selfing(UNLINKED.genotype("Aa Bb"));

  private static List<String> states(Interaction interaction) {
    List<String> states = new ArrayList<>();
    for (int i = 1; i <= interaction.states(); i++) {
      states.add("state " + i);
    }
    return states;
  }

  /**
   * 9:7 sweet pea (Bateson and Punnett), 15:1 shepherd's purse (Shull 1914), 12:3:1 and 9:6:1
   * squash (Sinnott), 13:3 fowl (Bateson and Punnett), 9:3:4 mice (Cuénot).
   */
  @ParameterizedTest
  @EnumSource(Interaction.class)
  void eachInteractionThrowsTheRatioItIsNamedAfter(Interaction interaction) {
    TraitModel model = TraitModel.interaction("trait", interaction, A, B, states(interaction));

    assertThat(F2.odds(model).ratio()).contains(interaction.ratio());
    assertThat(Interaction.ofRatio(" " + interaction.ratio() + " ")).contains(interaction);
    assertThat(interaction.words()).isNotBlank();
  }

  /** By the double recessive each of the four kinds is one of four. */
  @ParameterizedTest
  @CsvSource({
    "COMPLEMENTARY, 1:3",
    "DUPLICATE, 3:1",
    "DOMINANT_EPISTASIS, 2:1:1",
    "RECESSIVE_EPISTASIS, 1:1:2",
    "INHIBITION, 3:1",
    "CUMULATIVE, 1:2:1"
  })
  void testCrossesOfInteractions(Interaction interaction, String ratio) {
    TraitModel model = TraitModel.interaction("trait", interaction, A, B, states(interaction));

    assertThat(Cross.of(UNLINKED.genotype("Aa Bb"), UNLINKED.genotype("aa bb")).odds(model).ratio())
        .contains(ratio);
  }

  @Test
  void anInteractionNeedsAStateForEachClass() {
    assertThat(Interaction.ofRatio("10:6")).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                TraitModel.interaction(
                    "flower", Interaction.RECESSIVE_EPISTASIS, A, B, List.of("red", "white")))
        .withMessage("9:3:4 has 3 classes, and 2 states were given");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                TraitModel.interaction(
                    "flower",
                    Interaction.COMPLEMENTARY,
                    Locus.cytoplasmic("plastid", "G", "W"),
                    B,
                    List.of("red", "white")))
        .withMessage("the two genes of 9:7 lie on chromosomes");
  }

  /** Peas, form by colour: Mendel 1866. */
  @Test
  void twoGenesSegregateNineToThreeToThreeToOne() {
    TraitModel form = TraitModel.dominant("form", A, List.of("round", "wrinkled"));
    TraitModel colour = TraitModel.dominant("colour", B, List.of("yellow", "green"));

    Odds odds = F2.odds(form, colour);

    assertThat(odds.ratio()).contains("9:3:3:1");
    assertThat(odds.traits()).containsExactly("form", "colour");
    assertThat(odds.chanceOf("wrinkled", "yellow")).isEqualTo(Fraction.of(3, 16));
    assertThat(F2.odds(colour, form).chanceOf("yellow", "wrinkled")).isEqualTo(Fraction.of(3, 16));
    assertThat(odds.lost()).isEqualTo(Fraction.ZERO);
    assertThat(odds.exact()).isTrue();
  }

  /** Snapdragon (Baur), four-o'clock (Correns). */
  @Test
  void incompleteDominanceIsOneToTwoToOne() {
    Genome genome = Genome.unlinked(A);
    TraitModel flower = TraitModel.intermediate("flower", A, List.of("red", "pink", "white"));

    assertThat(Cross.selfing(genome.genotype("Aa")).odds(flower).ratio()).contains("1:2:1");
    assertThat(Cross.of(genome.genotype("Aa"), genome.genotype("aa")).odds(flower).ratio())
        .contains("1:1");
    assertThat(Cross.selfing(genome.genotype("AA")).odds(flower).ratio()).isEmpty();
  }

  /** Yellow mice: Cuénot; Castle and Little 1910, Science 32:868-870. */
  @Test
  void lethalYellowIsTwoToOne() {
    Locus coat = Locus.of("coat", "Y", "y");
    Genome genome = Genome.unlinked(coat);
    TraitModel colour =
        TraitModel.dominant("colour", coat, List.of("yellow", "grey"))
            .withLethal(Pattern.read(List.of(coat), "YY"));
    Cross yellows = Cross.selfing(genome.genotype("Yy"));

    Odds odds = yellows.odds(colour);

    assertThat(odds.ratio()).contains("2:1");
    assertThat(odds.lost()).isEqualTo(Fraction.of(1, 4));
    assertThat(yellows.chance(Wish.showing(colour, "yellow"))).isEqualTo(Fraction.of(2, 3));
    assertThat(yellows.genotypes()).hasSize(3);
    assertThat(colour.touchesLife()).isTrue();
  }

  /** Two genes that kill independently: 3/4 · 3/4 live. */
  @Test
  void losesAtTwoGenesMultiply() {
    TraitModel first =
        TraitModel.dominant("one", A, List.of("yes", "no"))
            .withLethal(Pattern.read(List.of(A), "aa"));
    TraitModel second =
        TraitModel.dominant("other", B, List.of("yes", "no"))
            .withLethal(Pattern.read(List.of(B), "bb"));

    assertThat(F2.odds(first, second).lost()).isEqualTo(Fraction.of(7, 16));
    assertThat(F2.withLosses(second).odds(first).lost()).isEqualTo(Fraction.of(7, 16));
    Genotype recessive = UNLINKED.genotype("aa bb");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.selfing(recessive).odds(first))
        .withMessage("no seedling of this cross lives");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Cross.selfing(recessive).withLosses(first).chance(Wish.showing(first, "yes")))
        .withMessage("no seedling of this cross lives");
  }

  /** Half of the recessives live: 3/4 to 1/8, which is 6:1. */
  @Test
  void someOfAGenotypeMayLive() {
    TraitModel weak =
        new TraitModel(
            "leaf",
            List.of("green", "pale"),
            List.of(
                new Row(Pattern.read(List.of(A), "A_"), Outcome.of("green")),
                new Row(List.of(), Outcome.of("pale").withLives(Fraction.HALF))));

    assertThat(F2.odds(weak).ratio()).contains("6:1");
    assertThat(F2.odds(weak).lost()).isEqualTo(Fraction.of(1, 8));
  }

  /** Three quarters carry it, four of five of these show it: 3/5 to 2/5. */
  @Test
  void incompletePenetranceLowersTheShare() {
    TraitModel crest =
        TraitModel.dominant("crest", A, List.of("crested", "plain"))
            .withPenetrance("crested", Fraction.of(4, 5), "plain");

    assertThat(F2.odds(crest).ratio()).contains("3:2");
    TraitModel both =
        TraitModel.dominant("hair", B, List.of("long", "none"))
            .withPenetrance("long", Fraction.of(1, 3), "none");
    assertThat(F2.odds(crest, both).chanceOf("crested", "long")).isEqualTo(Fraction.of(3, 20));
  }

  /** Rabbits' coats: full, chinchilla, himalayan, albino; textbook, from memory. */
  @Test
  void anAlleleSeriesIsHiddenInItsOrder() {
    Locus coat = Locus.of("coat", "C", "cch", "ch", "c");
    Genome genome = Genome.unlinked(coat);
    TraitModel colour =
        TraitModel.dominant("colour", coat, List.of("full", "chinchilla", "himalayan", "albino"));

    Odds odds = Cross.of(genome.genotype("C/ch"), genome.genotype("cch/c")).odds(colour);

    assertThat(odds.ratio()).contains("2:1:1"); // C cch, C c; cch ch; ch c
    assertThat(odds.chanceOf("himalayan")).isEqualTo(Fraction.of(1, 4));
    assertThat(odds.chanceOf("albino")).isEqualTo(Fraction.ZERO);
  }

  /** Fisher 1936: ten seeds of a heterozygote all show the dominant. */
  @Test
  void tenSeedsMayHideAHeterozygote() {
    TraitModel form = TraitModel.dominant("form", A, List.of("round", "wrinkled"));
    double dominant = F2.odds(form).chanceOf("round").toDouble();

    assertThat(Math.pow(dominant, 10)).isCloseTo(0.0563135, within(1e-7));
  }

  @Test
  void aRatioOfLargeNumbersIsNotGiven() {
    TraitModel rare =
        TraitModel.dominant("crest", A, List.of("crested", "plain"))
            .withPenetrance("crested", Fraction.of(1, 10_007), "plain");

    assertThat(F2.odds(rare).ratio()).isEmpty();
    assertThat(F2.odds(rare).exact()).isTrue();
  }

  @Test
  void traitsAreNamedOnce() {
    TraitModel form = TraitModel.dominant("form", A, List.of("round", "wrinkled"));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> F2.odds(form, form))
        .withMessage("name the traits whose odds are asked, each once");
    assertThatIllegalArgumentException().isThrownBy(() -> F2.odds());
  }
}

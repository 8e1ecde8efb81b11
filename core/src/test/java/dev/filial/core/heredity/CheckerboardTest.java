package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.heredity.Checkerboard.Cell;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Punnett 1905, Mendelism: gametes down the side and along the top. */
class CheckerboardTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final Genome GENOME = Genome.unlinked(A, B);
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel HAIR = TraitModel.dominant("hair", B, List.of("long", "none"));

  @Test
  void sixteenCellsOfADihybrid() {
    Checkerboard board =
        Checkerboard.of(Cross.selfing(GENOME.genotype("Aa Bb")), List.of(EDGE, HAIR));

    assertThat(board.eggs())
        .extracting(Cross.GameteChance::text)
        .containsExactly("A B", "A b", "a B", "a b");
    assertThat(board.pollen()).isEqualTo(board.eggs());
    assertThat(board.cells()).hasSize(4).allSatisfy(row -> assertThat(row).hasSize(4));
    assertThat(board.at("A b", "a B"))
        .contains(new Cell("Aa Bb", Fraction.of(1, 16), List.of("red", "long")));
    assertThat(board.at("a b", "a b"))
        .contains(new Cell("aa bb", Fraction.of(1, 16), List.of("green", "none")));
    assertThat(board.at("A", "a b")).isEmpty();
    assertThat(board.genotypes())
        .hasSize(9)
        .containsEntry("Aa Bb", Fraction.of(1, 4))
        .containsEntry("AA bb", Fraction.of(1, 16));
  }

  @Test
  void aLethalGenotypeDiesAndAnUncertainOneShowsEither() {
    TraitModel coat =
        TraitModel.dominant("coat", A, List.of("yellow", "grey"))
            .withLethal(Pattern.read(List.of(A), "AA"))
            .withPenetrance("yellow", Fraction.of(9, 10), "grey");
    Checkerboard board =
        Checkerboard.of(Cross.selfing(Genome.unlinked(A).genotype("Aa")), List.of(coat));

    assertThat(board.at("A", "A").orElseThrow().shows()).containsExactly("dies");
    assertThat(board.at("A", "a").orElseThrow().shows()).containsExactly("yellow or grey");
    assertThat(board.at("a", "a").orElseThrow().shows()).containsExactly("grey");
  }

  @Test
  void linkedGenesAreWrittenTogetherAndWeighted() {
    Genome linked = Genome.of(LinkageGroup.of(A, Fraction.of(1, 10), B));
    Checkerboard board =
        Checkerboard.of(Cross.of(linked.genotype("AB/ab"), linked.genotype("ab/ab")), List.of());

    assertThat(board.eggs())
        .contains(new Cross.GameteChance("AB", Fraction.of(9, 20)))
        .contains(new Cross.GameteChance("Ab", Fraction.of(1, 20)));
    assertThat(board.genotypes())
        .isEqualTo(
            Map.of(
                "AB/ab", Fraction.of(9, 20),
                "ab/ab", Fraction.of(9, 20),
                "Ab/ab", Fraction.of(1, 20),
                "aB/ab", Fraction.of(1, 20)));
  }

  @Test
  void tetraploidsHaveOneToo() {
    Genome genome = Genome.unlinked(A);
    Parent duplex = Parent.of(genome.genotype("AAaa"), Meiosis.tetrasomic(Fraction.ZERO));
    Checkerboard board = Checkerboard.of(Cross.of(genome, duplex, duplex), List.of(EDGE));

    assertThat(board.at("Aa", "Aa").orElseThrow().chance()).isEqualTo(Fraction.of(16, 36));
    assertThat(board.at("aa", "aa").orElseThrow().shows()).containsExactly("green");
  }

  @Test
  void aBoardThatNobodyReadsIsRefused() {
    Genome five =
        Genome.unlinked(
            A, B, Locus.of("c", "C", "c"), Locus.of("d", "D", "d"), Locus.of("e", "E", "e"));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> Checkerboard.of(Cross.selfing(five.genotype("AaBbCcDdEe")), List.of()))
        .withMessage(
            "a parent has 32 kinds of gametes; a checkerboard has at most 16 rows and columns. Ask"
                + " for one or two genes");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Checkerboard.of(
                    Cross.selfing(GENOME.genotype("Aa Bb")),
                    List.of(
                        new TraitModel(
                            "edge",
                            List.of("red"),
                            List.of(
                                new TraitModel.Row(
                                    Pattern.read(List.of(A), "A_"), Outcome.of("red")))))))
        .withMessageContaining("does not say what aa shows");
  }
}

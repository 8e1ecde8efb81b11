package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.number.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Gametes with both chromosome sets of a diploid, and plants doubled on purpose. What is kept after
 * first-division restitution is 1 − p/2 and after second p, p being how often the locus segregates
 * at the second division (textbook; derived: without an exchange between locus and centromere each
 * homologue has two like chromatids).
 */
class UnreducedGametesTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Genome GENOME = Genome.unlinked(A);
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));

  private static Parent unreduced(Restitution restitution, String kept) {
    return Parent.of(
        GENOME.genotype("Aa"), new Meiosis.Unreduced(restitution, Fraction.parse(kept)));
  }

  @ParameterizedTest
  @CsvSource({
    "FIRST_DIVISION, 1, 0, 1",
    "FIRST_DIVISION, 3/4, 1/8, 3/4",
    "FIRST_DIVISION, 1/2, 1/4, 1/2",
    "SECOND_DIVISION, 0, 1/2, 0",
    "SECOND_DIVISION, 2/3, 1/6, 2/3",
    "SECOND_DIVISION, 1, 0, 1"
  })
  void heterozygosityIsKeptAsStated(
      Restitution restitution, String kept, String eachHomozygote, String heterozygote) {
    Cross cross = Cross.of(GENOME, unreduced(restitution, kept), Parent.of(GENOME.genotype("aa")));

    for (Cross.GameteChance egg : cross.eggs()) {
      assertThat(egg.chance())
          .isEqualTo(Fraction.parse(egg.text().equals("Aa") ? heterozygote : eachHomozygote));
    }
    assertThat(cross.ploidy()).isEqualTo(3);
    assertThat(cross.odds(EDGE).chanceOf("green")).isEqualTo(Fraction.parse(eachHomozygote));
  }

  @Test
  void twoUnreducedGametesGiveATetraploid() {
    Parent first = unreduced(Restitution.FIRST_DIVISION, "1");
    Cross cross = Cross.of(GENOME, first, first);

    assertThat(cross.ploidy()).isEqualTo(4);
    assertThat(cross.genotypes())
        .extracting(each -> each.genotype().text())
        .containsExactly("AAaa");
    Parent second = unreduced(Restitution.SECOND_DIVISION, "0");
    assertThat(Cross.of(GENOME, second, second).odds(EDGE).ratio()).contains("3:1");
  }

  @Test
  void firstDivisionKeepsAtLeastHalf() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Meiosis.Unreduced(Restitution.FIRST_DIVISION, Fraction.of(1, 3)))
        .withMessage(
            "heterozygosity kept with a chance of 1/3 after first-division restitution; that keeps"
                + " it at least half of the time");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Meiosis.Unreduced(Restitution.SECOND_DIVISION, Fraction.of(4, 3)))
        .withMessage("heterozygosity kept with a chance of 4/3; it lies between 0 and 1");
  }

  @Test
  void tetraploidsUnreducedGametesAreNotReckoned() {
    Parent tetraploid =
        Parent.of(
            GENOME.genotype("AAaa"),
            new Meiosis.Unreduced(Restitution.FIRST_DIVISION, Fraction.ONE));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.of(GENOME, tetraploid, Parent.of(GENOME.genotype("aa"))))
        .withMessage(
            "an unreduced gamete is reckoned for plants of 2 chromosome sets, and this one has 4");
  }

  /** Colchicine on Aa gives AAaa, and that throws 35:1, not 3:1. */
  @Test
  void aDoubledHeterozygoteIsADuplex() {
    Genotype doubled = GENOME.genotype("Aa").doubled();
    Parent plant = Parent.of(doubled, Meiosis.tetrasomic(Fraction.ZERO));

    assertThat(doubled.text()).isEqualTo("AAaa");
    assertThat(doubled.ploidy()).isEqualTo(4);
    assertThat(Cross.of(GENOME, plant, plant).odds(EDGE).ratio()).contains("35:1");
  }

  /** The next generation of a line would have twice the sets. */
  @Test
  void aLineIsNotSelfedThroughUnreducedGametes() {
    SelfedLine line = SelfedLine.of(Cross.selfing(GENOME.genotype("Aa")));

    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                line.withMeiosis(new Meiosis.Unreduced(Restitution.SECOND_DIVISION, Fraction.ZERO)))
        .withMessageStartingWith("selfed through such gametes a line does not keep");
  }
}

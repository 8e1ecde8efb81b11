package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.heredity.TraitModel.Row;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the seed parent alone hands on. */
class CytoplasmTest {

  private static final Locus CYTOPLASM = Locus.cytoplasmic("cytoplasm", "N", "S");
  private static final Locus RESTORER = Locus.of("restorer", "R", "r");
  private static final Genome GENOME = Genome.unlinked(CYTOPLASM, RESTORER);

  private static final TraitModel KIND =
      TraitModel.dominant("cytoplasm", CYTOPLASM, List.of("normal", "sterile"));

  /** Textbook cytoplasmic male sterility: only S without a restorer has no good pollen. */
  private static final TraitModel POLLEN =
      new TraitModel(
          "pollen",
          List.of("good", "none"),
          List.of(
              new Row(Pattern.read(GENOME.loci(), "N"), Outcome.of("good")),
              new Row(Pattern.read(GENOME.loci(), "S R_"), Outcome.of("good")),
              new Row(Pattern.read(GENOME.loci(), "S rr"), Outcome.of("none"))));

  private static Cross cross(String seed, String pollen) {
    return Cross.of(GENOME.genotype(seed), GENOME.genotype(pollen));
  }

  @Test
  void allSeedlingsTakeAfterTheSeedParent() {
    assertThat(cross("S rr", "N rr").odds(KIND).chanceOf("sterile")).isEqualTo(Fraction.ONE);
    assertThat(cross("N rr", "S rr").odds(KIND).chanceOf("normal")).isEqualTo(Fraction.ONE);
  }

  /** The maintainer keeps the sterile line sterile. */
  @Test
  void aSterilePlantByItsMaintainerIsSterile() {
    assertThat(cross("S rr", "N rr").odds(POLLEN).chanceOf("none")).isEqualTo(Fraction.ONE);
  }

  /** The restorer makes it good, and its offspring segregate 3:1. */
  @Test
  void aRestoredHybridSegregatesThreeToOne() {
    assertThat(cross("S rr", "N RR").odds(POLLEN).chanceOf("good")).isEqualTo(Fraction.ONE);
    assertThat(cross("S Rr", "S Rr").odds(POLLEN).ratio()).contains("3:1");
    assertThat(cross("S rr", "S Rr").odds(POLLEN).ratio()).contains("1:1");
  }

  @Test
  void inNormalCytoplasmTheRestorerDoesNotShow() {
    assertThat(cross("N Rr", "S Rr").odds(POLLEN).chanceOf("good")).isEqualTo(Fraction.ONE);
  }

  @Test
  void theGametesSayWhoBringsTheCytoplasm() {
    Cross cross = cross("S Rr", "N rr");

    assertThat(cross.eggs()).extracting(Cross.GameteChance::text).containsExactly("S R", "S r");
    assertThat(cross.pollenGrains()).extracting(Cross.GameteChance::text).containsExactly("r");
    assertThat(cross.genotypes())
        .extracting(each -> each.genotype().text())
        .containsExactly("S Rr", "S rr");
  }

  @Test
  void selfingKeepsTheCytoplasm() {
    SelfedLine line = SelfedLine.of(cross("S Rr", "S Rr"));

    assertThat(line.chance(3, Wish.showing(KIND, "sterile"))).isEqualTo(Fraction.ONE);
    assertThat(line.chance(1, Wish.showing(POLLEN, "none"))).isEqualTo(Fraction.of(3, 8));
  }

  @Test
  void cytoplasmOfAnUnknownSeedParentIsAsFrequentAsInItsTaxon() {
    Parent taxon =
        new Parent.OfTaxon(
            Map.of(
                "cytoplasm", Map.of("N", Fraction.of(2, 3), "S", Fraction.of(1, 3)),
                "restorer", Map.of("r", Fraction.ONE)));
    Parent plant = Parent.of(GENOME.genotype("N rr"));

    assertThat(Cross.of(GENOME, taxon, plant).odds(POLLEN).ratio()).contains("2:1");
    assertThat(Cross.of(GENOME, plant, taxon).odds(POLLEN).chanceOf("good"))
        .isEqualTo(Fraction.ONE);
  }

  @Test
  void polyploidsHaveOneCytoplasmToo() {
    Genotype doubled = GENOME.genotype("S Rr").doubled();

    assertThat(doubled.text()).isEqualTo("S RRrr");
    Parent plant = Parent.of(doubled, Meiosis.tetrasomic(Fraction.ZERO));
    assertThat(Cross.of(GENOME, plant, plant).odds(POLLEN).ratio()).contains("35:1");
  }

  @Test
  void theCytoplasmDoesNotSegregate() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Distortion.share(CYTOPLASM, Distortion.Side.BOTH, "N", Fraction.of(2, 3)))
        .withMessage("the gene cytoplasm sits in the cytoplasm and does not segregate");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SelfIncompatibility.of(CYTOPLASM))
        .withMessage("the S locus cytoplasm lies on a chromosome, not in the cytoplasm");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                TraitModel.intermediate(
                    "plastid", CYTOPLASM, List.of("green", "striped", "white")));
  }
}

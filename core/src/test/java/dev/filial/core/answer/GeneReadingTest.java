package dev.filial.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.heredity.Interaction;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.TraitDeclared;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What growers write of genes is read with the genes that there are. */
class GeneReadingTest {

  private final InventedBench bench = new InventedBench();

  private void gene(String name, String... alleles) {
    bench.say(LocusDeclared.of(name, List.of(alleles)));
  }

  private void trait(String name, String... states) {
    bench.say(new TraitDeclared(name, List.of(states), null, null, null, null));
  }

  private List<String> meant(String... texts) {
    return GeneReading.in(bench.store).meant(Arrays.asList(texts));
  }

  private TableReading table(String trait) {
    return TableReading.of(bench.store, trait);
  }

  private LocusDeclared called(String name) {
    return GeneReading.in(bench.store).called(name).orElseThrow();
  }

  private static List<String> rows(TraitModel model) {
    return ModelDeclared.of(model, null).rows().stream()
        .map(row -> row.genes() + " " + row.shows() + (row.lost().isZero() ? "" : row.lost()))
        .toList();
  }

  @Test
  void genesAreFoundByTheirLettersInTheOrderInWhichTheyAreWritten() {
    gene("edge", "R", "r");
    gene("wax", "W", "w");
    gene("S", "S1", "S2", "S12");

    assertThat(meant("ww Rr")).containsExactly("wax", "edge");
    assertThat(meant("RW/rw")).containsExactly("edge", "wax");
    assertThat(meant("R_ ww", "*")).containsExactly("edge", "wax");
    assertThat(meant("S1/S12")).containsExactly("S");
    assertThat(meant("RRrr|WwWw")).containsExactly("edge", "wax");
    assertThat(meant("*")).isEmpty();
  }

  @Test
  void lettersThatNoGeneHasAreNamedWithThoseThereAre() {
    assertThatThrownBy(() -> meant("Qq"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("\"Qq\" is not made of alleles of declared genes; declare the gene first");
    gene("edge", "R", "r");
    assertThatThrownBy(() -> meant("Rr Qq"))
        .hasMessage(
            "\"Qq\" in \"Rr Qq\" is not made of alleles of declared genes; there are edge (R, r), or"
                + " declare the gene first");
  }

  @Test
  void ofTwoGenesWithOneLetterTheOneIsMeantThatTheOthersGoWith() {
    gene("edge", "R", "r");
    gene("rot", "R", "h");

    assertThat(meant("Rr")).containsExactly("edge");
    assertThat(meant("Rh")).containsExactly("rot");
    assertThatThrownBy(() -> meant("R_"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage(
            "\"R_\" may be of the gene edge or rot, which have alleles of the same symbol; name the"
                + " genes that are meant");
    assertThat(meant("R_", "rr")).containsExactly("edge");
  }

  @Test
  void manyGenesWithTheSameLettersAreTooMany() {
    for (char name = 'a'; name <= 'p'; name++) {
      gene("gene " + name, "A", "B", "C", "D", "E", "F", "" + name);
    }

    assertThatThrownBy(() -> meant("AB"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("name the genes that are meant");
  }

  @Test
  void aNameCountsAsItIsOrInAnyCaseWhereItIsTheOnlyOne() {
    gene("edge", "R", "r");
    gene("wax", "W", "w");
    gene("WAX", "V", "v");

    assertThat(called(" Edge ").alleles()).containsExactly("R", "r");
    assertThat(called("wax").alleles()).containsExactly("W", "w");
    assertThat(GeneReading.in(bench.store).called("Wax")).isEmpty();
  }

  @Test
  void aTableIsReadRowByRow() {
    gene("edge", "R", "r");
    gene("wax", "W", "w");
    trait("rim", "Red", "green");

    TraitModel model =
        table("RIM")
            .withDying(List.of("WW"))
            .rows(
                List.of(
                    ModelDeclared.Row.of("R_", "red"),
                    new ModelDeclared.Row("*", Map.of("GREEN", Fraction.ONE), Fraction.HALF)));

    assertThat(rows(model)).containsExactly("WW {}1", "R_ {Red=1}", "* {green=1}1/2");
    assertThat(model.loci()).extracting(locus -> locus.name()).containsExactly("wax", "edge");
  }

  @Test
  void dominanceAndItsLikeAreShortForATable() {
    gene("edge", "R", "r");
    gene("wax", "W", "w");
    trait("rim", "red", "green");
    trait("flower", "red", "pink", "white");

    assertThat(rows(table("rim").dominant(called("edge"))))
        .containsExactly("R_ {red=1}", "rr {green=1}");
    assertThat(
            rows(
                table("rim")
                    .withStates(List.of("Green", "red"))
                    .withDying(List.of("ww RR"))
                    .dominant(called("edge"))))
        .containsExactly("ww RR {}1", "R_ {green=1}", "rr {red=1}");
    assertThat(rows(table("flower").intermediate(called("edge"))))
        .containsExactly("RR {red=1}", "Rr {pink=1}", "rr {white=1}");
    assertThat(
            rows(
                table("rim").interaction(Interaction.COMPLEMENTARY, called("edge"), called("wax"))))
        .containsExactly("R_ W_ {red=1}", "* {green=1}");
    assertThatThrownBy(() -> table("flower").dominant(called("edge")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("3 states (red, pink, white) for the gene edge");
  }

  @Test
  void genesThatWereNamedAreMeantWhateverElseHasTheirLetters() {
    gene("edge", "R", "r");
    gene("rot", "R", "h");
    trait("rim", "red", "green");

    TraitModel model =
        table("rim")
            .withGenes(List.of("rot"))
            .rows(List.of(ModelDeclared.Row.of("R_", "red"), ModelDeclared.Row.of("*", "green")));

    assertThat(model.loci()).extracting(locus -> locus.name()).containsExactly("rot");
    assertThatThrownBy(() -> table("rim").withGenes(List.of("rust")).rows(List.of()))
        .hasMessage("no gene is called \"rust\"; declare it first");
  }

  @Test
  void aTableIsOfATraitWithStates() {
    bench.say(new TraitDeclared("width", List.of(), BigDecimal.ONE, null, "mm", null));

    assertThatThrownBy(() -> table("width")).hasMessageContaining("is scored or measured");
    assertThatThrownBy(() -> table("rim"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("no trait is called \"rim\"; the traits are width, or declare it first");
  }

  @Test
  void aTableOutlivesBeingWrittenDown() {
    gene("edge", "R", "r");
    trait("rim", "red", "green");
    TraitModel model =
        table("rim")
            .withDying(List.of("RR"))
            .dominant(called("edge"))
            .withPenetrance("red", Fraction.of(4, 5), "green");

    ModelDeclared said = ModelDeclared.of(model, null);

    assertThat(said.toModel(List.of(called("edge").toLocus()), List.of("red", "green")))
        .isEqualTo(model);
  }
}

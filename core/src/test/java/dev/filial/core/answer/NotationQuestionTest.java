package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static dev.filial.core.answer.InventedBench.hybrid;
import static dev.filial.core.answer.InventedBench.weighted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.answer.NotationQuestion.Formula;
import dev.filial.core.answer.NotationQuestion.Sources;
import dev.filial.core.name.Code;
import dev.filial.core.name.FormulaStyle;
import dev.filial.core.name.Notation;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Named;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.RegisterRefusal;
import java.util.Map;
import org.junit.jupiter.api.Test;

class NotationQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(Determination.of(LAUI), "KB 12");
  private final Code agavoides = bench.plant(AGAVOIDES);
  private final Code f1 = bench.seedling(bench.cross(laui, agavoides));

  private String notation(Code code, Sources sources, Notation.Style style) {
    return NotationQuestion.of(bench.store).notation(code, sources, style).notation();
  }

  private String names(Code code) {
    return notation(code, Sources.NAMES, Notation.Style.PLAIN);
  }

  private Formula formula(Code code, FormulaStyle style) {
    return NotationQuestion.of(bench.store).formula(code, style);
  }

  @Test
  void sourcesAreCalledByNameOrTaxonOrCode() {
    bench.say(new Named(agavoides, "Anna", null));
    Code next = bench.cross(f1, bench.plant("Echeveria agavoides 'Rotrand'"));

    assertThat(names(next)).isEqualTo("laui KB 12/Anna//agavoides 'Rotrand'");
    assertThat(notation(next, Sources.TAXA, Notation.Style.PLAIN))
        .isEqualTo("laui/agavoides//agavoides");
    assertThat(notation(f1, Sources.CODES, Notation.Style.PLAIN))
        .isEqualTo(laui.text() + "/" + agavoides.text());
  }

  @Test
  void backcrossesAreAbbreviatedWhenAsked() {
    Code bc2 = bench.cross(bench.seedling(bench.cross(f1, agavoides)), agavoides);

    assertThat(notation(bc2, Sources.TAXA, Notation.Style.PLAIN))
        .isEqualTo("laui/agavoides//agavoides/3/agavoides");
    assertThat(notation(bc2, Sources.TAXA, Notation.Style.BACKCROSS_NUMBER_FIRST))
        .isEqualTo("laui/3*agavoides");
  }

  @Test
  void twoTaxaShortenedAlikeStandInFull() {
    Code other = bench.plant("Graptopetalum laui");

    assertThat(notation(bench.cross(laui, other), Sources.TAXA, Notation.Style.PLAIN))
        .isEqualTo("Echeveria laui/Graptopetalum laui");
  }

  @Test
  void twoPlantsOfOneNameAreToldApartByTheirCodes() {
    Code one = bench.plant(Determination.of(LAUI), null, "Rosa");
    Code other = bench.plant(Determination.of(AGAVOIDES), null, "Rosa");

    assertThat(names(bench.cross(one, other)))
        .as("one of them keeps no name that the other has too")
        .doesNotContain("Rosa");
  }

  @Test
  void aHybridOfPartlyKnownMakeUpIsNotCalledByItsOneKnownTaxon() {
    Code half = bench.plant(hybrid(null, COLORATA, "1/2"));

    assertThat(notation(bench.cross(half, laui), Sources.TAXA, Notation.Style.PLAIN))
        .isEqualTo(half.text() + "/laui");
  }

  @Test
  void twoUnknownPollenParentsAreTwoSources() {
    Pollen bees = new Pollen.Open(weighted(), Fraction.ONE);
    Code once = bench.seedling(bench.pollination(laui, bees).made());
    Code twice = bench.pollination(once, bees).made();

    assertThat(notation(twice, Sources.TAXA, Notation.Style.BACKCROSS_NUMBER_FIRST))
        .isEqualTo("laui/unknown//unknown 2");
  }

  @Test
  void aPlantOfSeveralPossibleOriginsStandsAsASourceAndThatIsSaid() {
    Code found = bench.found("0", laui, 1, agavoides, 1);

    NotationQuestion.Written written =
        NotationQuestion.of(bench.store).notation(found, Sources.TAXA, Notation.Style.PLAIN);

    assertThat(written.notation()).isEqualTo(found.text());
    assertThat(written.notes()).singleElement().asString().contains("in several ways");
  }

  @Test
  void theFormulaHasTheSeedParentFirstAndSaysSo() {
    Code other = bench.cross(agavoides, laui);

    assertThat(formula(f1, FormulaStyle.PLAIN))
        .extracting(Formula::formula, Formula::order)
        .containsExactly("Echeveria laui × E. agavoides", "seed parent first");
    assertThat(formula(other, FormulaStyle.PLAIN).formula())
        .isEqualTo("Echeveria agavoides × E. laui");
    assertThat(formula(f1, FormulaStyle.PLAIN.inAlphabeticalOrder()))
        .extracting(Formula::formula, Formula::order)
        .containsExactly("Echeveria agavoides × E. laui", "alphabetical");
    assertThat(formula(f1, FormulaStyle.PLAIN.inAscii()).formula())
        .isEqualTo("Echeveria laui x E. agavoides");
  }

  @Test
  void signsAreForACrossOfTwoPlantsOfOneTaxonEach() {
    assertThat(formula(bench.offset(f1, false), FormulaStyle.PLAIN.withSexSigns()).formula())
        .isEqualTo("Echeveria laui ♀ × E. agavoides ♂");
    assertThatThrownBy(() -> formula(bench.cross(f1, laui), FormulaStyle.PLAIN.withSexSigns()))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("leave them out");
  }

  @Test
  void anOffsetAndAPureLineHaveAFormulaOfOneName() {
    assertThat(formula(bench.offset(laui, false), FormulaStyle.PLAIN))
        .extracting(Formula::formula, Formula::order)
        .containsExactly("Echeveria laui", "no hybrid");
  }

  @Test
  void whatTheFormulaLeavesOpenIsSaid() {
    Code bought = bench.plant(hybrid("F1", COLORATA, "1/2", LAUI, "1/2"));
    Code open =
        bench.seedling(bench.pollination(bought, new Pollen.Open(weighted(), Fraction.ONE)).made());

    assertThat(formula(open, FormulaStyle.PLAIN).notes())
        .containsExactly(
            bought.text() + " came as a hybrid; which of its taxa bore the seed is not known",
            "there are unknown plants or shares in it, which the formula cannot name");
    assertThatThrownBy(
            () ->
                formula(
                    bench.plant(new Determination(null, null, Map.of(), null, null)),
                    FormulaStyle.PLAIN))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("nothing is known of the taxa");
  }
}

package dev.filial.core.register;

import static dev.filial.core.register.Bench.amended;
import static dev.filial.core.register.Bench.selfIncompatible;
import static dev.filial.core.register.Bench.struck;
import static dev.filial.core.register.Bench.taxon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TaxaTest {

  private final Bench bench = new Bench();

  private static TaxonRenamed renamed(String from, String to) {
    return new TaxonRenamed(from, to, null);
  }

  private static TaxonDeclared within(String name, String within) {
    return new TaxonDeclared(name, List.of(), within, null, null, false, Map.of(), false, null);
  }

  private String accepted(String name) {
    return bench.book.accepted(name).name();
  }

  @Test
  void aSpeciesUnderTwoNamesIsOneTaxon() {
    bench.say(
        new TaxonDeclared(
            "Echeveria prima",
            List.of("Echeveria altera"),
            null,
            4,
            null,
            false,
            Map.of(),
            false,
            null));
    assertThat(accepted("Echeveria altera")).isEqualTo("Echeveria prima");
    assertThat(bench.book.accepted("Echeveria  altera").ploidy()).isEqualTo(4);
    assertThat(bench.book.isAllDiploid()).isFalse();
  }

  @Test
  void whatWasDeclaredUnderAnOldNameHoldsOverTwoRenamings() {
    bench.say(selfIncompatible("Echeveria prima"));
    bench.say(renamed("Echeveria prima", "Echeveria altera"));
    long second = bench.say(renamed("Echeveria altera", "Echeveria tertia"));
    for (String name : List.of("Echeveria prima", "Echeveria altera", "Echeveria tertia")) {
      assertThat(accepted(name)).isEqualTo("Echeveria tertia");
      assertThat(bench.book.accepted(name).isSelfIncompatible()).isTrue();
    }
    bench.say(struck(second));
    assertThat(accepted("Echeveria prima")).isEqualTo("Echeveria altera");
    assertThat(bench.book.accepted("Echeveria tertia").isSelfIncompatible()).isFalse();
  }

  @Test
  void aNameThatWasMovedOnTakesItsDeclarationWithIt() {
    bench.say(selfIncompatible("Echeveria prima"));
    bench.say(renamed("Echeveria prima", "Echeveria altera"));
    bench.say(renamed("Echeveria prima", "Echeveria tertia"));
    assertThat(bench.book.accepted("Echeveria altera").isSelfIncompatible()).isFalse();
    assertThat(bench.book.accepted("Echeveria tertia").isSelfIncompatible()).isTrue();
  }

  @Test
  void aRenamingBackHolds() {
    bench.say(renamed("Echeveria prima", "Echeveria altera"));
    bench.say(renamed("Echeveria altera", "Echeveria prima"));
    assertThat(accepted("Echeveria altera")).isEqualTo("Echeveria prima");
    assertThat(accepted("Echeveria prima")).isEqualTo("Echeveria prima");
  }

  @Test
  void namesDoNotLeadInACircle() {
    bench.say(renamed("Echeveria prima", "Echeveria altera"));
    bench.say(renamed("Echeveria altera", "Echeveria tertia"));
    assertThat(
            bench.refusal(
                new TaxonDeclared(
                    "Echeveria prima",
                    List.of("Echeveria tertia"),
                    null,
                    null,
                    null,
                    false,
                    Map.of(),
                    false,
                    null)))
        .hasMessageContaining("would be read as itself in a circle; strike the entry that read it");
  }

  @Test
  void aTaxonDoesNotCountIntoItself() {
    bench.say(within("Echeveria prima", "Echeveria altera"));
    assertThat(bench.refusal(within("Echeveria altera", "Echeveria prima")))
        .hasMessage(
            "Echeveria altera would count into itself through Echeveria altera; mend the taxon it"
                + " counts into");
    assertThat(bench.refusal(renamed("Echeveria altera", "Echeveria prima")))
        .hasMessageContaining("would count into itself through Echeveria prima");
    assertThat(bench.refusal(renamed("Echeveria prima", "Echeveria altera")))
        .hasMessageContaining("would count into itself");
    assertThatThrownBy(() -> within("Echeveria prima", "Echeveria prima"))
        .hasMessage("\"Echeveria prima\" cannot count into itself");
  }

  @Test
  void aTaxonIsDeclaredOnce() {
    bench.say(taxon("Echeveria prima", 2));
    RegisterRefusal refusal = bench.refusal(taxon("Echeveria prima", 4));
    assertThat(refusal).hasMessage("Echeveria prima was declared in entry 2; amend that entry");
    assertThat(refusal.entries()).containsExactly(2L);
    bench.say(amended(2, taxon("Echeveria prima", 4)));
    assertThat(bench.book.accepted("Echeveria prima").ploidy()).isEqualTo(4);
  }

  @Test
  void aDeclarationThatIsNotReadIsSaidToBe() {
    bench.say(taxon("Echeveria prima", 2));
    bench.say(renamed("Echeveria altera", "Echeveria prima"));
    assertThat(bench.warnings(taxon("Echeveria altera", 4)))
        .containsExactly(
            "Echeveria altera is read as Echeveria prima, so what was declared of Echeveria prima"
                + " holds and not this");
  }

  @Test
  void aTraitIsDeclaredOnceWhateverItsCapitals() {
    bench.say(Bench.edge());
    assertThat(bench.refusal(new TraitDeclared("Edge", List.of("a", "b"), null, null, null, null)))
        .hasMessage("the trait Edge was declared in entry 2; amend that entry");
    bench.say(struck(2));
    assertThat(bench.book.traits()).isEmpty();
  }

  @Test
  void aNameThatCannotBeReadIsRefusedWhereItIsWritten() {
    assertThatThrownBy(() -> Determination.of("???")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> taxon("laui", null)).isInstanceOf(IllegalArgumentException.class);
  }
}

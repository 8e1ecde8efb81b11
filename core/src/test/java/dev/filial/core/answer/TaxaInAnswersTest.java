package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static dev.filial.core.answer.InventedBench.hybrid;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.ancestry.Level;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.TaxonDeclared;
import dev.filial.core.register.TaxonRenamed;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the names on labels come to in an answer. */
class TaxaInAnswersTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);

  private AncestryQuestion.Ancestry ask(Code code) {
    return AncestryQuestion.of(bench.store).ask(code);
  }

  private String sharesBySpecies(Code code) {
    return InventedBench.shares(
        AncestryQuestion.of(bench.store).withCountingIntoSpecies(true).ask(code));
  }

  private void hybridTaxon(String name, Map<String, Fraction> makeup) {
    bench.say(new TaxonDeclared(name, List.of(), null, null, null, true, makeup, false, null));
  }

  @Test
  void oneSpeciesUnderTwoNamesIsOneTaxonInEveryComputation() {
    Code older = bench.plant("Echeveria lindsayana");
    Code newer = bench.plant(COLORATA);
    Code cross = bench.cross(older, newer);
    assertThat(bench.generation(cross)).isEqualTo("F1");

    bench.say(new TaxonRenamed("Echeveria lindsayana", COLORATA, null));

    assertThat(bench.shares(cross)).isEqualTo("1 " + COLORATA);
    assertThat(bench.generationInWords(cross)).isEqualTo("pure " + COLORATA + ", raised from seed");
    assertThat(bench.generation(bench.cross(bench.seedling(bench.cross(older, laui)), newer))).isEqualTo("BC1");
  }

  @Test
  void aNameReadThroughTwoRenamingsKeepsWhatWasDeclaredOfItsSynonyms() {
    bench.taxon("Echeveria vetus", null, 4, "Echeveria antiqua");
    Code plant = bench.plant("Echeveria antiqua");
    bench.say(new TaxonRenamed("Echeveria vetus", "Echeveria nova", null));

    assertThat(bench.shares(plant)).isEqualTo("1 Echeveria nova");
    assertThat(ask(plant).ploidy()).isEqualTo(4);
  }

  @Test
  void aStatedHybridOfTwoNamesOfOneSpeciesIsThatSpecies() {
    Code plant = bench.plant(hybrid("F1", "Echeveria lindsayana", "1/2", COLORATA, "1/2"));
    assertThat(bench.generation(plant)).isEqualTo("F1");

    bench.say(new TaxonRenamed("Echeveria lindsayana", COLORATA, null));

    assertThat(bench.shares(plant)).isEqualTo("1 " + COLORATA);
    assertThat(bench.generation(plant)).isEqualTo("pure");
  }

  @Test
  void authorsMakeNoOtherTaxon() {
    Code cross = bench.cross(bench.plant("Echeveria laui Moran & Meyrán"), laui);

    assertThat(bench.shares(cross)).isEqualTo("1 " + LAUI);
  }

  @Test
  void subspeciesStandForThemselvesAndCountIntoTheirSpeciesWhenAsked() {
    Code subspecies = bench.plant("Echeveria agavoides subsp. montana");
    bench.taxon("Echeveria parva", "Echeveria agavoides", null);
    Code within = bench.plant("Echeveria parva");
    Code cross = bench.cross(subspecies, within);

    assertThat(bench.shares(cross))
        .isEqualTo("1/2 Echeveria agavoides subsp. montana, 1/2 Echeveria parva");
    assertThat(bench.generation(cross)).isEqualTo("F1");
    assertThat(sharesBySpecies(cross)).isEqualTo("1 " + AGAVOIDES);
    assertThat(
            AncestryQuestion.of(bench.store)
                .withCountingIntoSpecies(true)
                .ask(cross)
                .generation())
        .isEqualTo("pure");
  }

  @Test
  void aTaxonThatCameToStandWithinItselfIsStillAnswered() {
    bench.taxon("Echeveria parva", "Echeveria magna", null);
    Code plant = bench.plant("Echeveria parva");
    bench.say(new TaxonRenamed("Echeveria magna", "Echeveria parva", null));

    assertThat(sharesBySpecies(plant)).isEqualTo("1 Echeveria parva");
  }

  @Test
  void doubtfulDeterminationsAreCountedAndSaid() {
    Code doubtful = bench.plant("Echeveria cf. agavoides");
    Code akin = bench.plant("Echeveria aff. agavoides");

    assertThat(ask(bench.cross(doubtful, akin)).notes())
        .containsExactly(
            doubtful.text()
                + " is determined only as Echeveria cf. agavoides, and counted as "
                + AGAVOIDES,
            akin.text()
                + " is determined only as Echeveria aff. agavoides, and counted as "
                + AGAVOIDES);
    assertThat(bench.shares(doubtful)).isEqualTo("1 " + AGAVOIDES);
  }

  @Test
  void aGenusAloneOrAnUndeterminedSpeciesIsUnknown() {
    Code genus = bench.plant("Echeveria");
    Code undetermined = bench.plant("Echeveria sp. red hills");

    for (Code plant : List.of(genus, undetermined)) {
      assertThat(bench.shares(bench.cross(plant, laui)))
          .isEqualTo("1/2 " + LAUI + ", 1/2 unknown");
      assertThat(ask(plant).notes())
          .singleElement()
          .asString()
          .contains("is determined only as Echeveria")
          .contains("its species is unknown");
    }
    assertThat(bench.shares(bench.plant(hybrid(null, "Echeveria", "1/2", LAUI, "1/2"))))
        .isEqualTo("1/2 " + LAUI + ", 1/2 unknown");
  }

  @Test
  void aCultivarOfASpeciesIsThatSpecies() {
    Code cultivar = bench.plant("Echeveria agavoides 'Rotrand'");
    bench.taxon(AGAVOIDES, null, 4);

    assertThat(bench.shares(cultivar)).isEqualTo("1 " + AGAVOIDES);
    assertThat(bench.generation(bench.cross(cultivar, bench.plant(AGAVOIDES)))).isEqualTo("pure");
    assertThat(ask(cultivar).ploidy()).isEqualTo(4);
    assertThat(ask(cultivar).notes()).isEmpty();
  }

  @Test
  void aCultivarOfNoStatedSpeciesIsATaxonOfItsOwnAndNeverPure() {
    Code named = bench.plant("Echeveria 'Abendrot'");
    Code asTwoWords = bench.plant(new Determination("Echeveria", "Abendrot", Map.of(), null, null));
    Code cross = bench.cross(named, laui);

    assertThat(bench.shares(cross)).isEqualTo("1/2 Echeveria 'Abendrot', 1/2 " + LAUI);
    assertThat(bench.shares(asTwoWords)).isEqualTo("1 Echeveria 'Abendrot'");
    assertThat(bench.generationInWords(cross)).startsWith("no generation class");
    assertThat(ask(cross).notes())
        .containsExactly(
            named.text()
                + " is a cultivar of no stated species: Echeveria 'Abendrot' is counted as a taxon"
                + " of its own, and as no pure plant");
    assertThat(
            AncestryQuestion.of(bench.store)
                .withGenerationBy(Level.CULTIVAR)
                .ask(bench.cross(named, asTwoWords))
                .generation())
        .isEqualTo("pure");
  }

  @Test
  void aHybridTaxonIsNeverPure() {
    Code nothospecies = bench.plant("Echeveria ×gilva");
    hybridTaxon("Echeveria mixta", Map.of());
    Code declared = bench.plant("Echeveria mixta");

    assertThat(bench.shares(nothospecies)).isEqualTo("1 Echeveria ×gilva");
    assertThat(bench.generation(bench.cross(nothospecies, nothospecies))).isEqualTo("no class");
    assertThat(bench.generationInWords(bench.cross(declared, laui)))
        .startsWith("no generation class");
  }

  @Test
  void theMakeUpDeclaredOfAHybridTaxonIsUsedAndItsStatedGenerationToo() {
    hybridTaxon(
        "Echeveria ×gilva", Map.of(AGAVOIDES, Fraction.HALF, "Echeveria elegans", Fraction.HALF));
    Code plant =
        bench.plant(new Determination("Echeveria ×gilva", null, Map.of(), "F1", null));

    assertThat(bench.shares(plant)).isEqualTo("1/2 " + AGAVOIDES + ", 1/2 Echeveria elegans");
    assertThat(bench.generation(bench.selfed(plant))).isEqualTo("F2");
  }

  @Test
  void aHybridOfTwoSubspeciesIsPureWhenCountedIntoTheSpecies() {
    Code plant =
        bench.plant(
            hybrid("F1", "Echeveria agavoides subsp. montana", "1/2", AGAVOIDES, "1/2"));

    assertThat(bench.generation(plant)).isEqualTo("F1");
    assertThat(
            AncestryQuestion.of(bench.store)
                .withCountingIntoSpecies(true)
                .ask(plant)
                .generationInWords())
        .isEqualTo("pure " + AGAVOIDES);
  }

  @Test
  void aGuessedSynonymIsSaid() {
    Code older = bench.plant("Echeveria lindsayana");
    long entry = bench.say(new TaxonRenamed("Echeveria lindsayana", COLORATA, null));
    bench.say(new Doubted(entry, "Klara", null));

    assertThat(ask(bench.cross(older, laui)).notes())
        .containsExactly(
            "that Echeveria lindsayana is to be read as Echeveria colorata is a guess of Klara"
                + " (entry "
                + entry
                + ")");
  }

  @Test
  void thePloidyOfThePlantGoesBeforeThatOfItsTaxon() {
    bench.taxon(COLORATA, null, 4);
    Code plant = bench.plant(new Determination(COLORATA, null, Map.of(), null, 2));

    assertThat(ask(plant).ploidy()).isEqualTo(2);
    assertThat(ask(bench.plant(COLORATA)).ploidy()).isEqualTo(4);
  }
}

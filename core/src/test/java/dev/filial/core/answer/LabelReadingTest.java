package dev.filial.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.answer.DeterminationReading.Label;
import dev.filial.core.answer.DeterminationReading.Reading;
import dev.filial.core.name.Code;
import dev.filial.core.name.NameException;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.Statement;
import dev.filial.core.register.TaxonDeclared;
import dev.filial.core.store.MemoryStore;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabelReadingTest {

  private final MemoryStore register = MemoryStore.empty();

  private void say(Statement statement) {
    register.append(statement, "Klara", Instant.EPOCH);
  }

  private void plant(int number, String taxon) {
    say(
        new PlantAcquired(
            Code.of(24, number),
            Determination.of(taxon),
            Provenance.UNKNOWN,
            null,
            List.of(),
            false,
            null,
            null));
  }

  @BeforeEach
  void aBenchOfEcheveria() {
    say(new RegisterOpened("KB", "Klara", null));
    plant(1, "Echeveria laui");
    plant(2, "Echeveria cf. agavoides");
    say(
        new TaxonDeclared(
            "Echeveria elegans",
            List.of("Echeveria albicans"),
            null,
            null,
            null,
            false,
            Map.of(),
            false,
            null));
  }

  private Reading read(String taxon, String cultivar, String generation, String... makeup) {
    Map<String, Fraction> shares = new LinkedHashMap<>();
    for (String name : makeup) {
      shares.put(name, Fraction.HALF);
    }
    return DeterminationReading.in(register)
        .read(new Label(taxon, cultivar, shares, generation, null));
  }

  @Test
  void anAbbreviatedGenusIsTheOneThatIsHere() {
    assertThat(read("E. laui", null, null))
        .isEqualTo(new Reading(Determination.of("Echeveria laui"), List.of()));
    assertThat(read("E. setosa", null, null).determination().taxon()).isEqualTo("Echeveria setosa");
  }

  @Test
  void anAbbreviationThatTwoGeneraShareIsSettledByWhatIsInUseOrNotAtAll() {
    plant(3, "Echinopsis ancistrophora");

    assertThat(read("E. laui", null, null).determination().taxon()).isEqualTo("Echeveria laui");
    assertThatThrownBy(() -> read("E. setosa", null, null))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage(
            "\"E. setosa\" may be Echeveria setosa or Echinopsis setosa; write the genus in full");
  }

  @Test
  void anAbbreviatedGenusThatIsNotHereIsAskedForInFull() {
    assertThatThrownBy(() -> read("Mam. laui", null, null))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("no genus in this register begins with Mam; write the genus in full");
  }

  @ParameterizedTest
  @CsvSource({
    "Echeveria lauii, Echeveria laui",
    "Echeveria lau, Echeveria laui",
    "Echeveria luai, Echeveria laui",
    "Echeveria agavoidea, Echeveria agavoides",
    "Echeveria albicams, Echeveria albicans",
    "Echevaria laui, Echeveria laui",
  })
  void aNewNameOneLetterAwayFromAKnownOneIsProbablyASlip(String written, String known) {
    assertThat(read(written, null, null).notes())
        .containsExactly(
            written
                + " is new here, and one letter away from "
                + known
                + "; if that was meant, undo this entry and write it again");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Echeveria laui",
        "Echeveria laui Moran & J.Meyrán",
        "Echeveria cf. laui",
        "Echeveria albicans",
        "Echeveria setosa",
        "Echeveria"
      })
  void aNameInUseOrLikeNoneIsTakenAsItIs(String written) {
    assertThat(read(written, null, null).notes()).isEmpty();
  }

  @Test
  void aCultivarNamedWithItsSpeciesCountsAsThatSpecies() {
    assertThat(read("Echeveria agavoides 'Rotrand'", null, null).determination())
        .isEqualTo(new Determination("Echeveria agavoides", "Rotrand", Map.of(), null, null));
    assertThat(read("Echeveria laui", "'Rotrand'", null).determination().cultivar())
        .isEqualTo("Rotrand");
  }

  @Test
  void aCultivarNamedWithItsGenusAloneStaysANameOfItsOwn() {
    assertThat(read("Echeveria 'Morgenrot'", null, null).determination())
        .isEqualTo(new Determination("Echeveria 'Morgenrot'", "Morgenrot", Map.of(), null, null));
  }

  @Test
  void twoCultivarsAreRefused() {
    assertThatThrownBy(() -> read("Echeveria laui 'Rotrand'", "Blaurand", null))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("'Rotrand', and 'Blaurand'");
  }

  @Test
  void aStatedGenerationNeedsItsTwoTaxaToBeCounted() {
    assertThat(read(null, null, "f1", "E. laui", "E. agavoides"))
        .satisfies(
            read -> {
              assertThat(read.notes()).isEmpty();
              assertThat(read.determination().generation()).isEqualTo("F1");
              assertThat(read.determination().makeup())
                  .containsOnlyKeys("Echeveria laui", "Echeveria agavoides");
            });
    assertThat(read(null, null, "BC1F2").notes())
        .singleElement()
        .asString()
        .startsWith("BC1F2 is kept as it was said, but no generation is counted from it");
  }

  @ParameterizedTest
  @ValueSource(strings = {"F0", "F", "BC", "BC0F1", "first", "F1 or F2"})
  void whatIsNoGenerationIsRefused(String written) {
    assertThatThrownBy(() -> read(null, null, written))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is no generation; write F1");
  }

  @Test
  void whatIsNoNameIsRefusedByTheReaderOfNames() {
    assertThatThrownBy(() -> read("the blue one", null, null)).isInstanceOf(NameException.class);
  }
}

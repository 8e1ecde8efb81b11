package dev.filial.core.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.name.Notation;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Item;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.Register;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.Statement;
import dev.filial.core.register.TaxonDeclared;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class NotationEntriesTest {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  private Register register =
      Register.empty().append(new RegisterOpened("KB", "Klara", null), "Klara", NOON).register();

  private void say(Statement statement) {
    register = register.append(statement, "Klara", NOON).register();
  }

  private NotationEntries record(String notation, Map<String, Code> meant) {
    NotationEntries entries = NotationEntries.of(register, Notation.parse(notation), meant, 2026);
    entries.statements().forEach(this::say);
    return entries;
  }

  private Descent descent(Code cross) {
    return register.item(cross).orElseThrow().descent().get(0);
  }

  private static PlantAcquired plant(Code code, String name) {
    return new PlantAcquired(
        code, Determination.UNKNOWN, Provenance.UNKNOWN, null, List.of(name), false, null, null);
  }

  @Test
  void eachSourceIsAPlantAndEachCrossASeedling() {
    NotationEntries entries = record("Amber/Coral//Dusk", Map.of());

    assertThat(entries.sources())
        .isEqualTo(
            Map.of("Amber", Code.of(26, 1), "Coral", Code.of(26, 2), "Dusk", Code.of(26, 4)));
    assertThat(entries.last()).isEqualTo(Code.of(26, 5).seedling(1));
    Item amber = register.item(Code.of(26, 1)).orElseThrow();
    assertThat(amber.neverHeld()).isTrue();
    assertThat(amber.names()).containsExactly("Amber");
    assertThat(descent(Code.of(26, 3)).seed()).isEqualTo(Code.of(26, 1));
    assertThat(descent(Code.of(26, 3)).pollen()).isEqualTo(Code.of(26, 2));
    assertThat(descent(Code.of(26, 5)).seed()).isEqualTo(Code.of(26, 3).seedling(1));
    assertThat(descent(Code.of(26, 5)).pollen()).isEqualTo(Code.of(26, 4));
    assertThat(register.lineage(List.of(entries.last()))).hasSize(7);
  }

  @Test
  void aCodeOfThisRegisterIsThatPlant() {
    NotationEntries first = record("Amber/Coral", Map.of());
    String amber = first.sources().get("Amber").text();
    NotationEntries again = record("\"" + amber + "\"/Dusk", Map.of());

    assertThat(again.sources().get(amber)).isEqualTo(Code.parse(amber));
    assertThat(again.added()).doesNotContain(Code.parse(amber));
  }

  @Test
  void aRepeatedNameIsOnePlant() {
    NotationEntries entries = record("Amber*3/Coral", Map.of());
    assertThat(entries.sources()).hasSize(2);
    assertThat(entries.statements()).hasSize(2 + 3 * 2);
  }

  @Test
  void aPlantOfThisRegisterIsKnownByItsOwnName() {
    say(plant(Code.of(24, 7), "amber"));
    NotationEntries entries = record("Amber/Coral", Map.of());
    assertThat(entries.sources()).containsEntry("Amber", Code.of(24, 7));
    assertThat(entries.added()).containsExactly(Code.of(26, 1));
  }

  @Test
  void aSourceCanBeSaidToBeAPlant() {
    say(plant(Code.of(24, 7), "amber"));
    say(plant(Code.of(24, 8), "the other"));
    NotationEntries entries = record("Amber/Coral", Map.of("Amber", Code.of(24, 8)));
    assertThat(descent(entries.last().whole()).seed()).isEqualTo(Code.of(24, 8));
  }

  @Test
  void aSourceCalledLikeATaxonHereIsOfIt() {
    say(
        new TaxonDeclared(
            "Echeveria laui", List.of(), null, null, null, false, Map.of(), false, null));
    NotationEntries entries = record("Echeveria laui/Coral", Map.of());
    assertThat(register.item(entries.sources().get("Echeveria laui")).orElseThrow())
        .extracting(item -> item.determination().taxon())
        .isEqualTo("Echeveria laui");
  }

  @Test
  void aSelfingIsWrittenAsACrossOfOneNameWithItself() {
    NotationEntries entries = record("Amber/Amber", Map.of());
    assertThat(descent(entries.last().whole()).pollen()).isEqualTo(Code.of(26, 1));
  }

  @Test
  void oneNameIsNoCross() {
    assertThatThrownBy(() -> record("Amber", Map.of()))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("\"Amber\" is one plant and no cross; write A/B, the seed parent on the left");
  }

  @Test
  void aNameThatSeveralPlantsBearIsAskedAbout() {
    say(plant(Code.of(24, 7), "Amber"));
    say(plant(Code.of(24, 8), "amber"));
    assertThatThrownBy(() -> record("Amber/Coral", Map.of()))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining(Code.of(24, 7).text() + ", " + Code.of(24, 8).text());
  }

  @Test
  void aSourceThatIsNotThereCannotBeSaidToBeAnything() {
    assertThatThrownBy(() -> record("Amber/Coral", Map.of("Ember", Code.of(24, 7))))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("the pedigree has no \"Ember\"; it has Amber, Coral");
  }

  @Test
  void codesGoOnFromThoseGivenOut() {
    say(plant(Code.of(26, 41), "Amber"));
    assertThat(record("Coral/Dusk", Map.of()).last()).isEqualTo(Code.of(26, 44).seedling(1));
  }

  @Test
  void aNameThatReadsAsASpeciesIsOneAndTheOthersHaveNoTaxon() {
    NotationEntries entries = record("Aloe vera/Aloe ferox//Schnabel", Map.of());

    assertThat(entries.readAsSpecies().keySet()).containsExactly("Aloe vera", "Aloe ferox");
    assertThat(entries.withoutTaxon().keySet()).containsExactly("Schnabel");
    Code vera = entries.sources().get("Aloe vera");
    assertThat(register.item(vera).orElseThrow().determination().taxon()).isEqualTo("Aloe vera");
    Code own = entries.sources().get("Schnabel");
    assertThat(register.item(own).orElseThrow().determination()).isEqualTo(Determination.UNKNOWN);
  }
}

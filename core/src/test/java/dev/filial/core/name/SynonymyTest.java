package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SynonymyTest {

  private static TaxonName name(String text) {
    return TaxonName.parse(text);
  }

  @Test
  void oneSpeciesUnderTwoNamesIsOneTaxon() {
    Synonymy synonymy = Synonymy.of(Map.of(name("Cotyledon alba"), name("Echeveria alba Lem.")));
    assertThat(synonymy.accepted(name("Cotyledon alba Smith"))).hasToString("Echeveria alba Lem.");
    assertThat(synonymy.accepted(name("Echeveria rubra"))).hasToString("Echeveria rubra");
    assertThat(synonymy.isSynonym(name("Cotyledon alba"))).isTrue();
    assertThat(synonymy.isSynonym(name("Echeveria alba"))).isFalse();
    assertThat(synonymy.isSameTaxon(name("Cotyledon alba"), name("Echeveria alba"))).isTrue();
    assertThat(Synonymy.none().isSameTaxon(name("Cotyledon alba"), name("Echeveria alba")))
        .isFalse();
  }

  @Test
  void aSynonymOfASynonymLeadsToTheAcceptedName() {
    Synonymy synonymy =
        Synonymy.of(
            Map.of(
                name("Cotyledon alba"), name("Sedum album"),
                name("Sedum album"), name("Echeveria alba"),
                name("Sedum candidum"), name("Sedum album")));
    assertThat(synonymy.accepted(name("Cotyledon alba"))).isEqualTo(name("Echeveria alba"));
    assertThat(synonymy.accepted(name("Sedum candidum"))).isEqualTo(name("Echeveria alba"));
  }

  @Test
  void circlesAndContradictionsAreRefusedByName() {
    assertThatThrownBy(
            () ->
                Synonymy.of(
                    Map.of(
                        name("Sedum album"), name("Echeveria alba"),
                        name("Echeveria alba"), name("Sedum album L."))))
        .hasMessageContaining("synonym of itself")
        .hasMessageContaining("sedum album");
    assertThatThrownBy(() -> Synonymy.of(Map.of(name("Sedum album"), name("Sedum album L."))))
        .hasMessageContaining("synonym of itself");
    Map<TaxonName, TaxonName> two = new HashMap<>();
    two.put(name("Sedum album"), name("Echeveria alba"));
    two.put(name("Sedum album L."), name("Echeveria rubra"));
    assertThatThrownBy(() -> Synonymy.of(two)).hasMessageContaining("keep one");
  }
}

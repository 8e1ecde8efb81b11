package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.ProfileStated.Pairing;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TaxonProfileTest {

  private final InventedBench bench = new InventedBench();

  private ProfileStated profile(String taxon) {
    return TaxonProfile.of(bench.store, taxon).orElseThrow();
  }

  @Test
  void whatASpeciesDoesNotSayItsGenusMay() {
    bench.gene("tips", "T", "t");
    bench.gene("keel", "K", "k");
    bench.say(ProfileStated.ofMap("Echeveria", GeneticMap.parse("27x80")));
    bench.say(
        new ProfileStated("Echeveria", Map.of(), Pairing.TETRASOMIC, Fraction.of(1, 7), null));
    bench.profile("Echeveria", "tips", "T");
    bench.profile("Echeveria", "keel", "K");
    bench.profile(LAUI, "keel", "k");

    ProfileStated laui = profile(LAUI);
    assertThat(laui.geneticMap()).contains(GeneticMap.parse("27x80"));
    assertThat(laui.doubleReduction()).isEqualTo(Fraction.of(1, 7));
    assertThat(laui.frequencies().get("tips")).isEqualTo(Map.of("T", Fraction.ONE));
    assertThat(laui.frequencies().get("keel")).isEqualTo(Map.of("k", Fraction.ONE));

    bench.say(new ProfileStated(LAUI, Map.of(), Pairing.DISOMIC, null, null));
    assertThat(profile(LAUI).pairing()).isEqualTo(Pairing.DISOMIC);
    assertThat(profile(LAUI).doubleReduction()).as("goes with the pairing").isNull();
  }

  @Test
  void ofWhatNobodyStatedThereIsNoProfile() {
    assertThat(TaxonProfile.of(bench.store, LAUI)).isEmpty();
  }
}

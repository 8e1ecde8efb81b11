package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.TaxonRenamed;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which genetic map a plant is reckoned with. The maps are invented. */
class MapInUseTest {

  private static final String MOUNTAIN = "Echeveria laui subsp. montana";

  private final InventedBench bench = new InventedBench();

  private void map(String taxon, String lengths) {
    bench.say(ProfileStated.ofMap(taxon, GeneticMap.parse(lengths)));
  }

  private MapInUse of(String... taxa) {
    return MapInUse.of(bench.store, List.of(taxa));
  }

  @Test
  void whereNobodyStatedOneItIsAssumedAndSaidSo() {
    assertThat(of(LAUI, AGAVOIDES))
        .isEqualTo(
            new MapInUse(
                GeneticMap.assumed(),
                null,
                List.of(
                    "No genetic map is stated for Echeveria laui, Echeveria agavoides; reckoned"
                        + " with 11 chromosomes of 100 cM, which is an assumption.")));
    assertThat(of().isAssumed()).isTrue();
    assertThat(of().notes())
        .containsExactly(
            "No genetic map is stated; reckoned with 11 chromosomes of 100 cM, which is an"
                + " assumption.");
  }

  @Test
  void aMapStatedForTheGenusHoldsForEachOfItsSpecies() {
    map("Echeveria", "27x100");

    assertThat(of(LAUI, AGAVOIDES, MOUNTAIN, "Echeveria cf. elegans", "Echeveria sp."))
        .isEqualTo(new MapInUse(GeneticMap.alike(27, 1), "Echeveria", List.of()));
    assertThat(of("Graptopetalum paraguayense").isAssumed()).isTrue();
    assertThat(of("×Graptoveria acaulis").isAssumed()).isTrue();
  }

  @Test
  void theNearestNameThatHasOneHolds() {
    map("Echeveria", "27x100");
    map(LAUI, "27x90");
    assertThat(of(MOUNTAIN).statedFor()).isEqualTo(LAUI);
    map(MOUNTAIN, "27x80");
    assertThat(of(MOUNTAIN).map()).isEqualTo(GeneticMap.alike(27, 0.8));
    assertThat(of(LAUI).map()).isEqualTo(GeneticMap.alike(27, 0.9));

    // What was said of its genes does not hide the map of the species.
    bench.gene("edge", "R", "r");
    bench.profile("Echeveria laui var. alba", "edge", "R");
    assertThat(of("Echeveria laui var. alba").statedFor()).isEqualTo(LAUI);
  }

  @Test
  void aTaxonThatCountsIntoAnotherHasItsMap() {
    bench.taxon("Echeveria montana", LAUI, null);
    map("Echeveria", "27x100");
    map(LAUI, "27x90");

    assertThat(of("Echeveria montana").statedFor()).isEqualTo(LAUI);
  }

  @Test
  void aRenamedTaxonTakesTheMapOfItsNewGenus() {
    map("Echeveria", "27x100");
    map("Graptopetalum", "30x100");
    bench.say(new TaxonRenamed("Graptopetalum novum", "Echeveria nova", null));

    assertThat(of("Graptopetalum novum").statedFor()).isEqualTo("Echeveria");
  }

  @Test
  void ofDifferentMapsThatOfTheFirstIsTakenAndTheOtherNamed() {
    map("Echeveria", "27x100");
    map("Graptopetalum", "30x100");

    MapInUse found = of("Graptopetalum paraguayense", LAUI, AGAVOIDES);
    assertThat(found.statedFor()).isEqualTo("Graptopetalum");
    assertThat(found.notes())
        .containsExactly(
            "The maps of Graptopetalum and Echeveria differ; reckoned with that of Graptopetalum,"
                + " 30 chromosomes of 100 cM.");
    assertThat(of(LAUI, "Graptopetalum paraguayense").map().chromosomes()).isEqualTo(27);
  }

  @Test
  void likeMapsOfTwoGeneraAreNoDoubt() {
    map("Echeveria", "27x100");
    map("Graptopetalum", "27x100");

    assertThat(of(LAUI, "Graptopetalum paraguayense").notes()).isEmpty();
  }

  @Test
  void oneThatHasNoneIsReckonedWithTheOthersAndSaidSo() {
    map("Echeveria", "27x100");

    assertThat(of("Pachyphytum oviferum", LAUI).notes())
        .containsExactly(
            "No genetic map is stated for Pachyphytum oviferum; reckoned with that of Echeveria, 27"
                + " chromosomes of 100 cM.");
  }
}

package dev.filial.core.ancestry;

import static dev.filial.core.ancestry.LocalityVerdict.NOT_CERTAIN;
import static dev.filial.core.ancestry.LocalityVerdict.NOT_TRUE;
import static dev.filial.core.ancestry.LocalityVerdict.TRUE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.ancestry.LocalityLoss.Cause;
import dev.filial.core.ancestry.LocalityLoss.Why;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.pedigree.PedigreeGraph.Role;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LocalityTruthTest {

  private final List<PlantRecord> records = new ArrayList<>();

  LocalityTruthTest() {
    founder("a", "FO 12");
    founder("b", "FO 12");
    founder("c", "FO 14");
    founder("d", "FO 20");
    founder("none", null);
  }

  private void founder(String code, @Nullable String number) {
    Founder founder = Founder.pure("Echeveria laui");
    records.add(new PlantRecord(code, number == null ? founder : founder.withFieldNumber(number)));
  }

  private LocalityTruthTest with(PlantRecord... more) {
    records.addAll(List.of(more));
    return this;
  }

  private LocalityTruth truth(String... numbers) {
    return LocalityTruth.of(Pedigree.of(records), Set.of(numbers));
  }

  private LocalityVerdict verdict(String code) {
    return truth("FO 12").verdict(code);
  }

  private List<LocalityLoss> losses(String code) {
    return truth("FO 12").losses(code);
  }

  @Test
  void whatIsBredWithinOneNumberStaysTrueHoweverManyGenerations() {
    with(
        PlantRecord.cross("f1", "a", "b"),
        PlantRecord.selfing("f2", "f1"),
        PlantRecord.cross("f3", "f2", "f1"),
        PlantRecord.ramet("offset", "f3"),
        PlantRecord.apomict("apomict", "offset"));

    assertThat(List.of("a", "f1", "f2", "f3", "offset", "apomict"))
        .allMatch(code -> verdict(code) == TRUE);
    assertThat(losses("apomict")).isEmpty();
  }

  @Test
  void anotherNumberEndsTheLineAndAllThatComesOfIt() {
    with(
        PlantRecord.cross("f1", "a", "d"),
        PlantRecord.cross("bc1", "f1", "a"),
        PlantRecord.cross("bc2", "b", "bc1"));

    assertThat(verdict("bc2")).isEqualTo(NOT_TRUE);
    assertThat(losses("bc2"))
        .containsExactly(
            new LocalityLoss(
                "f1",
                NOT_TRUE,
                List.of(
                    new Cause(
                        Why.OTHER_NUMBER, Route.CROSS, Fraction.ONE, Role.POLLEN, "d", "d"))));
  }

  @Test
  void twoNumbersDeclaredOnePopulationAreTrueTogether() {
    with(PlantRecord.cross("f1", "a", "c"));

    assertThat(verdict("f1")).isEqualTo(NOT_TRUE);
    assertThat(truth("FO 12", " FO 14").verdict("f1")).isEqualTo(TRUE);
    assertThat(truth("FO 14").verdict("f1")).isEqualTo(NOT_TRUE);
  }

  @Test
  void theSpellingOfANumberCounts() {
    founder("e", "FO12");
    with(PlantRecord.cross("f1", "a", "e"));

    assertThat(verdict("f1")).isEqualTo(NOT_TRUE);
    assertThat(truth("FO 12", "FO12").verdict("f1")).isEqualTo(TRUE);
  }

  @Test
  void openPollinationLeavesItUncertain() {
    with(PlantRecord.openPollinated("open", "a"), PlantRecord.cross("next", "open", "b"));

    assertThat(verdict("next")).isEqualTo(NOT_CERTAIN);
    assertThat(losses("next"))
        .containsExactly(
            new LocalityLoss(
                "open",
                NOT_CERTAIN,
                List.of(
                    new Cause(
                        Why.UNKNOWN_PLANT,
                        Route.OPEN_POLLINATION,
                        Fraction.ONE,
                        Role.POLLEN,
                        null,
                        null))));
  }

  @Test
  void candidatesThatAllBearTheNumberKeepItTrue() {
    with(
        PlantRecord.seedling(
            "among",
            Case.cross(Fraction.HALF, Route.OPEN_POLLINATION, "a", "b"),
            Case.selfing(Fraction.HALF, "a")),
        PlantRecord.seedling(
            "perhaps",
            Case.cross(Fraction.of(2, 3), Route.POLLEN_MIX, "a", "b"),
            Case.cross(Fraction.of(1, 3), Route.POLLEN_MIX, "a", "d")));

    assertThat(verdict("among")).isEqualTo(TRUE);
    assertThat(verdict("perhaps")).isEqualTo(NOT_CERTAIN);
    assertThat(losses("perhaps").get(0).causes())
        .containsExactly(
            new Cause(
                Why.OTHER_NUMBER, Route.POLLEN_MIX, Fraction.of(1, 3), Role.POLLEN, "d", "d"));
  }

  @Test
  void aMixtureOfStrangersIsCertainlyNotTrue() {
    with(
        PlantRecord.seedling(
            "mixed",
            Case.cross(Fraction.HALF, Route.POLLEN_MIX, "a", "c"),
            Case.cross(Fraction.HALF, Route.POLLEN_MIX, "a", "d")));

    assertThat(verdict("mixed")).isEqualTo(NOT_TRUE);
    assertThat(losses("mixed").get(0).causes()).extracting(Cause::parent).containsExactly("c", "d");
  }

  @Test
  void aShareOfStraysLeavesItUncertain() {
    with(
        PlantRecord.seedling(
            "stray",
            Case.cross(Fraction.of(9, 10), Route.CROSS, "a", "b"),
            Case.unknownPollen(Fraction.of(1, 10), Route.STRAY, "a")));

    assertThat(verdict("stray")).isEqualTo(NOT_CERTAIN);
    assertThat(losses("stray").get(0).causes()).extracting(Cause::route).containsOnly(Route.STRAY);
  }

  @Test
  void aFounderWithoutANumberIsNotKnownToBeOfIt() {
    with(PlantRecord.cross("f1", "a", "none"), PlantRecord.cross("worse", "f1", "d"));

    assertThat(verdict("none")).isEqualTo(NOT_CERTAIN);
    assertThat(losses("none")).isEmpty();
    assertThat(verdict("f1")).isEqualTo(NOT_CERTAIN);
    assertThat(losses("f1").get(0).causes()).extracting(Cause::why).containsExactly(Why.NO_NUMBER);
    // What was open is settled where another number comes in.
    assertThat(losses("worse")).extracting(LocalityLoss::plant).containsExactly("worse");
    assertThat(verdict("worse")).isEqualTo(NOT_TRUE);
  }

  @Test
  void aPlantThatMayBeOneOfTwoIsUncertainFromThereOn() {
    with(
        PlantRecord.cross("f1", "a", "d"),
        PlantRecord.seedling(
            "found",
            new Case.Copy(Fraction.HALF, Route.IDENTITY, "a"),
            new Case.Copy(Fraction.HALF, Route.IDENTITY, "f1")));

    assertThat(verdict("found")).isEqualTo(NOT_CERTAIN);
    assertThat(losses("found"))
        .containsExactly(
            new LocalityLoss(
                "found",
                NOT_CERTAIN,
                List.of(
                    new Cause(
                        Why.OTHER_NUMBER, Route.IDENTITY, Fraction.HALF, Role.COPY, "f1", "d"))));
  }

  @Test
  void flowersCalledDoubtfulLeaveItUncertain() {
    with(PlantRecord.cross("f1", "a", "b"), PlantRecord.cross("f2", "f1", "a"));
    Pedigree pedigree = Pedigree.of(records);
    int doubtful = pedigree.indexOf("f1");

    LocalityTruth truth = LocalityTruth.of(pedigree, Set.of("FO 12"), plant -> plant == doubtful);

    assertThat(truth.verdict("f2")).isEqualTo(NOT_CERTAIN);
    assertThat(truth.firstLoss(pedigree.indexOf("f2"))).isEqualTo(doubtful);
    assertThat(truth.lossAt(doubtful).causes())
        .extracting(Cause::why)
        .containsExactly(Why.OPEN_TO_DOUBT);
  }

  @Test
  void twoLinesLostApartAreBothNamedTheFoundersSideFirst() {
    with(
        PlantRecord.cross("x", "a", "d"),
        PlantRecord.cross("y", "b", "c"),
        PlantRecord.cross("z", "x", "y"));

    LocalityTruth truth = truth("FO 12");
    int z = truth.pedigree().indexOf("z");
    assertThat(truth.losses("z")).extracting(LocalityLoss::plant).containsExactly("x", "y");
    assertThat(truth.isLostSeveralTimes(z)).isTrue();
    assertThat(truth.pedigree().code(truth.firstLoss(z))).isEqualTo("x");
    assertThat(truth.isLostSeveralTimes(truth.pedigree().indexOf("x"))).isFalse();
  }

  @Test
  void aStrangerComesOfNothingThatCouldBeLost() {
    with(PlantRecord.cross("x", "c", "d"));

    LocalityTruth truth = truth("FO 12");
    int x = truth.pedigree().indexOf("x");
    assertThat(truth.isDescended(x)).isFalse();
    assertThat(truth.verdict("x")).isEqualTo(NOT_TRUE);
    assertThat(truth.losses("x")).isEmpty();
    assertThatThrownBy(() -> truth.lossAt(x)).hasMessageContaining("no line was lost at x");
    assertThatThrownBy(() -> truth.verdict("y")).isInstanceOf(PedigreeException.class);
  }
}

package dev.filial.core.register;

import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.fate;
import static dev.filial.core.register.Bench.harvest;
import static dev.filial.core.register.Bench.on;
import static dev.filial.core.register.Bench.sowing;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Flowers, pollen papers, the seed tin, care and places: what may be written of them. */
class DiaryRulesTest {

  private final Bench bench = new Bench();

  @BeforeEach
  void twoPlantsTheirCrossAndItsSeed() {
    bench.plant("24-001", "Echeveria laui");
    bench.plant("24-002", "Echeveria agavoides");
    bench.say(cross("25-001", "24-001", "24-002", "2025-03-04"));
    bench.say(harvest("25-001 H1", "2025-06-01", "40"));
    bench.say(sowing("25-001 S1", "25-001 H1", "2025-06-10", "30"));
  }

  private static PollenKept pollen(PollenKept.Step step, @Nullable String gathered, String day) {
    return new PollenKept(
        code("24-002"), step, gathered == null ? null : on(gathered), on(day), null, null, null);
  }

  private List<PollenBatch> batches() {
    return PollenStore.of(bench.book, code("24-002")).batches();
  }

  private static SeedKept tin(@Nullable Count left, @Nullable String mg, @Nullable String a) {
    return new SeedKept(
        List.of(code("25-001 H1")),
        true,
        left,
        mg == null ? null : new BigDecimal(mg),
        a == null ? null : new BigDecimal(a),
        "paper",
        "tin",
        on("2025-07-01"),
        null);
  }

  @Test
  void pollenOfOnePaperNeedNotSayWhichDayItIsOf() {
    bench.say(pollen(PollenKept.Step.GATHERED, null, "2025-03-01"));
    bench.say(pollen(PollenKept.Step.FROZEN, null, "2025-03-03"));
    assertThat(batches())
        .singleElement()
        .satisfies(
            batch -> {
              assertThat(batch.step()).isEqualTo(PollenKept.Step.FROZEN);
              assertThat(batch.gathered()).isEqualTo(on("2025-03-01"));
              assertThat(batch.isLeft()).isTrue();
            });
  }

  @Test
  void ofTwoPapersTheDayTellsWhich() {
    bench.say(pollen(PollenKept.Step.GATHERED, null, "2025-03-01"));
    bench.say(pollen(PollenKept.Step.GATHERED, null, "2025-03-09"));
    assertThat(bench.refusal(pollen(PollenKept.Step.USED_UP, null, "2025-04-01")))
        .hasMessage(
            "there was pollen of "
                + code("24-002").text()
                + " of several days on 2025-04-01 (2025-03-01, 2025-03-09); say which by the day it"
                + " was gathered");
    bench.say(pollen(PollenKept.Step.USED_UP, "2025-03-01", "2025-04-01"));
    assertThat(batches()).extracting(PollenBatch::isLeft).containsExactly(false, true);
    // The other is now the only one, and may go unsaid.
    bench.say(pollen(PollenKept.Step.DRIED, null, "2025-04-02"));
    assertThat(batches().get(1).step()).isEqualTo(PollenKept.Step.DRIED);
  }

  @Test
  void nothingIsDoneWithPollenThatWasNeverGatheredOrIsGone() {
    assertThat(bench.refusal(pollen(PollenKept.Step.DRIED, null, "2025-03-01")))
        .hasMessageContaining("enter its gathering first");
    bench.say(pollen(PollenKept.Step.GATHERED, null, "2025-03-01"));
    assertThat(bench.refusal(pollen(PollenKept.Step.DRIED, null, "2025-02-01")))
        .hasMessageContaining("was left on 2025-02-01");
    bench.say(pollen(PollenKept.Step.USED_UP, null, "2025-03-05"));
    assertThat(bench.refusal(pollen(PollenKept.Step.FROZEN, null, "2025-03-06")))
        .hasMessageContaining("was left on 2025-03-06");
  }

  @Test
  void aStruckGatheringTakesNoStepsWithIt() {
    bench.say(pollen(PollenKept.Step.GATHERED, null, "2025-03-01"));
    long gathering = bench.book.size();
    bench.say(pollen(PollenKept.Step.FROZEN, null, "2025-03-03"));
    assertThat(bench.refusal(new Amended(gathering, null, "another plant's")).entries())
        .containsExactly(gathering + 1);
  }

  @Test
  void aRecountOfTheTinIsWhatIsLeft() {
    bench.say(tin(Count.of(7), null, null));
    assertThat(bench.item("25-001 H1").count()).isEqualTo(Count.of(7));
    assertThat(bench.item("25-001 H1").place()).isEqualTo("tin");
  }

  @Test
  void aWeightIsAGuessAndDoesNotTakeThePlaceOfACount() {
    bench.say(tin(null, "2.5", "2000"));
    assertThat(bench.item("25-001 H1").count()).isEqualTo(Count.of(10));
    bench.say(harvest("25-001 H2", "2025-06-01", "?"));
    bench.say(
        new SeedKept(
            List.of(code("25-001 H2")),
            false,
            null,
            new BigDecimal("2.5"),
            new BigDecimal("2000"),
            null,
            null,
            on("2025-07-01"),
            null));
    assertThat(bench.item("25-001 H2").count()).isEqualTo(Count.about(5));
  }

  @Test
  void anEmptyTinIsUsedUpUntilSeedIsFoundInIt() {
    bench.say(tin(Count.of(0), null, null));
    assertThat(bench.item("25-001 H1").fate()).isEqualTo(Fate.USED_UP);
    bench.say(tin(Count.of(3), null, null));
    assertThat(bench.item("25-001 H1").fate()).isEqualTo(Fate.ALIVE);
  }

  @Test
  void moreThanIsLeftCanBePromisedButIsSaid() {
    Promised eight =
        new Promised(List.of(code("25-001 H1")), Count.of(8), "Otto", on("2025-07-01"), null);
    assertThat(bench.warnings(eight)).isEmpty();
    assertThat(bench.warnings(eight))
        .containsExactly(
            "16 of " + code("25-001 H1").text() + " are promised in all, and 10 are left");
  }

  @Test
  void aGiftKeepsThePromiseToTheSamePersonTheOldestFirst() {
    bench.say(
        new Promised(List.of(code("25-001 H1")), Count.of(4), "Otto", on("2025-07-01"), null));
    bench.say(new Promised(List.of(code("25-001 H1")), Count.of(3), "Ida", on("2025-07-02"), null));
    bench.say(
        new FateRecorded(
            List.of(code("25-001 H1")),
            Fate.GIVEN,
            on("2025-07-05"),
            Count.of(3),
            "otto",
            null,
            null));
    assertThat(Promises.of(bench.book, code("25-001 H1")))
        .extracting(open -> open.count() + " to " + open.to())
        .containsExactly("1 to Otto", "3 to Ida");
    bench.say(
        new FateRecorded(
            List.of(code("25-001 H1")),
            Fate.GIVEN,
            on("2025-07-06"),
            Count.of(2),
            "Otto",
            null,
            null));
    assertThat(Promises.of(bench.book, code("25-001 H1")))
        .extracting(Promises.Open::to)
        .containsExactly("Ida");
  }

  @Test
  void aCrossIsNotTreatedButItsSeedAndPotsAre() {
    assertThat(
            bench.refusal(
                new Treated(
                    List.of(code("25-001")),
                    Treatment.SOAK,
                    null,
                    null,
                    null,
                    on("2025-06-09"),
                    null)))
        .hasMessageContaining("25-001R is a cross; treat its seed (25-001R H1), its pots");
    assertThat(
            bench.refusal(
                new Treated(
                    List.of(code("25-001 S1")),
                    Treatment.FUNGICIDE,
                    null,
                    null,
                    null,
                    on("2025-06-09"),
                    null)))
        .hasMessageContaining("2025-06-09 is before it came about");
  }

  @Test
  void aPlantIsNotOpened() {
    assertThat(
            bench.refusal(
                new Tended(
                    List.of(code("24-001")),
                    Tended.Care.OPENED,
                    null,
                    null,
                    on("2025-06-09"),
                    null)))
        .hasMessageContaining("what is looked into or opened is a sowing or a pot");
  }

  @Test
  void placesNestAndMoveWithTheOneTheyStandIn() {
    bench.say(new PlaceDeclared("Tray A", "Bench 2", on("2025-01-01"), null));
    bench.say(new PlaceDeclared("bench 2", "house", null, null));
    bench.say(new PlaceDeclared("tray a", "balcony", on("2025-05-01"), null));
    Places places = Places.of(bench.book);
    assertThat(places.around("TRAY A")).containsExactly("tray a", "balcony");
    assertThat(places.on(on("2025-04-01").latest()).around("tray a"))
        .containsExactly("Tray A", "bench 2", "house");
    assertThat(places.on(on("2025-04-01").latest()).isWithin("Tray A", "HOUSE")).isTrue();
    assertThat(places.isWithin("Tray A", "house")).isFalse();
    assertThat(places.isWithin(null, "house")).isFalse();
  }

  @Test
  void noPlaceStandsInItself() {
    assertThatThrownBy(() -> new PlaceDeclared("tray", " TRAY", null, null))
        .hasMessageContaining("cannot stand in itself");
    bench.say(new PlaceDeclared("tray", "bench", null, null));
    bench.say(new PlaceDeclared("bench", "house", null, null));
    assertThat(bench.refusal(new PlaceDeclared("house", "tray", null, null)))
        .hasMessage(
            "\"house\" would stand in itself, by way of tray, bench, house; see which of them"
                + " stands in which");
  }

  @Test
  void fruitThatDroppedHadSet() {
    assertThat(
            bench.warnings(
                new FruitRecorded(
                    code("25-001"),
                    on("2025-05-01"),
                    Count.of(1),
                    null,
                    Count.of(2),
                    null,
                    null,
                    null)))
        .containsExactly(
            "2 fruits of "
                + code("25-001").text()
                + " dropped unripe, and 1 had set; enter those that set too, or mend one of the"
                + " numbers");
  }

  @Test
  void seedIsCoveredOrLeftOnTheSurfaceAndHeatIsDegrees() {
    assertThatThrownBy(
            () ->
                EntryJson.read(
                    "{\"kind\":\"sowing\",\"sowing\":\"25-001 S2\",\"lot\":\"25-001 H1\",\"seeds\":\"4\","
                        + "\"cover\":\"grit\",\"surface\":true}"))
        .hasMessageContaining("either left on the surface or covered with grit");
    assertThatThrownBy(
            () ->
                EntryJson.read(
                    "{\"kind\":\"sowing\",\"sowing\":\"25-001 S2\",\"lot\":\"25-001 H1\",\"seeds\":\"4\","
                        + "\"bottomHeat\":75}"))
        .hasMessageContaining("the bottom heat in °C is 75; it lies between -20 and 60");
    assertThatThrownBy(
            () ->
                EntryJson.read(
                    "{\"kind\":\"sowing\",\"sowing\":\"25-001 S2\",\"lot\":\"25-001 H1\",\"seeds\":\"4\","
                        + "\"lightHours\":25}"))
        .hasMessageContaining("the hours of light a day is 25; it lies between 0 and 24");
  }

  @Test
  void whatIsDeadCanStillBePhotographed() {
    bench.say(fate("24-001", Fate.DEAD, "2025-08-01"));
    assertThat(
            bench.warnings(
                new Photographed(
                    List.of(code("24-001")),
                    new Photograph("a.jpg", "0123456789abcdef".repeat(4)),
                    on("2025-09-01"),
                    null)))
        .isEmpty();
  }
}

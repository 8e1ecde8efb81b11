package dev.filial.core.answer;

import static dev.filial.core.answer.FlowersStory.day;
import static dev.filial.core.answer.FlowersStory.on;
import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Interval;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PollenKept;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is in flower, with what else, and which pollen bridges a gap. */
class FloweringQuestionTest {

  private final FlowersStory story = new FlowersStory();
  private final Code laui = story.plant(LAUI);
  private final Code agavoides = story.plant(AGAVOIDES);

  private FloweringQuestion.Flowering flowering(String day) {
    return FloweringQuestion.of(story.bench.store, on(day)).ask();
  }

  private List<Code> open(String day) {
    return flowering(day).open().stream().map(FloweringQuestion.Line::plant).toList();
  }

  private PairsQuestion.Pairs pairs(String day) {
    return PairsQuestion.of(story.bench.store).on(on(day));
  }

  @Test
  void anEmptyBenchHasNothingInFlower() {
    InventedBench empty = new InventedBench();
    assertThat(FloweringQuestion.of(empty.store, on("2025-05-01")).ask().open()).isEmpty();
    assertThat(PairsQuestion.of(empty.store).on(on("2025-05-01")).pairs()).isEmpty();
    assertThat(PollenQuestion.of(empty.store, on("2025-05-01")).ask()).isEmpty();
  }

  @Test
  void aPlantSeenOnceIsTakenToFlowerForAsLongAsUsual() {
    story.open("2025-05-01", laui);
    // 1 May and 21 days: 22 May.
    assertThat(open("2025-04-30")).isEmpty();
    assertThat(open("2025-05-01")).containsExactly(laui);
    assertThat(open("2025-05-22")).containsExactly(laui);
    assertThat(open("2025-05-23")).isEmpty();
    FloweringQuestion.Line line = flowering("2025-05-10").open().get(0);
    assertThat(line.last()).isEqualTo(on("2025-05-22"));
    assertThat(line.firstTime()).isTrue();
    assertThat(line.usual().whence()).isEqualTo(IntervalDays.Whence.COMMON_PRACTICE);
  }

  @Test
  void nobodyLookedAgainSoItIsPerhapsStillInFlower() {
    story.open("2025-05-01", laui);
    assertThat(flowering("2025-05-30").perhaps()).hasSize(1);
    // Twice 21 days after 1 May is 12 June.
    assertThat(flowering("2025-06-12").perhaps()).hasSize(1);
    assertThat(flowering("2025-06-13").perhaps()).isEmpty();
  }

  @Test
  void seenAgainItLastsLongerAndSeenOverItIsOver() {
    story.open("2025-05-01", laui);
    story.open("2025-05-20", laui);
    assertThat(open("2025-06-10")).containsExactly(laui);
    story.over("2025-06-01", laui);
    assertThat(open("2025-05-31")).containsExactly(laui);
    assertThat(open("2025-06-01")).isEmpty();
    assertThat(flowering("2025-06-02").perhaps()).isEmpty();
    assertThat(flowering("2025-05-31").open().get(0).since()).isEqualTo(day("2025-05-01"));
  }

  @Test
  void entriesWrittenInAnyOrderSayTheSame() {
    story.over("2025-06-01", laui);
    story.open("2025-05-20", laui);
    story.open("2025-05-01", laui);
    assertThat(open("2025-05-31")).containsExactly(laui);
    assertThat(open("2025-06-01")).isEmpty();
  }

  @Test
  void aSecondFloweringIsNotItsFirst() {
    story.open("2024-05-01", laui);
    story.open("2025-05-01", laui);
    assertThat(flowering("2025-05-02").open().get(0).firstTime()).isFalse();
    assertThat(open("2024-12-01")).isEmpty();
  }

  @Test
  void whatIsStatedOfTheTaxonHolds() {
    story.usually(Interval.FLOWERING, 60, LAUI);
    story.open("2025-05-01", laui, agavoides);
    assertThat(open("2025-06-20")).containsExactly(laui);
  }

  @Test
  void aHybridOfTwoSpeciesFlowersAsItsGenusDoes() {
    story.usually(Interval.FLOWERING, 60, LAUI);
    story.usually(Interval.FLOWERING, 30, "Echeveria");
    Code cross = story.cross(laui, agavoides, Count.of(3));
    story.bench.say(new Numbered(cross, 1, 1, day("2025-04"), null, null, null));
    story.open("2025-05-01", cross.seedling(1));
    assertThat(flowering("2025-05-02").open().get(0).usual().days()).isEqualTo(30);
  }

  @Test
  void aMonthCountsAsAllOfItsDays() {
    story.open("2025-05", laui);
    assertThat(open("2025-05-01")).containsExactly(laui);
    // 31 May and 21 days: 21 June.
    assertThat(open("2025-06-21")).containsExactly(laui);
    assertThat(open("2025-06-22")).isEmpty();
  }

  @Test
  void theDeadDoNotFlowerAfterTheirDeath() {
    story.open("2025-05-01", laui, agavoides);
    story.died(laui, "2025-05-10");
    assertThat(open("2025-05-05")).containsExactly(laui, agavoides);
    assertThat(open("2025-05-12")).containsExactly(agavoides);
    assertThat(pairs("2025-05-12").pairs()).isEmpty();
  }

  @Test
  void twoInFlowerCanBeCrossedAndWhatWasCrossedIsMarked() {
    story.open("2025-05-01", laui);
    story.open("2025-05-15", agavoides);
    Code cross = story.cross(laui, agavoides, Count.of(4));
    story.fruit(cross, Count.of(3), Count.of(1), null, null);
    assertThat(pairs("2025-05-16").pairs())
        .singleElement()
        .satisfies(
            pair -> {
              assertThat(pair.from()).isEqualTo(on("2025-05-15"));
              assertThat(pair.to()).isEqualTo(on("2025-05-22"));
              assertThat(pair.oneBears().set()).isEqualTo(3);
              assertThat(pair.otherBears().crosses()).isEmpty();
            });
  }

  @Test
  void anOffsetIsNotCrossedWithItsSourceAndSharesItsHistory() {
    Code offset = story.offset(laui);
    story.open("2025-05-01", laui, offset, agavoides);
    Code cross = story.cross(laui, agavoides, Count.of(4));
    story.fruit(cross, Count.of(3), Count.of(1), null, null);
    PairsQuestion.Pairs pairs = pairs("2025-05-02");
    assertThat(pairs.pairs()).hasSize(2);
    assertThat(pairs.leftOut()).isEqualTo(1);
    assertThat(PairsQuestion.of(story.bench.store).withOneClone(true).on(on("2025-05-02")).pairs())
        .hasSize(3);
    assertThat(PairsQuestion.of(story.bench.store).withPlant(offset).on(on("2025-05-02")).pairs())
        .singleElement()
        .satisfies(
            pair -> assertThat(pair.oneBears().set() + pair.otherBears().set()).isEqualTo(3));
  }

  @Test
  void aSeasonThatWentByTellsWhatFlowersTogether() {
    story.open("2024-05-01", laui);
    story.over("2024-05-11", laui);
    story.open("2024-05-08", agavoides);
    assertThat(PairsQuestion.of(story.bench.store).inYear(2024).pairs())
        .singleElement()
        .satisfies(
            pair -> {
              assertThat(pair.from()).isEqualTo(on("2024-05-08"));
              assertThat(pair.to()).isEqualTo(on("2024-05-10"));
            });
    assertThat(PairsQuestion.of(story.bench.store).inYear(2025).pairs()).isEmpty();
  }

  @Test
  void frozenPollenBridgesToAPlantThatFlowersLater() {
    story.open("2025-03-01", agavoides);
    story.over("2025-03-20", agavoides);
    story.pollen(agavoides, PollenKept.Step.GATHERED, "2025-03-05");
    story.pollen(agavoides, PollenKept.Step.FROZEN, "2025-03-07");
    story.pollen(laui, PollenKept.Step.GATHERED, "2025-03-05");
    BridgeQuestion.Bridge bridge = BridgeQuestion.of(story.bench.store, on("2025-06-01")).ask(laui);
    assertThat(bridge.leftOut()).isEqualTo(1);
    assertThat(bridge.inFlower()).isFalse();
    assertThat(bridge.lines())
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.pollen().plant()).isEqualTo(agavoides);
              // 26 days of March, 30 of April, 31 of May, 1 of June.
              assertThat(line.pollen().age()).isEqualTo(88);
              assertThat(line.pollen().old()).isFalse();
              assertThat(line.inFlower()).isFalse();
            });
    // A year and a day later it is old; fresh, while its plant flowers, it is not needed.
    assertThat(
            BridgeQuestion.of(story.bench.store, on("2026-03-06"))
                .ask(laui)
                .lines()
                .get(0)
                .pollen()
                .old())
        .isTrue();
    assertThat(
            BridgeQuestion.of(story.bench.store, on("2025-03-10"))
                .ask(laui)
                .lines()
                .get(0)
                .inFlower())
        .isTrue();
  }

  @Test
  void pollenIsBridgedToPlantsOnly() {
    Code cross = story.cross(laui, agavoides, Count.of(3));
    assertThatThrownBy(() -> BridgeQuestion.of(story.bench.store, on("2025-06-01")).ask(cross))
        .hasMessageContaining("is a cross; a seed parent is a plant");
    story.died(laui, "2025-05-01");
    assertThatThrownBy(() -> BridgeQuestion.of(story.bench.store, on("2025-06-01")).ask(laui))
        .hasMessageContaining("is not here on 2025-06-01");
  }

  @Test
  void usedUpPollenIsGone() {
    story.pollen(laui, PollenKept.Step.GATHERED, "2025-03-05");
    story.pollen(laui, PollenKept.Step.USED_UP, "2025-03-09");
    assertThat(PollenQuestion.of(story.bench.store, on("2025-04-01")).ask()).isEmpty();
    assertThat(PollenQuestion.of(story.bench.store, on("2025-04-01")).withGone(true).ask())
        .hasSize(1);
  }

  @Test
  void whoWasWatchedAndNotInFlowerCannotHavePollinated() {
    story.open("2025-05-01", laui);
    story.over("2025-05-11", laui);
    assertThat(
            FloweringQuestion.notInFlower(
                story.bench.store, List.of(laui, agavoides), on("2025-05-05")))
        .isEmpty();
    // Nobody watched the other, so nothing is said of it.
    assertThat(
            FloweringQuestion.notInFlower(
                story.bench.store, List.of(laui, agavoides), on("2025-06-05")))
        .containsExactly(laui);
  }
}

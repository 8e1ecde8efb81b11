package dev.filial.core.answer;

import static dev.filial.core.answer.FlowersStory.day;
import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static dev.filial.core.answer.SeasonFigure.CAME_UP;
import static dev.filial.core.answer.SeasonFigure.CROSSES;
import static dev.filial.core.answer.SeasonFigure.CROSSES_FAILED;
import static dev.filial.core.answer.SeasonFigure.CROSSES_SET;
import static dev.filial.core.answer.SeasonFigure.DIED;
import static dev.filial.core.answer.SeasonFigure.DISCARDED;
import static dev.filial.core.answer.SeasonFigure.EATEN;
import static dev.filial.core.answer.SeasonFigure.FAILED;
import static dev.filial.core.answer.SeasonFigure.FIRST_FLOWERS;
import static dev.filial.core.answer.SeasonFigure.FLOWERS;
import static dev.filial.core.answer.SeasonFigure.GIVEN;
import static dev.filial.core.answer.SeasonFigure.NUMBERED;
import static dev.filial.core.answer.SeasonFigure.OFFSETS;
import static dev.filial.core.answer.SeasonFigure.OPEN;
import static dev.filial.core.answer.SeasonFigure.PACKETS;
import static dev.filial.core.answer.SeasonFigure.PACKET_SEED;
import static dev.filial.core.answer.SeasonFigure.PLANTS;
import static dev.filial.core.answer.SeasonFigure.SEED;
import static dev.filial.core.answer.SeasonFigure.SEED_GIVEN;
import static dev.filial.core.answer.SeasonFigure.SEED_LOST;
import static dev.filial.core.answer.SeasonFigure.SET;
import static dev.filial.core.answer.SeasonFigure.SOWINGS;
import static dev.filial.core.answer.SeasonFigure.SOWINGS_COUNTED;
import static dev.filial.core.answer.SeasonFigure.SOWN;
import static dev.filial.core.answer.SeasonFigure.SOWN_COUNTED;
import static dev.filial.core.answer.SeasonFigure.TREATMENTS;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.answer.SeasonTelling.Line;
import dev.filial.core.answer.SeasonsQuestion.Seasons;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Joined;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.Protection;
import dev.filial.core.register.Treated;
import dev.filial.core.register.Treatment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a register says of each year, worked out by hand on an invented bench. */
class SeasonsQuestionTest {

  private final FlowersStory story = new FlowersStory();
  private final InventedBench bench = story.bench;
  private final Code laui = story.plant(LAUI);
  private final Code agavoides = story.plant(AGAVOIDES);

  private Seasons seasons() {
    return SeasonsQuestion.of(bench.store);
  }

  private Season year(int year) {
    return seasons().year(year).orElseThrow();
  }

  private void counted(Code pot, String day, Count up) {
    bench.say(new Counted(day(day), List.of(new Counted.Reading(pot, up, null)), null));
  }

  private void fate(
      Fate fate, @Nullable String day, @Nullable Count count, @Nullable String cause, Code... of) {
    bench.say(new FateRecorded(List.of(of), fate, day(day), count, null, cause, null));
  }

  private Code numberedIn2025() {
    return bench.seedling(story.cross(laui, agavoides, Count.of(1)));
  }

  @Test
  void whatCameStandsInTheYearItCameAndAFriendsPlantNeverCame() {
    story.packet(LAUI, "2024-05", "40");
    story.packet(LAUI, "2024-06", "~60");
    story.packet(LAUI, null, "?");
    story.offset(laui);

    assertThat(year(2024).of(PLANTS)).isEqualTo(SeasonSum.of(2));
    assertThat(year(2024).of(OFFSETS)).isEqualTo(SeasonSum.of(1));
    assertThat(year(2024).of(PACKETS)).isEqualTo(SeasonSum.of(2));
    assertThat(year(2024).of(PACKET_SEED)).isEqualTo(new SeasonSum(40, 60, 1, 0));
    Season undated = seasons().undated();
    assertThat(undated).isNotNull();
    assertThat(undated.figures())
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(PACKETS, SeasonSum.of(1), PACKET_SEED, new SeasonSum(0, 0, 0, 1)));
  }

  @Test
  void oneCrossSetOneFailedAndOfTwoNobodyKnows() {
    Code set = story.cross(laui, agavoides, Count.of(6));
    story.fruit(set, Count.of(4), Count.of(2), null, null);
    Code failed = story.cross(agavoides, laui, Count.of(5));
    story.fruit(failed, Count.of(0), Count.of(4), null, Count.of(1));
    Code partly = story.cross(agavoides, laui, Count.of(5));
    story.fruit(partly, null, Count.of(3), null, null);
    story.cross(laui, laui, Count.about(10));
    story.pollinated(laui, new Pollen.Open(List.of(), Fraction.ONE), null, Protection.NONE);

    Season season = year(2025);
    assertThat(season.of(CROSSES)).isEqualTo(SeasonSum.of(4));
    assertThat(season.of(CROSSES_SET)).isEqualTo(SeasonSum.of(1));
    assertThat(season.of(CROSSES_FAILED)).isEqualTo(SeasonSum.of(1));
    assertThat(season.crossesNotKnown()).isEqualTo(2);
    assertThat(season.of(OPEN)).isEqualTo(SeasonSum.of(1));
    assertThat(season.of(FLOWERS)).isEqualTo(new SeasonSum(16, 10, 1, 0));
    assertThat(season.of(SET)).isEqualTo(SeasonSum.of(4));
    assertThat(season.of(FAILED)).isEqualTo(SeasonSum.of(9));
    assertThat(season.of(EATEN)).isEqualTo(SeasonSum.of(1));
  }

  @Test
  void aCrossThatGaveSeedSetThoughNobodyWroteOfItsFlowers() {
    story.harvest(story.cross(laui, agavoides, null), "2026-01-10", "many");
    story.harvest(story.cross(agavoides, laui, null), "2026-01-10", "30");

    assertThat(year(2025).of(CROSSES_SET)).isEqualTo(SeasonSum.of(2));
    assertThat(year(2025).of(FLOWERS)).isEqualTo(new SeasonSum(0, 0, 0, 2));
    assertThat(year(2026).of(SEED)).isEqualTo(new SeasonSum(30, 0, 0, 1));
    assertThat(year(2026).of(CROSSES)).isEqualTo(SeasonSum.NONE);
  }

  @Test
  void whatCameUpIsToldOfTheYearOfTheSowingAndOnlyWhereAllWasCounted() {
    Code lot = bench.harvest(story.cross(laui, agavoides, Count.of(3)));
    Code counted = bench.sowing(lot, "2025-12-20", 0);
    Code guessed = bench.sowing(lot, "2025-12-20", 0);
    Code later = bench.sowing(lot, "2026-03-01", 0);
    counted(counted, "2026-01-20", Count.of(31));
    counted(guessed, "2026-01-20", Count.about(30));

    assertThat(year(2025).of(SOWINGS)).isEqualTo(SeasonSum.of(2));
    assertThat(year(2025).of(SOWN)).isEqualTo(SeasonSum.of(100));
    assertThat(year(2025).of(SOWINGS_COUNTED)).isEqualTo(SeasonSum.of(1));
    assertThat(year(2025).of(SOWN_COUNTED)).isEqualTo(SeasonSum.of(50));
    assertThat(year(2025).of(CAME_UP)).isEqualTo(SeasonSum.of(31));
    assertThat(year(2025).sowingsNotCounted()).isEqualTo(1);
    assertThat(year(2026).of(SOWINGS)).isEqualTo(SeasonSum.of(1));
    assertThat(year(2026).of(CAME_UP)).isEqualTo(SeasonSum.NONE);
    assertThat(later).isNotNull();
  }

  @Test
  void lossesAreToldByTheirCause() {
    Code cross = story.cross(laui, agavoides, Count.of(3));
    Code pot = bench.pot(cross);
    Code seedling = bench.seedling(cross);
    fate(Fate.DEAD, "2026-02-01", Count.of(3), "damping off", pot);
    fate(Fate.DEAD, "2026-03-01", Count.few(), "damping off", pot);
    fate(Fate.DEAD, "2026-04-01", null, null, seedling);
    fate(Fate.DEAD, "2026-05-01", Count.about(4), "aphids", pot);

    Season season = year(2026);
    assertThat(season.of(DIED)).isEqualTo(new SeasonSum(4, 4, 1, 1));
    assertThat(season.losses())
        .containsExactly(
            new Season.Loss("aphids", new SeasonSum(0, 4, 1, 0)),
            new Season.Loss("damping off", new SeasonSum(3, 0, 0, 1)),
            new Season.Loss(null, SeasonSum.of(1)));
    assertThat(SeasonTelling.lines(season))
        .contains(
            new Line(
                "deaths written down",
                "4 counted, about 4 guessed, 1 without a number (aphids about 4 guessed; damping"
                    + " off 3 counted, 1 without a number; of what, nobody wrote 1)"));
  }

  @Test
  void aPlantDiesOnceAndNotAtAllIfItIsHereAgain() {
    Code one = numberedIn2025();
    Code other = numberedIn2025();
    fate(Fate.DEAD, "2026-02-01", null, null, one);
    fate(Fate.DEAD, "2027-03-01", null, null, one);
    fate(Fate.DEAD, "2026-02-01", null, null, other);
    fate(Fate.ALIVE, "2026-03-01", null, null, other);

    assertThat(year(2026).of(DIED)).isEqualTo(SeasonSum.of(1));
    assertThat(seasons().year(2027)).isEmpty();
  }

  @Test
  void whatWasThrownOutGivenAwayAndKeptAreThreeThings() {
    Code lot = bench.harvest(story.cross(laui, agavoides, Count.of(3)));
    fate(Fate.DISCARDED, "2026-02-01", null, null, numberedIn2025());
    fate(Fate.GIVEN, "2026-02-01", null, null, numberedIn2025(), numberedIn2025());
    fate(Fate.KEPT, "2026-02-01", null, null, numberedIn2025());
    fate(Fate.GIVEN, "2026-02-01", Count.of(20), null, lot);

    Season season = year(2026);
    assertThat(season.of(DISCARDED)).isEqualTo(SeasonSum.of(1));
    assertThat(season.of(GIVEN)).isEqualTo(SeasonSum.of(2));
    assertThat(season.of(SEED_GIVEN)).isEqualTo(SeasonSum.of(20));
    assertThat(year(2025).of(NUMBERED)).isEqualTo(SeasonSum.of(4));
  }

  @Test
  void aSeedLotGivenAwayWholeIsAsManySeedsAsWereLeftInIt() {
    Code cross = story.cross(laui, agavoides, Count.of(3));
    Code counted = story.harvest(cross, "2025-06-01", "200");
    bench.sowing(counted, "2025-07-01", 0);
    fate(Fate.GIVEN, "2026-02-01", Count.of(20), null, counted);
    fate(Fate.GIVEN, "2026-02-02", null, null, counted);
    fate(Fate.GIVEN, "2026-02-03", null, null, counted);
    Code guessed = story.harvest(cross, "2025-06-01", "~90");
    fate(Fate.GIVEN, "2026-02-02", null, null, guessed);
    Code many = story.harvest(cross, "2025-06-01", "many");
    fate(Fate.GIVEN, "2026-02-02", null, null, many);
    Code lost = story.harvest(cross, "2025-06-01", "30");
    fate(Fate.DEAD, "2026-02-02", null, "mice", lost);

    assertThat(year(2026).of(SEED_GIVEN))
        .as("20 and the 130 that were left of 200, 50 of them sown; about 90; and many")
        .isEqualTo(new SeasonSum(150, 90, 1, 1));
    assertThat(year(2026).of(SEED_LOST)).isEqualTo(SeasonSum.of(30));
  }

  @Test
  void aPlantFlowersForTheFirstTimeOnceAndAParentMustHaveFlowered() {
    Code third = story.plant(LAUI);
    Code fourth = story.plant(LAUI);
    story.cross(laui, agavoides, Count.of(1));
    story.open("2026-05-01", laui, agavoides, third);
    story.open("2027-05-01", third);
    story.pollen(fourth, PollenKept.Step.GATHERED, "2027-05-01");

    assertThat(year(2025).of(FIRST_FLOWERS)).isEqualTo(SeasonSum.of(2));
    assertThat(year(2026).of(FIRST_FLOWERS)).isEqualTo(SeasonSum.of(1));
    assertThat(year(2027).of(FIRST_FLOWERS)).isEqualTo(SeasonSum.of(1));
  }

  @Test
  void twoRecordsOfOnePlantCameOnce() {
    bench.say(new Joined(laui, agavoides, "one label, two entries"));
    story.open("2026-05-01", laui);
    story.open("2026-05-02", agavoides);

    assertThat(year(2024).of(PLANTS)).isEqualTo(SeasonSum.of(1));
    assertThat(year(2026).of(FIRST_FLOWERS)).isEqualTo(SeasonSum.of(1));
  }

  @Test
  void aTreatmentOfAWholeBagIsOneAndAGuessIsMarked() {
    Code cross = story.cross(laui, agavoides, Count.of(3));
    long crossed = bench.store.item(cross).orElseThrow().entry();
    bench.say(
        new Treated(
            List.of(bench.pot(cross), bench.pot(cross)),
            Treatment.FUNGICIDE,
            null,
            null,
            null,
            day("2025-09-01"),
            null));
    bench.say(new Doubted(crossed, "Klara", null));

    assertThat(year(2025).of(TREATMENTS)).isEqualTo(SeasonSum.of(1));
    assertThat(year(2025).guesses()).isEqualTo(1);
    assertThat(year(2024).guesses()).isZero();
  }

  @Test
  void whatIsInNoSumIsSaidInOneSentence() {
    Code cross = story.cross(laui, agavoides, Count.of(3));
    story.harvest(cross, "2025-06-01", "~50");
    story.harvest(cross, "2025-06-02", "few");
    Code lot = story.harvest(cross, "2025-06-03", "100");
    bench.sowing(lot, "2025-07-01", 0);

    assertThat(SeasonTelling.leftOut(year(2025)))
        .hasValue(
            "In no sum, since nobody counted: fruit harvested (3 without a number); seed harvested"
                + " (about 50 guessed, 1 without a number); came up (1 sowing not counted"
                + " exactly).");
    assertThat(SeasonTelling.leftOut(year(2024))).isEmpty();
  }

  /** A harvest of so many seeds in a year from 2025 on; 0 for one nobody dated. */
  private long harvest(Code cross, int year, Count seeds) {
    return bench.say(
        new Harvested(
            NextCode.in(bench.store).lot(cross),
            year == 0 ? null : day(String.valueOf(2025 + year)),
            null,
            false,
            seeds,
            null,
            null,
            null,
            null));
  }

  private static Map<SeasonFigure, SeasonSum> without(Season season, Set<SeasonFigure> figures) {
    Map<SeasonFigure, SeasonSum> rest = new EnumMap<>(SeasonFigure.class);
    rest.putAll(season.figures());
    rest.keySet().removeAll(figures);
    return rest;
  }

  @Property(tries = 50)
  void amendingACountMovesThatSumOfThatYearAlone(
      @ForAll @IntRange(max = 500) int before, @ForAll @IntRange(max = 500) int after) {
    SeasonsQuestionTest fresh = new SeasonsQuestionTest();
    Code cross = fresh.story.cross(fresh.laui, fresh.agavoides, Count.of(3));
    fresh.harvest(cross, 1, Count.of(7));
    long entry = fresh.harvest(cross, 1, Count.of(before));
    Seasons was = fresh.seasons();
    Harvested said = (Harvested) fresh.bench.store.effective(entry).orElseThrow();
    fresh.bench.say(
        new Amended(
            entry,
            new Harvested(
                said.lot(), said.date(), null, false, Count.of(after), null, null, null, null),
            "counted again"));
    Seasons is = fresh.seasons();

    Season year = is.year(2026).orElseThrow();
    assertThat(year.of(SEED)).isEqualTo(SeasonSum.of(7L + after));
    assertThat(without(year, EnumSet.of(SEED)))
        .isEqualTo(without(was.year(2026).orElseThrow(), EnumSet.of(SEED)));
    assertThat(is.year(2025)).isEqualTo(was.year(2025));
    assertThat(is.year(2024)).isEqualTo(was.year(2024));
  }

  @Property(tries = 50)
  void strikingAnEntryIsAsIfItHadNeverBeenMade(
      @ForAll @IntRange(max = 3) int year, @ForAll @IntRange(max = 500) int seeds) {
    SeasonsQuestionTest fresh = new SeasonsQuestionTest();
    Code cross = fresh.story.cross(fresh.laui, fresh.agavoides, Count.of(3));
    fresh.harvest(cross, 1, Count.of(7));
    Seasons was = fresh.seasons();
    long entry = fresh.harvest(cross, year, Count.about(seeds));
    assertThat(fresh.seasons()).isNotEqualTo(was);
    fresh.bench.say(new Amended(entry, null, "never harvested"));

    assertThat(fresh.seasons()).isEqualTo(was);
  }

  @Property(tries = 50)
  void theOrderOfEntryDoesNotMatterAndYearsAndTheUndatedComeToAll(
      @ForAll @Size(min = 1, max = 12) List<@IntRange(max = 399) Integer> harvests,
      @ForAll long seed) {
    List<Integer> shuffled = new ArrayList<>(harvests);
    Collections.shuffle(shuffled, new Random(seed));
    Seasons one = harvested(harvests);

    assertThat(harvested(shuffled)).isEqualTo(one);
    long counted = harvests.stream().filter(number -> number % 2 == 0).mapToLong(n -> n / 4).sum();
    long guessed = harvests.stream().filter(number -> number % 2 == 1).mapToLong(n -> n / 4).sum();
    long guesses = harvests.stream().filter(number -> number % 2 == 1).count();
    assertThat(one.all().of(SEED)).isEqualTo(new SeasonSum(counted, guessed, guesses, 0));
    assertThat(one.all().of(SeasonFigure.HARVESTS)).isEqualTo(SeasonSum.of(harvests.size()));
  }

  /** Harvests by number: the year by its rest by four, the odd ones guessed, a quarter of it. */
  private static Seasons harvested(List<Integer> numbers) {
    SeasonsQuestionTest fresh = new SeasonsQuestionTest();
    Code cross = fresh.story.cross(fresh.laui, fresh.agavoides, Count.of(3));
    for (int number : numbers) {
      fresh.harvest(
          cross, number % 4, number % 2 == 0 ? Count.of(number / 4) : Count.about(number / 4));
    }
    return fresh.seasons();
  }
}

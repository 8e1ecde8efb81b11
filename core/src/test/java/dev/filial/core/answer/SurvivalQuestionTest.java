package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.answer.GerminationQuestion.LeftOut;
import dev.filial.core.answer.SurvivalQuestion.Survival;
import dev.filial.core.answer.SurvivalQuestion.Week;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Fate;
import dev.filial.core.register.Noted;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How seedlings live on, on small tables that can be reckoned by hand. */
class SurvivalQuestionTest {

  private final SownBench sown = new SownBench();
  private final InventedBench bench = sown.bench;
  private final Code cross = bench.cross(bench.plant(LAUI), bench.plant(AGAVOIDES));
  private final Code lot = bench.harvest(cross);

  private Survival ask() {
    return SurvivalQuestion.of(bench.store).ask(cross);
  }

  private static String row(Week week) {
    return week.week()
        + ": "
        + week.before()
        + " +"
        + week.cameUp()
        + " died "
        + week.died()
        + " seen "
        + week.left();
  }

  @Test
  void whoIsMissingAtACountHasDied() {
    Code sowing = sown.sown(lot, "30");
    sown.counted(sowing, "2025-10-11", "20", "20"); // day 10, week 2
    sown.counted(sowing, "2025-10-25", "24", "21"); // day 24, week 4: 4 more up, 3 missing
    sown.counted(sowing, "2025-11-15", null, "18"); // day 45, week 7: 3 more missing

    Survival found = ask();
    assertThat(found.seedlings()).isEqualTo(24);
    assertThat(found.died()).isEqualTo(6);
    assertThat(found.weeks().stream().map(SurvivalQuestionTest::row))
        .containsExactly(
            "2: 0 +20 died 0 seen 0", "4: 20 +4 died 3 seen 0", "7: 21 +0 died 3 seen 18");
    // 21/24 past week 4, of these 18/21 past week 7: 18/24 in all.
    assertThat(found.weeks().get(1).surviving()).isCloseTo(21.0 / 24, within(1e-12));
    assertThat(found.weeks().get(2).surviving()).isCloseTo(0.75, within(1e-12));
    // Greenwood: 0.75 √(3/(24·21) + 3/(21·18)).
    assertThat(found.weeks().get(2).error())
        .isCloseTo(0.75 * Math.sqrt(3.0 / 504 + 3.0 / 378), within(1e-12));
    assertThat(found.weeks().get(0).lower()).isNull();
  }

  @Test
  void givenAwayAndThrownOutAreNotDead() {
    sown.sown(lot, "2025-10-01", "30", 1, null);
    Code pot = cross.group(1);
    sown.counted(pot, "2025-10-11", "20", "20");
    sown.left(pot, Fate.GIVEN, "2025-10-18", "5"); // day 17, week 3
    sown.left(pot, Fate.DISCARDED, "2025-10-18", "3");
    sown.left(pot, Fate.DEAD, "2025-10-20", "2"); // day 19, week 3
    sown.counted(pot, "2025-11-15", null, "9"); // day 45: 10 stood there, 1 is missing

    Survival found = ask();
    assertThat(found.weeks().stream().map(SurvivalQuestionTest::row))
        .containsExactly(
            "2: 0 +20 died 0 seen 0", "3: 20 +0 died 2 seen 8", "7: 10 +0 died 1 seen 9");
    // 10 of the 12 that were left live past day 19, 9 of 10 past day 45.
    assertThat(found.weeks().get(2).surviving()).isCloseTo(10.0 / 12 * 0.9, within(1e-12));
  }

  @Test
  void seedlingsAreFollowedIntoOtherPotsAndUnderTheirNumbers() {
    Code sowing = sown.sown(lot, "30");
    sown.counted(sowing, "2025-10-11", "20", "20");
    Code pot = NextCode.in(bench.store).group(cross);
    bench.say(
        new Potted(
            pot, sowing, PartialDate.parse("2025-11-01"), Count.of(8), null, null)); // day 31
    bench.say(new Numbered(sowing, 1, 2, PartialDate.parse("2025-11-01"), null, null, null));
    sown.counted(sowing, "2025-11-15", null, "10"); // day 45: all 10 there
    sown.counted(pot, "2025-11-15", null, "6"); // 2 of 8 missing
    sown.left(cross.seedling(1), Fate.DEAD, "2025-11-20", null); // day 50, week 8
    bench.say(new Noted(cross.seedling(2), "first scales", PartialDate.parse("2026-03-01")));

    Survival found = ask();
    assertThat(found.seedlings()).isEqualTo(20);
    assertThat(found.died()).isEqualTo(3);
    assertThat(found.weeks().stream().map(SurvivalQuestionTest::row))
        .containsExactly(
            "2: 0 +20 died 0 seen 0",
            "7: 20 +0 died 2 seen 16",
            "8: 2 +0 died 1 seen 0",
            "22: 1 +0 died 0 seen 1");
    assertThat(found.leftOut()).isEmpty();
  }

  @Test
  void whatCannotBeFollowedIsNamed() {
    Code onlyUp = sown.sown(lot, "30");
    sown.counted(onlyUp, "2025-11-01", "20", null);
    Code someMonth = sown.sown(lot, "2025-10", "30", 0, null);
    sown.counted(someMonth, "2025-12-01", "20", "20");
    Code uncounted = sown.sown(lot, "30");
    sown.counted(uncounted, "2025-11-01", "20", "20");
    bench.say(
        new Potted(
            NextCode.in(bench.store).group(cross),
            uncounted,
            PartialDate.parse("2025-11-20"),
            Count.few(),
            null,
            null));
    sown.counted(uncounted, "2025-12-01", null, "15");

    Survival found = ask();
    // Nobody knows whether the 5 that are gone were potted on or died: last seen on day 50.
    assertThat(found.weeks().stream().map(SurvivalQuestionTest::row))
        .containsExactly("5: 0 +20 died 0 seen 0", "8: 20 +0 died 0 seen 20");
    assertThat(found.leftOut())
        .containsExactly(
            new LeftOut("the day of sowing is not known to the day", List.of(someMonth)),
            new LeftOut(
                "what is alive was never counted to the number, on a day that is known",
                List.of(onlyUp)),
            new LeftOut(
                "not followed further: some left on a day or in a number not known",
                List.of(uncounted)));
  }

  @Test
  void potsCountedAndOneOfTheSowingTakenIsNotFollowed() {
    Code sowing = sown.sown(lot, "2025-10-01", "30", 2, null);
    sown.counted(cross.group(1), "2025-11-01", "10", "10");
    sown.counted(cross.group(2), "2025-11-01", "12", "11");
    bench.say(
        new Potted(
            NextCode.in(bench.store).group(cross),
            sowing,
            PartialDate.parse("2025-11-10"),
            Count.of(3),
            null,
            null));
    sown.counted(cross.group(1), "2025-12-01", null, "8");

    assertThat(ask().weeks()).isEmpty();
    assertThat(ask().leftOut())
        .containsExactly(
            new LeftOut(
                "its pots were counted, but some left that are entered of the sowing as a whole",
                List.of(sowing)));
  }

  @Test
  void numberedSeedlingsThatLiveAreFollowedAsLongAsThoseThatDie() {
    Code sowing = sown.sown(lot, "30");
    sown.counted(sowing, "2025-10-31", "12", "12"); // day 30
    bench.say(new Numbered(sowing, 1, 10, PartialDate.parse("2025-10-31"), null, null, null));
    sown.left(cross.seedling(3), Fate.DEAD, "2026-11-05", null); // day 400, week 58

    Survival found = ask();
    // The 2 in the pot were last seen on day 30; of the 10 that were numbered 1 died: 9/10.
    assertThat(found.weeks().stream().map(SurvivalQuestionTest::row))
        .containsExactly("5: 0 +12 died 0 seen 2", "58: 10 +0 died 1 seen 9");
    assertThat(found.weeks().get(1).surviving()).isCloseTo(0.9, within(1e-12));
    assertThat(found.notes())
        .containsExactly(
            "numbered seedlings that no entry says anything else of are taken to be alive on"
                + " 2026-11-05, the last day in the register");
  }

  @Test
  void whoWasMissedAtACountAndThenEnteredAsDeadDiedOnce() {
    sown.sown(lot, "2025-10-01", "30", 1, null);
    Code pot = cross.group(1);
    sown.counted(pot, "2025-10-31", "21", "20");
    sown.left(pot, Fate.DEAD, "2025-10-31", "1");
    sown.counted(pot, "2025-11-30", "21", "20");

    // 21 up, 20 alive at both counts: the one that died is the one that was missed.
    assertThat(ask().seedlings()).isEqualTo(21);
    assertThat(ask().died()).isEqualTo(1);
  }

  @Test
  void whoDiedAfterOneWasMissedIsAnotherIfTheNextCountMissesTwo() {
    sown.sown(lot, "2025-10-01", "30", 1, null);
    Code pot = cross.group(1);
    sown.counted(pot, "2025-10-31", "21", "20");
    sown.left(pot, Fate.DEAD, "2025-11-05", "1");
    sown.counted(pot, "2025-11-30", "21", "19");

    assertThat(ask().seedlings()).isEqualTo(21);
    assertThat(ask().died()).isEqualTo(2);
  }

  /**
   * Each death is entered by itself, on the day it was seen, after a count had missed all three.
   */
  @Test
  void severalWhoWereMissedAtOneCountAreEnteredOneByOneAndDiedOnce() {
    sown.sown(lot, "2025-10-01", "30", 1, null);
    Code pot = cross.group(1);
    sown.counted(pot, "2025-10-31", "21", "18");
    sown.left(pot, Fate.DEAD, "2025-11-02", "1");
    sown.left(pot, Fate.DEAD, "2025-11-05", "2");
    sown.counted(pot, "2025-11-30", "21", "18");

    assertThat(ask().seedlings()).isEqualTo(21);
    assertThat(ask().died()).isEqualTo(3);
  }

  @Test
  void ofSeveralEnteredAsDeadTheNextCountShowsHowManyAreNew() {
    sown.sown(lot, "2025-10-01", "30", 1, null);
    Code pot = cross.group(1);
    sown.counted(pot, "2025-10-31", "21", "18");
    sown.left(pot, Fate.DEAD, "2025-11-02", "1");
    sown.left(pot, Fate.DEAD, "2025-11-05", "2");
    sown.counted(pot, "2025-11-30", "21", "17");

    // 21 came up and 17 live: four died, of whom the first count had missed three.
    assertThat(ask().seedlings()).isEqualTo(21);
    assertThat(ask().died()).isEqualTo(4);
  }

  @Test
  void whoDiesAfterACountThatMissedNobodyWasNotMissedBefore() {
    sown.sown(lot, "2025-10-01", "30", 1, null);
    Code pot = cross.group(1);
    sown.counted(pot, "2025-10-15", null, "10");
    sown.counted(pot, "2025-10-22", null, "8"); // 2 are missing
    sown.counted(pot, "2025-10-29", null, "12"); // 4 more have come up, and nobody is missing
    sown.left(pot, Fate.DEAD, "2025-10-31", "2");
    sown.counted(pot, "2025-11-05", null, "11"); // and one more

    assertThat(ask().seedlings()).isEqualTo(15);
    assertThat(ask().died()).isEqualTo(4);
  }
}

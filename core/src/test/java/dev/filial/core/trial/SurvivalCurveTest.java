package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.trial.SurvivalCurve.Day;
import dev.filial.core.trial.SurvivalCurve.Event;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Values by R 4.2.2 and its package survival, in core/src/test/reference/germination.R. */
class SurvivalCurveTest {

  private static Day day(SurvivalCurve curve, int day) {
    return curve.days().stream().filter(one -> one.day() == day).findFirst().orElseThrow();
  }

  private static void is(
      Day day, int atRisk, double surviving, double error, double lower, double upper) {
    assertThat(day.atRisk()).isEqualTo(atRisk);
    assertThat(day.surviving()).isCloseTo(surviving, within(1e-9));
    assertThat(day.error()).isCloseTo(error, within(1e-9));
    assertThat(day.interval(0.95).orElseThrow().lower()).isCloseTo(lower, within(1e-9));
    assertThat(day.interval(0.95).orElseThrow().upper()).isCloseTo(upper, within(1e-9));
  }

  /** Weeks in remission under 6-MP: Freireich and others 1963, Blood 21:699-716 (from memory). */
  @Test
  void theTextbookCurveOfTwentyOnePatients() {
    int[] weeks = {6, 6, 6, 6, 7, 9, 10, 10, 11, 13, 16, 17, 19, 20, 22, 23, 25, 32, 32, 34, 35};
    int[] died = {1, 1, 1, 0, 1, 0, 1, 0, 0, 1, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0};
    List<Event> events = new ArrayList<>();
    events.add(new Event(0, 21, 0, 0));
    for (int i = 0; i < weeks.length; i++) {
      events.add(new Event(weeks[i], 0, died[i], 1 - died[i]));
    }
    SurvivalCurve curve = SurvivalCurve.of(events);

    is(day(curve, 6), 21, 0.8571428571, 0.0763603548, 0.6197179553, 0.9515517476);
    is(day(curve, 13), 12, 0.6901960784, 0.1068147078, 0.4316102225, 0.8490659633);
    is(day(curve, 23), 6, 0.4481792717, 0.1345914568, 0.1880520060, 0.6801426285);
    assertThat(day(curve, 35).surviving()).isEqualTo(day(curve, 23).surviving());
  }

  @Test
  void seedlingsThatCameUpLaterCountFromThen() {
    SurvivalCurve curve =
        SurvivalCurve.of(
            List.of(
                new Event(10, 15, 3, 0),
                new Event(20, 5, 2, 2),
                new Event(30, 0, 1, 5),
                new Event(45, 0, 1, 6)));

    is(day(curve, 10), 15, 0.8, 0.1032795559, 0.4998239817, 0.9307172941);
    is(day(curve, 20), 17, 0.7058823529, 0.1105101690, 0.4314778793, 0.8655994216);
    is(day(curve, 30), 13, 0.6515837104, 0.1145751369, 0.3837796111, 0.8256453204);
    is(day(curve, 45), 7, 0.5585003232, 0.1306575478, 0.2780820526, 0.7671166390);
  }

  @Test
  void weeksSumTheirDays() {
    SurvivalCurve curve =
        SurvivalCurve.of(
            List.of(
                new Event(7, 10, 0, 0),
                new Event(8, 4, 2, 0),
                new Event(14, 0, 3, 1),
                new Event(28, 0, 0, 8)));

    assertThat(curve.weeks())
        .extracting(
            SurvivalCurve.Week::week,
            SurvivalCurve.Week::before,
            SurvivalCurve.Week::entered,
            SurvivalCurve.Week::died,
            SurvivalCurve.Week::left)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(1, 0, 10, 0, 0),
            org.assertj.core.groups.Tuple.tuple(2, 10, 4, 5, 1),
            org.assertj.core.groups.Tuple.tuple(4, 8, 0, 0, 8));
    // 12/14 of those under watch live past day 8, 9/12 of those past day 14.
    assertThat(curve.weeks().get(1).end().surviving()).isCloseTo(9.0 / 14, within(1e-12));
  }

  @Test
  void whereNoneDiedOrAllDidThereIsNoInterval() {
    assertThat(SurvivalCurve.of(List.of(new Event(7, 5, 0, 5))).days().get(0).interval(0.95))
        .isEmpty();
    assertThat(SurvivalCurve.of(List.of(new Event(7, 5, 5, 0))).days().get(0).interval(0.95))
        .isEmpty();
  }

  @Test
  void moreCannotDieThanWereThere() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SurvivalCurve.of(List.of(new Event(7, 5, 4, 2))))
        .withMessageContaining("4 died and 2 left on day 7, of 5 under watch");
  }

  @Property
  void withNobodyLostFromSightItIsTheShareThatLives(
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 0, max = 5) Integer> died,
      @ForAll @IntRange(min = 1, max = 30) int spared) {
    int all = died.stream().mapToInt(Integer::intValue).sum() + spared;
    List<Event> events = new ArrayList<>();
    events.add(new Event(0, all, 0, 0));
    for (int i = 0; i < died.size(); i++) {
      events.add(new Event(i + 1, 0, died.get(i), 0));
    }
    SurvivalCurve curve = SurvivalCurve.of(events);
    double share = (double) spared / all;
    Day last = curve.days().get(curve.days().size() - 1);

    assertThat(last.surviving()).isCloseTo(share, within(1e-9));
    // Greenwood's error is then that of a counted share.
    assertThat(last.error()).isCloseTo(Math.sqrt(share * (1 - share) / all), within(1e-9));
  }

  @Test
  void theFirstToDieAloneDoesNotEndTheCurve() {
    SurvivalCurve curve =
        SurvivalCurve.of(
            List.of(
                new Event(5, 1, 0, 0),
                new Event(6, 0, 1, 0),
                new Event(18, 21, 1, 0),
                new Event(79, 0, 0, 20)));

    // Of the 21 alive on day 18 there were 20 left: 20/21, and no more died.
    assertThat(curve.conditionalFrom()).hasValue(18);
    assertThat(day(curve, 6).surviving()).isNaN();
    assertThat(day(curve, 6).interval(0.95)).isEmpty();
    assertThat(day(curve, 79).surviving()).isCloseTo(20.0 / 21, within(1e-12));
  }

  @Property
  void neverNoneWhereSomebodyLivesLater(
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 0, max = 3) Integer> entered,
      @ForAll @Size(min = 8, max = 8) List<@IntRange(min = 0, max = 3) Integer> died) {
    List<Event> events = new ArrayList<>();
    int watched = 0;
    for (int i = 0; i < entered.size(); i++) {
      int dead = Math.min(watched + entered.get(i), died.get(i));
      watched += entered.get(i) - dead;
      events.add(new Event(i, entered.get(i), dead, 0));
    }
    events.add(new Event(entered.size(), 1, 0, watched + 1));

    assertThat(SurvivalCurve.of(events).days()).noneMatch(day -> day.surviving() == 0);
  }
}

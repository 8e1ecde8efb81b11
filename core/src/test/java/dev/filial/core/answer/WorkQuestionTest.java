package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Interval;
import dev.filial.core.register.IntervalStated;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Promised;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Tended;
import dev.filial.core.register.Treated;
import dev.filial.core.register.Treatment;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is due on a bench, day by day. */
class WorkQuestionTest {

  private final InventedBench bench = new InventedBench();
  private Code packet = Code.parse("24-001W");

  @BeforeEach
  void aPacketOfSeed() {
    packet = bench.packet(LAUI);
  }

  private static PartialDate day(String text) {
    return PartialDate.parse(text);
  }

  /** A sowing of 20 seeds in each of so many pots, of that day. */
  private List<Code> sown(String date, boolean closed, int pots) {
    Code sowing = NextCode.in(bench.store).sowing(packet);
    Code first = NextCode.in(bench.store).group(packet);
    List<Code> codes =
        IntStream.range(0, pots).mapToObj(i -> packet.group(first.part().number() + i)).toList();
    bench.say(
        new Sown(
            sowing,
            packet.lot(1),
            day(date),
            Count.of(20L * Math.max(1, pots)),
            null,
            null,
            false,
            null,
            closed,
            null,
            null,
            List.of(),
            codes.stream().map(pot -> new Sown.Filled(pot, Count.of(20), null)).toList(),
            "shelf",
            null));
    return pots == 0 ? List.of(sowing) : codes;
  }

  private void up(String date, Code pot, int number) {
    bench.say(
        new Counted(day(date), List.of(new Counted.Reading(pot, Count.of(number), null)), null));
  }

  private void tended(Tended.Care care, String date, Code... codes) {
    bench.say(new Tended(Arrays.asList(codes), care, null, null, day(date), null));
  }

  /** The list of a day without the tags, as {@code COUNT 24-001W P1 2026-04-08}. */
  private List<String> due(String date) {
    return due(WorkQuestion.of(bench.store, LocalDate.parse(date)));
  }

  private static List<String> due(WorkQuestion question) {
    List<String> lines = new ArrayList<>();
    for (Task task : question.ask().tasks()) {
      if (task.work() != Task.Work.REWRITE_TAG) {
        lines.add(
            task.work()
                + " "
                + String.join(", ", task.codes().stream().map(Code::text).toList())
                + " "
                + task.due());
      }
    }
    return lines;
  }

  @Test
  void nothingIsDueOnAnEmptyBench() {
    assertThat(due("2026-06-01")).isEmpty();
  }

  @Test
  void aSowingOfWhichNothingCameUpIsWonderedAboutAfterThreeWeeks() {
    Code sowing = sown("2026-04-01", false, 0).get(0);

    assertThat(due("2026-04-21")).isEmpty();
    // 1 April and 21 days.
    assertThat(due("2026-04-22")).containsExactly("NOTHING_UP " + sowing.text() + " 2026-04-22");
    up("2026-04-20", sowing, 0);
    assertThat(due("2026-04-22")).containsExactly("NOTHING_UP " + sowing.text() + " 2026-04-22");
    up("2026-04-22", sowing, 1);
    assertThat(due("2026-04-22")).isEmpty();
  }

  @Test
  void aSowingThatComesUpIsCountedEveryWeekUntilTwoCountsAreAlike() {
    Code sowing = sown("2026-04-01", false, 0).get(0);
    up("2026-04-10", sowing, 4);
    assertThat(due("2026-04-16")).isEmpty();
    assertThat(due("2026-04-17")).containsExactly("COUNT " + sowing.text() + " 2026-04-17");
    up("2026-04-17", sowing, 9);
    assertThat(due("2026-04-24")).containsExactly("COUNT " + sowing.text() + " 2026-04-24");
    up("2026-04-25", sowing, 9);
    assertThat(due("2026-06-01")).isEmpty();
  }

  @Test
  void aPotThatIsCompleteOrPrickedOutIsCountedNoMore() {
    List<Code> pots = sown("2026-04-01", false, 2);
    up("2026-04-10", pots.get(0), 20);
    up("2026-04-10", pots.get(1), 12);
    assertThat(due("2026-04-17")).containsExactly("COUNT " + pots.get(1).text() + " 2026-04-17");
    bench.say(new Numbered(pots.get(1), 1, 6, day("2026-04-16"), null, null, null));
    assertThat(due("2026-04-17")).isEmpty();
  }

  @Test
  void aCountGivenUpForEightWeeksIsLeftOutAndSaid() {
    Code sowing = sown("2026-04-01", false, 0).get(0);
    up("2026-04-10", sowing, 4);
    WorkQuestion late = WorkQuestion.of(bench.store, LocalDate.parse("2026-06-13"));
    // Due on 17 April; 56 days later is 12 June.
    assertThat(due(late)).isEmpty();
    assertThat(late.ask().longOverdue()).isEqualTo(1);
    assertThat(due(late.withLongOverdue(true)))
        .containsExactly("COUNT " + sowing.text() + " 2026-04-17");
  }

  @Test
  void aClosedBagIsLookedIntoEveryTwoWeeksAndOpenedAfterEight() {
    List<Code> pots = sown("2026-04-01", true, 2);
    up("2026-04-11", pots.get(0), 20);
    up("2026-04-11", pots.get(1), 20);
    String both = pots.get(0).text() + ", " + pots.get(1).text();
    assertThat(due("2026-04-24")).isEmpty();
    assertThat(due("2026-04-25")).containsExactly("LOOK_INTO " + both + " 2026-04-25");
    tended(Tended.Care.LOOKED_INTO, "2026-04-26", pots.get(0));
    // A look that came later than the last count counts, and is of one pot only.
    assertThat(due("2026-04-26"))
        .containsExactly("LOOK_INTO " + pots.get(1).text() + " 2026-04-25");
    // 1 April and 56 days; what is opened need not be looked into as well.
    assertThat(due("2026-05-27")).containsExactly("OPEN " + both + " 2026-05-27");
    tended(Tended.Care.OPENED, "2026-05-27", pots.get(0), pots.get(1));
    assertThat(due("2026-07-27")).isEmpty();
  }

  @Test
  void aTreatmentIsRepeatedUntilItIsEnteredWithoutThat() {
    List<Code> pots = sown("2026-04-01", false, 2);
    up("2026-04-05", pots.get(0), 20);
    up("2026-04-05", pots.get(1), 20);
    treated(Treatment.FUNGICIDE, 14, "2026-04-06", pots);
    String both = pots.get(0).text() + ", " + pots.get(1).text();
    assertThat(due("2026-04-19")).isEmpty();
    assertThat(due("2026-04-20")).containsExactly("TREAT " + both + " 2026-04-20");
    // Another sort of treatment does not take its place, and a dead pot wants none.
    treated(Treatment.FEED, null, "2026-04-19", pots);
    bench.say(
        new FateRecorded(
            List.of(pots.get(1)), Fate.DEAD, day("2026-04-19"), null, null, null, null));
    assertThat(due("2026-04-20")).containsExactly("TREAT " + pots.get(0).text() + " 2026-04-20");
    treated(Treatment.FUNGICIDE, 14, "2026-04-21", List.of(pots.get(0)));
    assertThat(due("2026-05-05")).containsExactly("TREAT " + pots.get(0).text() + " 2026-05-05");
    treated(Treatment.FUNGICIDE, null, "2026-05-05", List.of(pots.get(0)));
    assertThat(due("2026-06-05")).isEmpty();
  }

  @Test
  void twoProductsGoTheirOwnWays() {
    List<Code> pot = sown("2026-04-01", false, 1);
    up("2026-04-05", pot.get(0), 20);
    bench.say(new Treated(pot, Treatment.FUNGICIDE, "A", null, 10, day("2026-04-02"), null));
    bench.say(new Treated(pot, Treatment.FUNGICIDE, "B", null, 30, day("2026-04-03"), null));
    String code = pot.get(0).text();
    assertThat(due("2026-05-03"))
        .containsExactly("TREAT " + code + " 2026-04-12", "TREAT " + code + " 2026-05-03");
    bench.say(new Treated(pot, Treatment.FUNGICIDE, "a", null, null, day("2026-04-20"), null));
    assertThat(due("2026-05-03")).containsExactly("TREAT " + code + " 2026-05-03");
  }

  private void treated(
      Treatment treatment, @Nullable Integer every, String date, List<Code> codes) {
    bench.say(new Treated(codes, treatment, null, null, every, day(date), null));
  }

  private Code pollinated(String date, @Nullable Integer flowers) {
    Code laui = bench.plant(LAUI);
    Code code = NextCode.in(bench.store).ofYear(2026);
    bench.say(
        new Pollinated(
            code,
            laui,
            new Pollen.OnePlant(bench.plant(AGAVOIDES)),
            day(date),
            flowers == null ? null : Count.of(flowers),
            List.of(),
            Fraction.ZERO,
            Fraction.ZERO,
            Fraction.ZERO,
            null,
            null,
            false,
            null,
            null));
    return code;
  }

  private void fruit(Code cross, @Nullable Integer set, @Nullable Integer failed, int eaten) {
    bench.say(
        new FruitRecorded(
            cross,
            day("2026-03-10"),
            set == null ? null : Count.of(set),
            failed == null ? null : Count.of(failed),
            null,
            eaten == 0 ? null : Count.of(eaten),
            null,
            null));
  }

  private void harvested(Code cross, int fruits) {
    bench.say(
        new Harvested(
            NextCode.in(bench.store).lot(cross),
            day("2026-04-20"),
            Count.of(fruits),
            false,
            Count.of(50),
            null,
            null,
            null,
            null));
  }

  @Test
  void fruitShouldBeRipeSixtyDaysAfterPollination() {
    Code cross = pollinated("2026-03-01", 3);
    assertThat(due("2026-04-29")).isEmpty();
    assertThat(due("2026-04-30")).containsExactly("HARVEST " + cross.text() + " 2026-04-30");
    fruit(cross, 2, 1, 0);
    assertThat(due("2026-04-30")).containsExactly("HARVEST " + cross.text() + " 2026-04-30");
    harvested(cross, 1);
    // One of the two still hangs.
    assertThat(due("2026-04-30")).containsExactly("HARVEST " + cross.text() + " 2026-04-30");
    harvested(cross, 1);
    assertThat(due("2026-04-30")).isEmpty();
  }

  @Test
  void fruitThatFailedOrWasEatenIsNotWaitedFor() {
    Code failed = pollinated("2026-03-01", 3);
    fruit(failed, null, 3, 0);
    Code eaten = pollinated("2026-03-01", 3);
    fruit(eaten, 1, 2, 1);
    Code half = pollinated("2026-03-01", 3);
    fruit(half, null, 2, 0);
    assertThat(due("2026-05-30")).containsExactly("HARVEST " + half.text() + " 2026-04-30");
  }

  @Test
  void aPromiseIsDueUntilItIsGiven() {
    bench.say(
        new Promised(
            List.of(packet.lot(1)), Count.of(10), "Jonas Muster", day("2026-03-01"), null));
    assertThat(due("2026-03-02")).containsExactly("SEND " + packet.lot(1).text() + " 2026-03-01");
    bench.say(
        new FateRecorded(
            List.of(packet.lot(1)),
            Fate.GIVEN,
            day("2026-03-05"),
            Count.of(10),
            "Jonas Muster",
            null,
            null));
    assertThat(due("2026-03-06")).isEmpty();
  }

  @Test
  void seedOfThreeYearsAndPollenOfOneAreToBeUsed() {
    Code laui = bench.plant(LAUI);
    bench.say(
        new PollenKept(
            laui, PollenKept.Step.GATHERED, null, day("2026-03-01"), null, "freezer", null));
    // A year after 1 March 2026; the seed came in 2024, and so by its last day for all we know.
    assertThat(due("2027-02-28")).isEmpty();
    assertThat(due("2027-03-01")).containsExactly("USE_POLLEN " + laui.text() + " 2027-03-01");
    assertThat(due("2027-12-30")).hasSize(1);
    assertThat(due("2027-12-31"))
        .contains("SOW_SOON " + packet.lot(1).text() + " 2027-12-31")
        .hasSize(2);
    bench.say(
        new PollenKept(laui, PollenKept.Step.USED_UP, null, day("2026-04-01"), null, null, null));
    sown("2026-04-01", false, 0);
    assertThat(due("2027-03-01")).noneMatch(line -> line.startsWith("USE_POLLEN"));
  }

  @Test
  void tagsOfTwoYearsAreRewrittenAndThenFadeAnew() {
    Code old = bench.plant(LAUI);
    // Of 2024, and so of its last day for all that is known; 730 days later is the end of 2026.
    assertThat(tags("2026-12-30")).isEmpty();
    assertThat(tags("2026-12-31")).containsExactly(old);
    tended(Tended.Care.TAG_REWRITTEN, "2026-12-31", old);
    assertThat(tags("2027-12-31")).isEmpty();
    assertThat(tags("2028-12-30")).containsExactly(old);
  }

  private List<Code> tags(String date) {
    return WorkQuestion.of(bench.store, LocalDate.parse(date)).ask().tasks().stream()
        .filter(task -> task.work() == Task.Work.REWRITE_TAG)
        .flatMap(task -> task.codes().stream())
        .toList();
  }

  @Test
  void whatWasStatedOfTheTaxonGoesBeforeWhatIsUsual() {
    Code sowing = sown("2026-04-01", false, 0).get(0);
    bench.say(new IntervalStated(Interval.COMING_UP, 10, "Echeveria", null));
    assertThat(due("2026-04-11")).containsExactly("NOTHING_UP " + sowing.text() + " 2026-04-11");
    bench.say(new IntervalStated(Interval.COMING_UP, 30, LAUI, null));
    assertThat(due("2026-04-30")).isEmpty();
  }

  @Test
  void theDaysAheadAreLookedAtToo() {
    Code sowing = sown("2026-04-01", false, 0).get(0);
    WorkQuestion question = WorkQuestion.of(bench.store, LocalDate.parse("2026-04-15"));
    assertThat(due(question.withDaysAhead(6))).isEmpty();
    assertThat(due(question.withDaysAhead(7)))
        .containsExactly("NOTHING_UP " + sowing.text() + " 2026-04-22");
    assertThatThrownBy(() -> question.withDaysAhead(-1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-1 days ahead");
  }
}

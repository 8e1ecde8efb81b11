package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.answer.GerminationQuestion.By;
import dev.filial.core.answer.GerminationQuestion.Germination;
import dev.filial.core.answer.GerminationQuestion.Group;
import dev.filial.core.answer.GerminationQuestion.LeftOut;
import dev.filial.core.answer.GerminationQuestion.Point;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Fate;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Treated;
import dev.filial.core.register.Treatment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** How seed came up, on small tables that can be reckoned by hand. */
class GerminationQuestionTest {

  private final SownBench sown = new SownBench();
  private final InventedBench bench = sown.bench;
  private final Code laui = bench.plant(LAUI);
  private final Code cross = bench.cross(laui, bench.plant(AGAVOIDES));
  private final Code lot = bench.harvest(cross);

  private Germination by(By by) {
    return GerminationQuestion.of(bench.store).by(by).ask();
  }

  private static Group only(Germination found) {
    assertThat(found.groups()).hasSize(1);
    return found.groups().get(0);
  }

  @Test
  void threeCountsOfOneSowing() {
    Code sowing = sown.sown(lot, "20");
    sown.counted(sowing, "2025-10-08", "4", null); // day 7
    sown.counted(sowing, "2025-10-15", "10", null); // day 14
    sown.counted(sowing, "2025-10-29", "12", null); // day 28

    Group group = only(by(By.SOWING));
    assertThat(group.label()).isEqualTo(sowing.text());
    assertThat(group.share()).isEqualTo(0.6);
    // Wilson for 12 of 20, by R: core/src/test/reference/germination.R.
    assertThat(group.lower()).isCloseTo(0.3865815008, within(1e-9));
    assertThat(group.upper()).isCloseTo(0.7811934676, within(1e-9));
    // (4·7 + 6·14 + 2·28) / 12 = 168 / 12
    assertThat(group.times().meanDays()).isCloseTo(14, within(1e-12));
    // Half of 12 is 6: 4 on day 7, 10 on day 14, so 7 + 2·7/6.
    assertThat(group.times().halfDays()).isCloseTo(7 + 14.0 / 6, within(1e-12));
    assertThat(group.times().curve())
        .containsExactly(
            new Point(7, 4, 4, 0.2), new Point(14, 6, 10, 0.5), new Point(28, 2, 12, 0.6));
  }

  @Test
  void potsAddUpAndASowingCountedAsAWholeIsTheSame() {
    Code inPots = sown.sown(lot, "2025-10-01", "20", 2, null);
    Code one = lot.whole().group(1);
    Code other = lot.whole().group(2);
    sown.counted(one, "2025-10-08", "3", null);
    sown.counted(other, "2025-10-08", "1", null);
    sown.counted(one, "2025-10-29", "7", null);
    sown.counted(other, "2025-10-29", "5", null);
    Code whole = sown.sown(lot, "20");
    sown.counted(whole, "2025-10-08", "4", null);
    sown.counted(whole, "2025-10-29", "12", null);

    List<Group> groups = by(By.SOWING).groups();
    assertThat(groups).extracting(Group::label).containsExactly(inPots.text(), whole.text());
    assertThat(groups.get(0).up()).isEqualTo(12);
    assertThat(groups.get(0).times()).isEqualTo(groups.get(1).times());
  }

  @Test
  void potsCountedOnDifferentDaysAreHalfUpBetweenDaysOnWhichAllWereCounted() {
    Code inPots = sown.sown(lot, "2025-10-01", "20", 2, null);
    Code one = lot.whole().group(1);
    Code other = lot.whole().group(2);
    sown.counted(one, "2025-10-06", "2", null);
    sown.counted(other, "2025-10-06", "0", null);
    sown.counted(one, "2025-10-11", "6", null);
    sown.counted(other, "2025-10-16", "1", null);
    sown.counted(one, "2025-10-21", "8", null);
    sown.counted(other, "2025-10-21", "6", null);

    Group group = by(By.SOWING).groups().get(0);
    assertThat(group.label()).isEqualTo(inPots.text());
    // Worked by hand. Both were counted on days 5 and 20, with 2 and 14 up: the 7th is up on day
    // 5 + (7 - 2) / 12 of the 15 days. Were the one pot to stand still on day 15, where nobody
    // looked at it, 7 would be up then and not before.
    assertThat(group.times().halfDays()).isCloseTo(11.25, within(1e-12));
    assertThat(group.times().halfByFirstCount()).isFalse();
    // Each seedling by the count of its own pot: (2*5 + 4*10 + 2*20 + 1*15 + 5*20) / 14.
    assertThat(group.times().meanDays()).isCloseTo(205.0 / 14, within(1e-12));
    assertThat(group.times().curve())
        .containsExactly(
            new Point(5, 2, 2, 0.1),
            new Point(10, 4, 6, 0.3),
            new Point(15, 1, 7, 0.35),
            new Point(20, 7, 14, 0.7));
  }

  @Test
  void beforeEveryPotWasCountedOnceNobodyKnowsHowManyWereUp() {
    sown.sown(lot, "2025-10-01", "20", 2, null);
    sown.counted(lot.whole().group(1), "2025-10-08", "4", null);
    sown.counted(lot.whole().group(2), "2025-10-11", "6", null);
    sown.counted(lot.whole().group(1), "2025-10-15", "10", null);
    sown.counted(lot.whole().group(2), "2025-10-15", "8", null);

    // Worked by hand: on day 7 the other pot, on day 10 this one may have had any number; the first
    // day of which both are known is 14, with all 18 up. Added up as they were counted it would be
    // 7 + (9 - 4) / 6 of 3 days.
    Group group = by(By.SOWING).groups().get(0);
    assertThat(group.times().halfDays()).isEqualTo(14.0);
    assertThat(group.times().halfByFirstCount()).isTrue();
  }

  @Test
  void aPotThatNobodyCountedKeepsTheSowingOut() {
    sown.sown(lot, "2025-10-01", "20", 2, null);
    sown.counted(lot.whole().group(1), "2025-10-29", "7", null);

    assertThat(by(By.SOWING).groups()).isEmpty();
    assertThat(by(By.SOWING).leftOut())
        .containsExactly(
            new LeftOut("what came up was not counted", List.of(lot.whole().sowing(1))));
  }

  @Test
  void guessesAreLeftOutAndNamed() {
    Code guessedSeeds = sown.sown(lot, "~30");
    sown.counted(guessedSeeds, "2025-11-01", "18", null);
    Code guessedUp = sown.sown(lot, "20");
    sown.counted(guessedUp, "2025-10-20", "9", null);
    sown.counted(guessedUp, "2025-11-01", "~12", null);
    Code early = sown.sown(lot, "20");
    sown.counted(early, "2025-10-06", "2", null);
    Code onlyAlive = sown.sown(lot, "20");
    sown.counted(onlyAlive, "2025-11-01", null, "11");
    Code twins = sown.sown(lot, "20");
    sown.counted(twins, "2025-11-01", "21", null);

    Germination found = by(By.SOWING);
    assertThat(found.groups()).isEmpty();
    assertThat(found.all()).isNull();
    assertThat(found.leftOut())
        .containsExactly(
            new LeftOut("what came up was not counted", List.of(onlyAlive)),
            new LeftOut("counted only in the first 14 days, while still coming up", List.of(early)),
            new LeftOut("how many were sown is a guess", List.of(guessedSeeds)),
            new LeftOut("how many came up is a guess", List.of(guessedUp)),
            new LeftOut("more came up than was sown", List.of(twins)));
  }

  @Test
  void aLaterCountThatIsLowerTakesNothingBack() {
    Code sowing = sown.sown(lot, "20");
    sown.counted(sowing, "2025-10-08", "5", null);
    sown.counted(sowing, "2025-10-20", "12", null);
    sown.counted(sowing, "2025-11-01", "10", null);

    Germination found = by(By.SOWING);
    assertThat(only(found).up()).isEqualTo(12);
    assertThat(found.notes()).hasSize(1);
    assertThat(found.notes().get(0))
        .startsWith("Fewer were counted to have come up later than before in " + sowing.text());
  }

  @Test
  void whatStandsThereWithWhatWasTakenOutHasComeUp() {
    sown.sown(lot, "2025-10-01", "20", 1, null);
    Code pot = cross.group(1);
    sown.counted(pot, "2025-10-20", "10", "10");
    sown.left(pot, Fate.DEAD, "2025-10-25", "2");
    bench.say(
        new Potted(
            NextCode.in(bench.store).group(cross),
            pot,
            PartialDate.parse("2025-10-28"),
            Count.of(5),
            null,
            null));
    sown.counted(pot, "2025-11-10", null, "6");

    // 6 stand there, 5 were potted on, 2 had died: 13 came up, 3 of them since day 19.
    Group group = only(by(By.SOWING));
    assertThat(group.up()).isEqualTo(13);
    assertThat(group.times().curve())
        .containsExactly(new Point(19, 10, 10, 0.5), new Point(40, 3, 13, 0.65));
    assertThat(RecordedRates.of(bench.store).ofFamily(cross).germination().orElseThrow().text())
        .isEqualTo("13 of 20");
  }

  @Test
  void aCountOnNoKnownDayCountsForTheShareAndNotForTheTimes() {
    Code month = sown.sown(lot, "20");
    sown.counted(month, "2025-10-08", "5", null);
    sown.counted(month, "2025-11", "12", null);
    Code undatedInBetween = sown.sown(lot, "20");
    sown.counted(undatedInBetween, "2025-10-08", "5", null);
    sown.counted(undatedInBetween, "2025-10", "6", null);
    sown.counted(undatedInBetween, "2025-11-01", "12", null);
    Code once = sown.sown(lot, "20");
    sown.counted(once, "2025-11-01", "12", null);
    Code someDay = sown.sown(lot, "2025-10", "20", 0, null);
    sown.counted(someDay, "2025-12-01", "12", null);

    Germination found = by(By.CROSS);
    assertThat(only(found).up()).isEqualTo(48);
    assertThat(only(found).times().sowings()).isEqualTo(1);
    assertThat(only(found).times().curve())
        .extracting(Point::day, Point::newly)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(7, 5), org.assertj.core.groups.Tuple.tuple(31, 7));
    assertThat(found.withoutTimes())
        .containsExactly(
            new LeftOut("all that came up were up at the first count", List.of(once)),
            new LeftOut(
                "the day of sowing or of a count is not known to the day",
                List.of(month, someDay)));
  }

  @Test
  void bySpeciesAHybridIsWhatIsInItWhicheverBoreTheSeed() {
    Code colorata = bench.plant(COLORATA);
    Code pure = bench.harvest(bench.cross(laui, bench.plant(LAUI)));
    Code reciprocal = bench.harvest(bench.cross(bench.plant(AGAVOIDES), laui));
    Code three = bench.harvest(bench.cross(bench.seedling(cross), colorata));
    for (Code one : List.of(lot, pure, reciprocal, three)) {
      sown.counted(sown.sown(one, "10"), "2025-11-01", "6", null);
    }

    assertThat(by(By.SPECIES).groups())
        .extracting(Group::label, Group::seeds)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "Echeveria agavoides × Echeveria colorata × Echeveria laui", 10),
            org.assertj.core.groups.Tuple.tuple("Echeveria agavoides × Echeveria laui", 20),
            org.assertj.core.groups.Tuple.tuple("Echeveria laui", 10));
  }

  @Test
  void byMediumCaseAndSpacesDoNotMatter() {
    for (String medium : new String[] {"Pumice", "pumice ", "peat"}) {
      sown.counted(sown.sown(lot, "2025-10-01", "10", 0, medium), "2025-11-01", "6", null);
    }
    sown.counted(sown.sown(lot, "10"), "2025-11-01", "6", null);

    assertThat(by(By.MEDIUM).groups())
        .extracting(Group::label, Group::seeds)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("Pumice", 20),
            org.assertj.core.groups.Tuple.tuple("peat", 10),
            org.assertj.core.groups.Tuple.tuple("not said", 10));
  }

  private void treated(Code code, String date, Treatment treatment, @Nullable String product) {
    bench.say(
        new Treated(List.of(code), treatment, product, null, null, PartialDate.parse(date), null));
  }

  @Test
  void aTreatmentIsOfTheSeedUpToTheDayItWasSown() {
    Code part = NextCode.in(bench.store).lot(cross);
    treated(lot, "2025-07-10", Treatment.COLD, null);
    bench.say(new LotSplit(part, lot, PartialDate.parse("2025-08-01"), Count.of(40), null, null));
    treated(lot, "2025-08-05", Treatment.SMOKE, null); // after the split
    Code cold = sown.sown(part, "10");
    Code smoked = sown.sown(lot, "10");
    Code soaked = sown.sown(part, "10");
    treated(soaked, "2025-10-01", Treatment.SOAK, "tap water");
    treated(cold, "2025-10-20", Treatment.FUNGICIDE, "the blue bottle"); // of seedlings
    for (Code one : List.of(cold, smoked, soaked)) {
      sown.counted(one, "2025-11-01", "6", null);
    }

    assertThat(by(By.TREATMENT).groups())
        .extracting(Group::label, Group::sowings)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("cold", List.of(cold)),
            org.assertj.core.groups.Tuple.tuple("cold + smoke", List.of(smoked)),
            org.assertj.core.groups.Tuple.tuple("cold + soak, tap water", List.of(soaked)));
  }

  @Test
  void seedIsAgedFromItsHarvestOrFromTheDayItCame() {
    Code packet = NextCode.in(bench.store).ofYear(2024);
    bench.say(
        new SeedAcquired(
            packet,
            dev.filial.core.register.Determination.of(LAUI),
            dev.filial.core.register.Provenance.UNKNOWN,
            PartialDate.parse("2024-03"),
            Count.about(50),
            null,
            null));
    // Harvested 2025-07-01, sown 2025-10-01: 92 days, just past three months.
    sown.counted(sown.sown(lot, "10"), "2025-11-01", "6", null);
    // Sown in September: 62 to 91 days, so that the class is open.
    sown.counted(sown.sown(lot, "2025-09", "10", 0, null), "2025-11-01", "6", null);
    sown.counted(sown.sown(packet.lot(1), "10"), "2025-11-01", "6", null);

    Germination found = by(By.AGE);
    assertThat(found.groups())
        .extracting(Group::label, Group::seeds)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("3 to 6 months", 10),
            org.assertj.core.groups.Tuple.tuple("1 to 2 years", 10),
            org.assertj.core.groups.Tuple.tuple("not known", 10));
    assertThat(found.notes())
        .containsExactly(
            "The seed of 1 sowing is aged from the day it came, for its harvest is not known; it"
                + " may be older.");
  }

  @Test
  void sowingsThatDifferAreSaidTo() {
    sown.counted(sown.sown(lot, "100"), "2025-11-01", "60", null);
    sown.counted(sown.sown(lot, "100"), "2025-11-01", "40", null);

    Germination found = by(By.LOT);
    // Chi-square 8 on one degree of freedom: p 0.0047.
    assertThat(only(found).differing()).isCloseTo(0.004677735, within(1e-8));
    assertThat(found.notes().get(0))
        .startsWith("Sowings differ more than by chance within \"" + lot.text() + "\"");
  }

  @Test
  void aLotASowingAndAPotNameTheirSowings() {
    Code other = NextCode.in(bench.store).lot(cross);
    bench.say(new LotSplit(other, lot, PartialDate.parse("2025-08-01"), Count.of(40), null, null));
    Code one = sown.sown(lot, "2025-10-01", "10", 1, null);
    Code two = sown.sown(other, "10");
    sown.counted(one, "2025-11-01", "6", null);
    sown.counted(two, "2025-11-01", "5", null);

    for (Code asked : List.of(lot, one, lot.whole().group(1))) {
      assertThat(only(GerminationQuestion.of(bench.store).about(asked).ask()).sowings())
          .containsExactly(one);
    }
    assertThat(GerminationQuestion.of(bench.store).about(cross).ask().groups()).hasSize(2);
    assertThatThrownBy(() -> GerminationQuestion.of(bench.store).about(laui).ask())
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("is a plant, and only seed is sown");
    Code unsown = bench.cross(laui, laui);
    assertThatThrownBy(() -> GerminationQuestion.of(bench.store).about(unsown).ask())
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("no sowing of " + unsown.text() + " is recorded");
  }

  @Property(tries = 50)
  void theOrderOfEntriesDoesNotMatterNorDoesASowingElsewhere(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 20) Integer> counts,
      @ForAll @IntRange(min = 0, max = 1000) int shuffle) {
    List<Integer> days = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      days.add(i);
    }
    Group inOrder = only(countedIn(counts, days, false));
    Collections.shuffle(days, new Random(shuffle));

    assertThat(only(countedIn(counts, days, false))).isEqualTo(inOrder);
    assertThat(only(countedIn(counts, days, true))).isEqualTo(inOrder);
  }

  @Property(tries = 50)
  void oneMoreThatIsCountedNeverLowersTheShare(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 19) Integer> counts,
      @ForAll @IntRange(min = 0, max = 5) int which) {
    List<Integer> days = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      days.add(i);
    }
    List<Integer> more = new ArrayList<>(counts);
    more.set(which % counts.size(), counts.get(which % counts.size()) + 1);

    assertThat(only(countedIn(more, days, false)).share())
        .isGreaterThanOrEqualTo(only(countedIn(counts, days, false)).share());
  }

  /** A sowing of 20 counted every fortnight, the counts entered in that order. */
  private static Germination countedIn(
      List<Integer> counts, List<Integer> entered, boolean another) {
    SownBench fresh = new SownBench();
    Code first = fresh.bench.cross(fresh.bench.plant(LAUI), fresh.bench.plant(AGAVOIDES));
    Code seed = fresh.bench.harvest(first);
    Code sowing = fresh.sown(seed, "2025-10-01", "20", 0, null);
    if (another) {
      Code second = fresh.bench.cross(fresh.bench.plant(LAUI), fresh.bench.plant(COLORATA));
      fresh.counted(fresh.sown(fresh.bench.harvest(second), "30"), "2025-11-01", "9", null);
    }
    for (int i : entered) {
      fresh.counted(
          sowing,
          java.time.LocalDate.of(2025, 10, 15).plusDays(14L * i).toString(),
          counts.get(i).toString(),
          null);
    }
    return GerminationQuestion.of(fresh.bench.store).about(first).ask();
  }
}

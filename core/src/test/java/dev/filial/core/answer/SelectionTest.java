package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.answer.FamilyMeansQuestion.Family;
import dev.filial.core.answer.FamilyMeansQuestion.Means;
import dev.filial.core.answer.RankingQuestion.Place;
import dev.filial.core.answer.RankingQuestion.Ranking;
import dev.filial.core.answer.RankingQuestion.Step;
import dev.filial.core.name.Code;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.TraitDeclared;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Seedlings ranked and families averaged, without genes. */
class SelectionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);
  private final Code cross = bench.cross(laui, agavoides);

  SelectionTest() {
    bench.say(new TraitDeclared("width", List.of(), BigDecimal.ZERO, null, "mm", null));
  }

  private void measured(Code plant, @Nullable String date, String value) {
    bench.say(
        new Observed(
            plant, "width", value, date == null ? null : PartialDate.parse(date), null, null));
  }

  private void became(Code plant, Fate fate) {
    bench.say(
        new FateRecorded(
            List.of(plant), fate, PartialDate.parse("2026-02-01"), null, null, null, null));
  }

  private Code seedling(String width) {
    Code seedling = bench.seedling(cross);
    measured(seedling, "2026-01-10", width);
    return seedling;
  }

  private static String told(Place place) {
    return (place.tied() ? "=" : "")
        + place.rank()
        + " "
        + place.code().text()
        + " "
        + place.value()
        + " "
        + place.fate();
  }

  @Test
  void equalsShareARankAndMarksStandBesideIt() {
    Code one = seedling("41");
    Code two = seedling("52");
    Code three = seedling("52.0");
    Code four = seedling("38");
    Code never = bench.seedling(cross);
    Code goneUnmeasured = bench.seedling(cross);
    became(two, Fate.KEPT);
    became(four, Fate.DISCARDED);
    became(goneUnmeasured, Fate.DEAD);

    Ranking found = RankingQuestion.of(bench.store).rank("Width", List.of(cross));
    assertThat(found.places().stream().map(SelectionTest::told))
        .containsExactly(
            "=1 " + two.text() + " 52 KEPT",
            "=1 " + three.text() + " 52.0 ALIVE",
            "3 " + one.text() + " 41 ALIVE",
            "4 " + four.text() + " 38 DISCARDED");
    assertThat(found.notMeasured()).containsExactly(never);
    assertThat(
            RankingQuestion.of(bench.store)
                .smallestFirst(true)
                .rank("width", List.of(cross))
                .places()
                .stream()
                .map(SelectionTest::told))
        .startsWith("1 " + four.text() + " 38 DISCARDED", "2 " + one.text() + " 41 ALIVE");
  }

  @Test
  void aRankingStandsAsItDidOnADay() {
    Code one = seedling("41");
    Code two = seedling("44");
    measured(one, "2026-03-10", "60");
    measured(two, null, "70");

    Ranking then =
        RankingQuestion.of(bench.store)
            .until(LocalDate.of(2026, 2, 1))
            .rank("width", List.of(one, two));
    assertThat(then.places()).extracting(Place::code).containsExactly(two, one);
    assertThat(then.notes())
        .containsExactly("What was measured on no known day is left out: of 1 plant.");
    Ranking now = RankingQuestion.of(bench.store).rank("width", List.of(cross));
    assertThat(now.places()).extracting(Place::value).containsExactly(d("70"), d("60"));
  }

  @Test
  void measuredLongApartIsNoFairRanking() {
    Code one = seedling("41");
    Code two = bench.seedling(cross);
    measured(two, "2026-03", "60");

    // From 10 January to the last day of March are 80 days.
    assertThat(RankingQuestion.of(bench.store).rank("width", List.of(one, two)).notes())
        .containsExactly(
            "They were measured between 2026-01-10 and 2026-03-31; what grows cannot be ranked"
                + " over so long a time.");
  }

  private static BigDecimal d(String number) {
    return new BigDecimal(number);
  }

  @Test
  void aPlantGrew() {
    Code one = seedling("40");
    measured(one, "2026-02-09", "52");
    measured(one, "2026-02-10", "51");
    measured(one, "2026-03", "60");
    measured(one, "2025-12-11", "34");

    // 6 in 30 days, 12 in 30 days; a day is too short, a month no day.
    assertThat(
            RankingQuestion.of(bench.store).growth("width", List.of(one)).plants().get(0).steps())
        .containsExactly(
            new Step(PartialDate.parse("2025-12-11"), d("34"), null, null),
            new Step(PartialDate.parse("2026-01-10"), d("40"), d("6"), 6.0),
            new Step(PartialDate.parse("2026-02-09"), d("52"), d("12"), 12.0),
            new Step(PartialDate.parse("2026-02-10"), d("51"), d("-1"), null),
            new Step(PartialDate.parse("2026-03"), d("60"), d("9"), null));
  }

  private Family only(Means means) {
    assertThat(means.families()).hasSize(1);
    return means.families().get(0);
  }

  @Test
  void aFamilyBesideItsParents() {
    measured(laui, "2025-05-01", "30");
    measured(laui, "2026-01-10", "36");
    measured(agavoides, "2026-01-10", "44");
    for (String width : List.of("41", "44", "38", "52")) {
      seedling(width);
    }
    bench.seedling(cross);

    Family family = only(FamilyMeansQuestion.of(bench.store).ask("width", List.of()));
    // Mean 175/4; deviation and interval by R in germination.R.
    assertThat(family.mean()).isEqualTo(43.75);
    assertThat(family.number()).isEqualTo(4);
    assertThat(family.deviation()).isCloseTo(6.0207972894, within(1e-9));
    assertThat(family.least()).isEqualTo(38);
    assertThat(family.most()).isEqualTo(52);
    assertThat(family.lower()).isCloseTo(34.1695679557, within(1e-9));
    assertThat(family.unmeasured()).isEqualTo(1);
    // (36 + 44) / 2 = 40
    assertThat(family.parents())
        .containsExactly(
            new FamilyMeansQuestion.Parent(laui, 36.0, 2, PartialDate.parse("2026-01-10")),
            new FamilyMeansQuestion.Parent(agavoides, 44.0, 1, PartialDate.parse("2026-01-10")));
    assertThat(family.midParent()).isEqualTo(40);
    assertThat(family.difference()).isEqualTo(3.75);
    assertThat(family.differenceLower()).isCloseTo(34.1695679557 - 40, within(1e-9));
    assertThat(family.differenceUpper()).isCloseTo(53.3304320443 - 40, within(1e-9));
  }

  @Test
  void theParentsMeanOfASelfingIsTheParent() {
    measured(laui, "2026-01-10", "36");
    Code selfed = bench.selfed(laui);
    measured(bench.seedling(selfed), "2026-01-10", "30");

    Family family = only(FamilyMeansQuestion.of(bench.store).ask("width", List.of(selfed)));
    assertThat(family.midParent()).isEqualTo(36);
    assertThat(family.parents()).hasSize(1);
    assertThat(family.difference()).isEqualTo(-6);
    assertThat(family.deviation()).isNull();
    assertThat(family.differenceLower()).isNull();
  }

  @Test
  void aParentThatWasNotMeasuredIsNamedAndPickedOnesAreLeftOut() {
    measured(laui, "2026-01-10", "36");
    seedling("41");
    bench.say(new Numbered(cross, 2, 2, PartialDate.parse("2025-09-01"), "width", null, null));
    measured(cross.seedling(2), "2026-01-10", "90");

    Means means = FamilyMeansQuestion.of(bench.store).ask("width", List.of(cross));
    assertThat(only(means).mean()).isEqualTo(41);
    assertThat(only(means).midParent()).isNull();
    assertThat(only(means).noMidParent()).isEqualTo(agavoides.text() + " never measured");
    assertThat(means.notes())
        .containsExactly(
            "1 seedling picked for width left out: picked ones are no sample of their family.");
    Code packet = bench.packet(LAUI);
    measured(bench.seedling(packet), "2026-01-10", "30");
    assertThat(
            only(FamilyMeansQuestion.of(bench.store).ask("width", List.of(packet))).noMidParent())
        .isEqualTo("its two parents are not known for certain");
  }

  @Test
  void whatHasNoNumberOrIsNoPlantIsRefused() {
    bench.say(new TraitDeclared("edge", List.of("red", "green"), null, null, null, null));
    Code pot = bench.pot(cross);

    assertThatThrownBy(() -> RankingQuestion.of(bench.store).rank("edge", List.of()))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage(
            "edge has states (red, green) and no numbers; name a trait that is scored or"
                + " measured");
    assertThatThrownBy(() -> RankingQuestion.of(bench.store).growth("width", List.of(pot)))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("is a pot, and only single plants are scored and measured");
    assertThatThrownBy(() -> FamilyMeansQuestion.of(bench.store).ask("width", List.of(laui)))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("is a plant and no family");
  }

  @Property(tries = 30)
  void aRankIsOneMoreThanThereAreBetterOnes(
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 5) Integer> scores) {
    SelectionTest fresh = new SelectionTest();
    List<Code> seedlings = new ArrayList<>();
    scores.forEach(score -> seedlings.add(fresh.seedling(score.toString())));

    for (Place place : RankingQuestion.of(fresh.bench.store).rank("width", seedlings).places()) {
      int own = place.value().intValueExact();
      assertThat(place.rank() - 1L).isEqualTo(scores.stream().filter(one -> one > own).count());
      assertThat(place.tied()).isEqualTo(scores.stream().filter(one -> one == own).count() > 1);
    }
  }
}

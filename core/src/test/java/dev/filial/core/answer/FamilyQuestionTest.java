package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.answer.FamilyOddsQuestion.Expected;
import dev.filial.core.answer.FamilyOddsQuestion.FamilyOdds;
import dev.filial.core.answer.FamilyQuestion.Family;
import dev.filial.core.answer.FamilyQuestion.Pollination;
import dev.filial.core.answer.FamilyQuestion.Seedling;
import dev.filial.core.answer.FamilyTalliesQuestion.Tally;
import dev.filial.core.answer.Wanted.State;
import dev.filial.core.heredity.Odds;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.TraitDeclared;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A family as a whole: what it is, what it may throw, and what was counted. */
class FamilyQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);

  private void redEdges() {
    bench.gene("edge", "R", "r");
    bench.trait("leaf edge", "red,green", "edge", "R_=red", "rr=green");
  }

  private void bareLeaves() {
    bench.gene("wax", "W", "w");
    bench.trait("wax", "waxy,bare", "wax", "W_=waxy", "ww=bare");
  }

  private Family family(Code code) {
    return FamilyQuestion.of(bench.store).ask(code);
  }

  private FamilyOdds odds(Code code) {
    return FamilyOddsQuestion.of(bench.store).ask(code);
  }

  private List<Tally> tallies(Code code) {
    return FamilyTalliesQuestion.of(bench.store, odds(code)).ask(code);
  }

  private void fruit(
      Code cross, @Nullable String set, @Nullable String failed, @Nullable String eaten) {
    bench.say(
        new FruitRecorded(cross, null, count(set), count(failed), null, count(eaten), null, null));
  }

  private static @Nullable Count count(@Nullable String text) {
    return text == null ? null : Count.parse(text);
  }

  @Test
  void aCrossIsToldWithItsSeedItsPotsAndItsSeedlings() {
    bench.say(new TraitDeclared("score", List.of(), null, null, "points", null));
    Code cross = bench.cross(laui, agavoides);
    fruit(cross, "2", null, null);
    fruit(cross, "~3", "1", "2");
    Code lot = bench.harvest(cross);
    Code sowing = bench.sowing(lot, "2025-10-01", 2);
    Code seedling = bench.seedling(cross);
    bench.showed(seedling, "score", "3");
    bench.showed(seedling, "score", "4");
    bench.say(new FateRecorded(List.of(seedling), Fate.KEPT, null, null, null, null, null));
    Code onward = bench.cross(seedling, laui);

    Family family = family(cross);

    assertThat(family.kind()).isEqualTo("cross");
    Pollination made = Objects.requireNonNull(family.pollination());
    assertThat(made.flowers()).isEqualTo(Count.of(3));
    assertThat(made.protection()).isEmpty();
    FamilyQuestion.Fruit fruit = Objects.requireNonNull(family.fruit());
    assertThat(fruit.set()).isEqualTo(Count.about(5));
    assertThat(fruit.failed()).isEqualTo(Count.of(1));
    assertThat(fruit.aborted()).isNull();
    assertThat(fruit.eaten()).isEqualTo(Count.of(2));
    assertThat(family.doubts()).containsExactly("nobody wrote whether the flowers were protected");
    assertThat(family.lots()).extracting(FamilyQuestion.Lot::code).containsExactly(lot);
    assertThat(family.lots().get(0).how()).isEqualTo("harvested");
    assertThat(family.sowings()).extracting(FamilyQuestion.Sowing::code).containsExactly(sowing);
    // A sowing that was divided stands in its pots and not by itself.
    assertThat(family.pots())
        .extracting(FamilyQuestion.Pot::code)
        .containsExactly(cross.group(1), cross.group(2));
    Seedling only = family.seedlings().get(0);
    assertThat(only.shown()).isEqualTo(Map.of("score", "4 points"));
    assertThat(only.fate()).isEqualTo("kept");
    assertThat(family.raised()).containsExactly(onward);
    assertThat(family.history())
        .extracting(Said::text)
        .anyMatch(text -> text.contains("harvested"))
        .noneMatch(text -> text.contains("score"));
  }

  @Test
  void whatStandsUnderACrossStandsForItAndAPlantStandsForNoFamily() {
    Code cross = bench.cross(laui, agavoides);
    Code lot = bench.harvest(cross);
    FamilyQuestion question = FamilyQuestion.of(bench.store);

    assertThat(question.family(lot)).contains(cross);
    assertThat(question.family(bench.sowing(lot, "2025-10-01", 1))).contains(cross);
    assertThat(question.family(bench.pot(cross))).contains(cross);
    assertThat(question.family(bench.seedling(cross))).isEmpty();
    assertThat(question.family(laui)).isEmpty();
    assertThat(family(lot).code()).isEqualTo(cross);
    assertThatThrownBy(() -> question.ask(laui))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining(laui.text())
        .hasMessageContaining("name a cross");
  }

  @Test
  void aPacketIsAFamilyThatWasNotPollinatedHere() {
    Family family = family(bench.packet(LAUI));

    assertThat(family.pollination()).isNull();
    assertThat(family.kind()).isEqualTo("packet of seed");
    assertThat(family.lots()).hasSize(1);
    assertThat(family.lots().get(0).seeds()).isEqualTo(Count.about(50));
  }

  @Test
  void eachTraitHasItsOddsAndTwoHaveThemTogether() {
    redEdges();
    bareLeaves();
    bench.genotype(laui, "Rr Ww", "edge", "wax");
    Code cross = bench.selfed(laui);

    FamilyOdds odds = odds(cross);

    assertThat(odds.single())
        .extracting(one -> one.odds().scenarios().get(0).ratio())
        .containsExactly("3:1", "3:1");
    Expected both = Objects.requireNonNull(odds.together());
    assertThat(both.odds().scenarios().get(0).ratio()).isEqualTo("9:3:3:1");
    assertThat(both.odds().scenarios().get(0).checkerboard()).isNotNull();
    assertThat(odds.notKnown()).isEmpty();
    assertThat(odds.rate()).isNull();
    // 11 seedlings: 1 - 0.75^11 = 0.958, and 0.75^10 = 0.056 by hand.
    assertThat(odds.single().get(0).hopes().get(0).get(1).orElseThrow().seedlings()).isEqualTo(11);
  }

  @Test
  void whatCannotBeReckonedIsNamedWithTheReasonAndStopsNothing() {
    redEdges();
    bareLeaves();
    bench.say(new TraitDeclared("flowers", List.of("pink", "coral"), null, null, null, null));
    bench.genotype(laui, "Rr", "edge");
    Code cross = bench.selfed(laui);

    FamilyOdds odds = odds(cross);

    assertThat(odds.single()).hasSize(1);
    assertThat(odds.together()).isNull();
    assertThat(odds.notModelled()).containsExactly("flowers");
    assertThat(odds.notKnown()).hasSize(1);
    assertThat(odds.notKnown().get(0).traits()).containsExactly("wax");
    assertThat(odds.notKnown().get(0).why()).contains(laui.text()).doesNotEndWith(".");
  }

  @Test
  void manyTraitsThatFailForOneReasonAreNamedTogether() {
    redEdges();
    bareLeaves();
    Code packet = bench.packet(LAUI);

    assertThat(odds(packet).notKnown()).hasSize(1);
    assertThat(odds(packet).notKnown().get(0).traits()).containsExactly("leaf edge", "wax");
  }

  /** The numbers to sow are those that are had by wanting each kind by itself. */
  @Test
  void seedsToSowAreThoseOfAskingForEachKindThroughStraysLossesAndRates() {
    bench.gene("edge", "R", "r");
    bench.trait("leaf edge", "red,green", "edge", "RR=dies", "Rr=red", "rr=green");
    bench.genotype(laui, "Rr", "edge");
    Code open =
        bench
            .pollination(laui, new Pollen.Open(InventedBench.weighted(laui, 1), Fraction.of(1, 4)))
            .made();
    Code lot = bench.harvest(open);
    Code sowing = bench.sowing(lot, "2025-10-01", 1);
    bench.say(
        new Counted(
            PartialDate.parse("2025-11-01"),
            List.of(new Counted.Reading(sowing, Count.of(15), null)),
            null));

    FamilyOdds odds = odds(open);
    SeedRate rate = Objects.requireNonNull(odds.rate());
    Expected only = odds.single().get(0);
    List<Odds.Share> classes = only.odds().scenarios().get(0).classes();

    assertThat(classes).hasSize(2);
    for (int i = 0; i < classes.size(); i++) {
      State state = new State("leaf edge", classes.get(i).states().get(0));
      Wanted wanted = new Wanted(List.of(state), null, List.of(), 1, 0.95, List.of(rate));
      Hope asked =
          Objects.requireNonNull(
              OddsQuestion.of(bench.store, List.of("leaf edge"))
                  .wanting(wanted)
                  .ask(open)
                  .scenarios()
                  .get(0)
                  .hope());
      assertThat(only.hopes().get(0).get(i)).contains(asked);
    }
  }

  @Test
  void whereOnlyTheTaxonOfAParentIsKnownNoSeedsAreReckoned() {
    redEdges();
    bench.profile(LAUI, "edge", "R:0.5,r:0.5");
    bench.genotype(agavoides, "rr", "edge");
    Code cross = bench.cross(laui, agavoides);

    assertThat(odds(cross).single().get(0).hopes().get(0))
        .hasSize(2)
        .allMatch(one -> one.isEmpty());
  }

  @Test
  void aTallyIsTestedWhereSomethingIsExpectedAndToldWhereNothingIs() {
    redEdges();
    bareLeaves();
    bench.genotype(laui, "Rr", "edge");
    Code cross = bench.selfed(laui);
    Code sowing = bench.sowing(bench.harvest(cross), "2025-10-01", 1);
    PartialDate day = PartialDate.parse("2026-01-01");
    bench.say(new Tallied(sowing, "leaf edge", Map.of("red", 31L, "green", 9L), day, null));
    bench.say(new Tallied(sowing, "wax", Map.of("waxy", 30L, "bare", 10L), day, null));

    List<Tally> tallies = tallies(cross);

    assertThat(tallies).extracting(Tally::trait).containsExactly("leaf edge", "wax");
    assertThat(Objects.requireNonNull(tallies.get(0).fit()).ratio()).isEqualTo("3:1");
    assertThat(tallies.get(0).why()).isEmpty();
    assertThat(tallies.get(1).fit()).isNull();
    assertThat(tallies.get(1).why()).contains("is not known");
    assertThat(tallies.get(1).seedlings()).isEqualTo(40);
    assertThat(tallies(bench.cross(laui, agavoides))).isEmpty();
  }

  private FamilyOdds oddsWhereSownAndCounted(long up) {
    redEdges();
    bench.genotype(laui, "Rr", "edge");
    Code cross = bench.selfed(laui);
    Code sowing = bench.sowing(bench.harvest(cross), "2025-10-01", 1);
    bench.say(
        new Counted(
            PartialDate.parse("2025-11-01"),
            List.of(new Counted.Reading(sowing, Count.of(up), null)),
            null));
    return odds(cross);
  }

  @Test
  void aSowingOfWhichNothingCameUpIsACount() {
    FamilyOdds odds = oddsWhereSownAndCounted(0);

    assertThat(Objects.requireNonNull(odds.rate()).text()).isEqualTo("0 of 50");
    assertThat(odds.leftOut()).isEmpty();
    assertThat(odds.single().get(0).hopes().get(0).get(1).orElseThrow().seeds()).isNotNull();
  }

  @Test
  void aSowingThatGivesNoRateIsNamedWithWhy() {
    FamilyOdds odds = oddsWhereSownAndCounted(51);

    assertThat(odds.rate()).isNull();
    assertThat(odds.leftOut())
        .extracting(GerminationQuestion.LeftOut::why)
        .containsExactly("more came up than was sown");
  }
}

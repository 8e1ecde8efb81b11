package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.answer.FitAnswer.Family;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.trial.Fit;
import dev.filial.core.trial.Ratio;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Counts of seedlings against what was expected. */
class FitQuestionTest {

  private static final String EDGE = "leaf edge";

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);

  private void redEdges() {
    bench.gene("edge", "R", "r");
    bench.trait(EDGE, "red,green", "edge", "R_=red", "rr=green");
    bench.profile(AGAVOIDES, "edge", "R");
    bench.profile(LAUI, "edge", "r");
  }

  private Code f2() {
    return bench.selfed(bench.seedling(bench.cross(agavoides, laui)));
  }

  /** A cross sown into one sowing. */
  private Code sown(Code cross, String date) {
    return bench.sowing(bench.harvest(cross), date, 1);
  }

  private void tally(Code pot, String date, Object... statesAndCounts) {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (int i = 0; i < statesAndCounts.length; i += 2) {
      counts.put((String) statesAndCounts[i], ((Integer) statesAndCounts[i + 1]).longValue());
    }
    bench.say(new Tallied(pot, EDGE, counts, PartialDate.parse(date), null));
  }

  private FitAnswer ask(FitQuestion question, Code... families) {
    return question.ask(bench.store, EDGE, List.of(families));
  }

  private static Family only(FitAnswer answer) {
    assertThat(answer.families()).hasSize(1);
    return answer.families().get(0);
  }

  private static Fit fit(Family family) {
    return Objects.requireNonNull(family.fit());
  }

  @Test
  void aTalliedF2IsTestedAgainstWhatItsParentsGenesExpect() {
    redEdges();
    Code cross = f2();
    tally(sown(cross, "2025-10-01"), "2026-01-01", "red", 31, "green", 9);

    Family family = only(ask(FitQuestion.byGenes(), cross));
    assertThat(family.ratio()).isEqualTo("3:1");
    assertThat(family.rows()).extracting(FitAnswer.Row::expected).containsExactly(30.0, 10.0);
    // 1/30 + 1/10 by hand; SciPy 1.17.1: chi2.sf(2 / 15, 1)
    assertThat(fit(family).statistic()).isCloseTo(0.1333333333, within(1e-9));
    assertThat(fit(family).p()).isCloseTo(0.7150006547, within(1e-9));
  }

  @Test
  void aSmallFamilyIsTestedExactlyAndSaysWhy() {
    redEdges();
    Code cross = f2();
    tally(sown(cross, "2025-10-01"), "2026-01-01", "red", 7, "green", 5);

    Fit fit = fit(only(ask(FitQuestion.byGenes(), cross)));
    assertThat(fit.method()).isEqualTo(Fit.Method.EXACT);
    // R 4.2.2: binom.test(7, 12, 3 / 4), see check values of the trial package
    assertThat(fit.p()).isCloseTo(0.1893200278, within(1e-9));
    assertThat(fit.why()).contains("fewer than five");
  }

  @Test
  void seedlingsThatCannotBeAreCountedAndNotTestedAway() {
    redEdges();
    Code cross = bench.cross(agavoides, laui);
    tally(sown(cross, "2025-10-01"), "2026-01-01", "red", 20, "green", 1);

    Family family = only(ask(FitQuestion.byGenes(), cross));
    assertThat(family.impossible()).isEqualTo(1);
    assertThat(family.fit()).isNull();
  }

  @Test
  void ofOnePotTheLatestTallyCounts() {
    redEdges();
    Code cross = f2();
    Code pot = sown(cross, "2025-10-01");
    tally(pot, "2026-02-01", "red", 30, "green", 10);
    tally(pot, "2026-01-01", "red", 5, "green", 5);

    assertThat(only(ask(FitQuestion.byGenes(), cross)).rows())
        .extracting(FitAnswer.Row::count)
        .containsExactly(30L, 10L);
  }

  private Code pottedOn(Code from, String date, int seedlings) {
    Code pot = NextCode.in(bench.store).group(from);
    bench.say(new Potted(pot, from, PartialDate.parse(date), Count.of(seedlings), null, null));
    return pot;
  }

  @Test
  void someSeedlingsTalliedAgainWherePottedCountOnce() {
    redEdges();
    Code cross = f2();
    Code sowing = sown(cross, "2025-10-01");
    tally(sowing, "2026-01-01", "red", 31, "green", 9);
    Code pricked = pottedOn(sowing, "2026-02-01", 12);
    tally(pricked, "2026-03-01", "red", 9, "green", 3);

    FitAnswer answer = ask(FitQuestion.byGenes(), cross);
    assertThat(only(answer).rows()).extracting(FitAnswer.Row::count).containsExactly(31L, 9L);
    assertThat(answer.notes()).anyMatch(note -> note.contains("its seedlings are in the tally of"));
  }

  @Test
  void allSeedlingsTalliedAgainWherePottedCountThere() {
    redEdges();
    Code cross = f2();
    Code sowing = sown(cross, "2025-10-01");
    tally(sowing, "2026-01-01", "red", 10, "green", 2);
    tally(pottedOn(sowing, "2026-02-01", 6), "2026-03-01", "red", 4, "green", 2);
    tally(pottedOn(sowing, "2026-02-01", 6), "2026-03-01", "red", 5, "green", 1);

    FitAnswer answer = ask(FitQuestion.byGenes(), cross);
    assertThat(only(answer).rows()).extracting(FitAnswer.Row::count).containsExactly(9L, 3L);
    assertThat(answer.notes()).anyMatch(note -> note.contains("were tallied again"));
  }

  @Test
  void aPotTalliedOnceMoreAfterPottingOnHasOnlyThoseThatStayed() {
    redEdges();
    Code cross = f2();
    Code sowing = sown(cross, "2025-10-01");
    tally(sowing, "2026-01-01", "red", 9, "green", 8);
    tally(pottedOn(sowing, "2026-02-01", 5), "2026-03-01", "red", 2, "green", 3);
    tally(sowing, "2026-03-01", "red", 7, "green", 5);

    FitAnswer answer = ask(FitQuestion.byGenes(), cross);
    assertThat(only(answer).rows()).extracting(FitAnswer.Row::count).containsExactly(9L, 8L);
    assertThat(answer.notes()).isEmpty();
  }

  @Test
  void aTallyOfNoneChangesNothing() {
    redEdges();
    Code cross = f2();
    Code sowing = sown(cross, "2025-10-01");
    tally(sowing, "2026-01-01", "red", 9, "green", 8);
    tally(sowing, "2026-02-01", "red", 0, "green", 0);

    assertThat(only(ask(FitQuestion.byGenes(), cross)).rows())
        .extracting(FitAnswer.Row::count)
        .containsExactly(9L, 8L);
  }

  @Test
  void aTallyThatNamesOnlySomeStatesMayNotHaveCountedAll() {
    redEdges();
    Code cross = f2();
    tally(sown(cross, "2025-10-01"), "2026-01-01", "red", 14);

    assertThatThrownBy(() -> ask(FitQuestion.byGenes(), cross))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("with a number for each, 0 for none");
  }

  @Test
  void oneFamilyIsNotTestedTwiceOver() {
    redEdges();
    Code cross = f2();
    Code sowing = sown(cross, "2025-10-01");
    tally(sowing, "2026-01-01", "red", 9, "green", 8);

    assertThatThrownBy(() -> ask(FitQuestion.byGenes(), cross, sowing))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("in common; name one of the two");
    assertThatThrownBy(() -> ask(FitQuestion.byGenes(), cross, cross))
        .isInstanceOf(RegisterRefusal.class);
  }

  @Test
  void withoutATallyNumberedSeedlingsCountSaveThosePickedForIt() {
    redEdges();
    Code cross = f2();
    for (String state : List.of("red", "red", "green")) {
      bench.showed(bench.seedling(cross), EDGE, state);
    }
    int next = NextCode.in(bench.store).seedling(cross).part().number();
    bench.say(new Numbered(cross, next, next, PartialDate.parse("2026-01-01"), EDGE, null, null));
    bench.showed(cross.seedling(next), EDGE, "green");

    FitAnswer answer = ask(FitQuestion.byGenes(), cross);
    assertThat(only(answer).rows()).extracting(FitAnswer.Row::count).containsExactly(2L, 1L);
    assertThat(answer.notes()).anyMatch(note -> note.contains("1 seedling picked for"));
  }

  @Test
  void severalFamiliesOfOneKindAreTestedTogetherAndForDiffering() {
    redEdges();
    Code one = f2();
    Code other = f2();
    tally(sown(one, "2025-10-01"), "2026-01-01", "red", 31, "green", 9);
    tally(sown(other, "2025-10-01"), "2026-01-01", "red", 12, "green", 11);

    FitAnswer answer = ask(FitQuestion.byGenes(), one, other);
    var together = Objects.requireNonNull(answer.together());
    // by hand: 4.25²/47.25 + 4.25²/15.75; the sum of the families less that
    assertThat(together.pooled().statistic()).isCloseTo(1.529100529, within(1e-9));
    assertThat(together.heterogeneity())
        .isCloseTo(0.1333333333 + 6.391304348 - 1.529100529, within(1e-8));
  }

  @Test
  void whichRatioFitsBestIsSaidWithItsWeight() {
    redEdges();
    Code cross = f2();
    tally(sown(cross, "2025-10-01"), "2026-01-01", "red", 31, "green", 9);

    FitAnswer answer = ask(FitQuestion.byGenes().comparedWith(List.of(Ratio.of(9, 7))), cross);
    assertThat(answer.comparison().get(0).name()).isEqualTo("3:1");
    assertThat(answer.comparison().stream().mapToDouble(model -> model.weight()).sum())
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void aRatioGivenNeedsNoModel() {
    bench.say(new TraitDeclared(EDGE, List.of("red", "green"), null, null, null, null));
    Code cross = bench.cross(agavoides, laui);
    tally(sown(cross, "2025-10-01"), "2026-01-01", "red", 31, "green", 9);

    assertThat(only(ask(FitQuestion.against(Ratio.of(3, 1)), cross)).ratio()).isEqualTo("3:1");
    assertThatThrownBy(() -> ask(FitQuestion.against(Ratio.of(1, 2, 1)), cross))
        .hasMessageContaining("has 3 terms, but there are 2 states");
    assertThatThrownBy(() -> ask(FitQuestion.byGenes(), cross))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("nobody said how leaf edge is inherited");
  }

  @Test
  void whatWasNeverCountedCannotBeTested() {
    redEdges();
    Code cross = f2();
    assertThatThrownBy(() -> ask(FitQuestion.byGenes(), cross))
        .hasMessageContaining("nobody counted leaf edge in " + cross.text());
    assertThatThrownBy(() -> ask(FitQuestion.byGenes(), laui))
        .hasMessageContaining("a family is counted");
    assertThatThrownBy(
            () ->
                FitQuestion.against(Ratio.of(3, 1))
                    .ask(List.of("red", "green"), List.of(new long[] {0, 0})))
        .hasMessageContaining("a family of none");
    assertThatThrownBy(() -> ask(FitQuestion.byGenes().withMethod(Fit.Method.G)))
        .isInstanceOf(RegisterRefusal.class);
  }

  @Test
  void aSeedlingNumberedBeforeTheTallyIsAnotherAndIsAdded() {
    redEdges();
    Code cross = f2();
    Code sowing = sown(cross, "2025-10-01");
    numbered(cross, sowing, "2026-01-01", "red");
    tally(sowing, "2026-02-01", "red", 9, "green", 8);

    FitAnswer answer = ask(FitQuestion.byGenes(), cross);
    assertThat(only(answer).rows()).extracting(FitAnswer.Row::count).containsExactly(10L, 8L);
    assertThat(only(answer).from()).endsWith(", and 1 seedling seen by itself");
    assertThat(answer.notes()).noneMatch(note -> note.contains("not added"));
  }

  @Test
  void aSeedlingNumberedAfterTheTallyIsInIt() {
    redEdges();
    Code cross = f2();
    Code sowing = sown(cross, "2025-10-01");
    tally(sowing, "2026-02-01", "red", 9, "green", 8);
    numbered(cross, sowing, "2026-02-02", "red");

    FitAnswer answer = ask(FitQuestion.byGenes(), cross);
    assertThat(only(answer).rows()).extracting(FitAnswer.Row::count).containsExactly(9L, 8L);
    assertThat(answer.notes()).anyMatch(note -> note.contains("after its tally"));
  }

  @Test
  void whereTheDatesDoNotTellASeedlingIsNotAdded() {
    redEdges();
    Code cross = f2();
    Code sowing = sown(cross, "2025-10-01");
    tally(sowing, "2026-02-01", "red", 9, "green", 8);
    numbered(cross, sowing, "2026", "red");

    FitAnswer answer = ask(FitQuestion.byGenes(), cross);
    assertThat(only(answer).rows()).extracting(FitAnswer.Row::count).containsExactly(9L, 8L);
    assertThat(answer.notes()).anyMatch(note -> note.contains("the dates do not tell"));
  }

  private void numbered(Code cross, Code from, String date, String shows) {
    Code seedling = NextCode.in(bench.store).seedling(cross);
    int number = seedling.part().number();
    bench.say(new Numbered(from, number, number, PartialDate.parse(date), null, null, null));
    bench.showed(seedling, EDGE, shows);
  }

  @Test
  void talliesThatContradictEachOtherAreSaidTo() {
    redEdges();
    Code cross = f2();
    Code lot = bench.harvest(cross);
    Code one = bench.sowing(lot, "2025-10-01", 1);
    Code other = bench.sowing(lot, "2025-10-02", 1);
    tally(one, "2026-02-01", "red", 18, "green", 13);
    tally(other, "2026-02-01", "red", 12, "green", 0);

    // By hand of 18, 13; 12, 0: 43 (18·0 − 13·12)² / (31·12·30·13) = 7.21.
    assertThat(ask(FitQuestion.byGenes(), cross).notes())
        .anyMatch(note -> note.contains("differ more than by chance (chi-square 7.21, p 0.007,"));

    tally(other, "2026-03-01", "red", 8, "green", 4);
    assertThat(ask(FitQuestion.byGenes(), cross).notes())
        .noneMatch(note -> note.contains("differ more than by chance"));
  }
}

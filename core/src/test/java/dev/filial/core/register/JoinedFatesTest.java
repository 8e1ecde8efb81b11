package dev.filial.core.register;

import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.fate;
import static dev.filial.core.register.Bench.joined;
import static dev.filial.core.register.Bench.on;
import static dev.filial.core.register.Bench.ramet;
import static dev.filial.core.register.Bench.struck;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plant that died is dead, under whichever of its codes that was written. */
class JoinedFatesTest {

  private static final String ONE = code("24-001").text();
  private static final String TWO = code("24-002").text();

  private final Bench bench = new Bench();

  @BeforeEach
  void twoTags() {
    bench.plant("24-001", "Echeveria laui");
    bench.plant("24-002", "Echeveria laui");
  }

  private JoinedFates fates() {
    return JoinedFates.of(bench.book, code("24-001"), code("24-002"));
  }

  /** Joins them as the two records together tell it, which is taken without a warning. */
  private void join() {
    assertThat(fates().isConflict()).isFalse();
    assertThat(bench.warnings(fates().joined("one stem"))).isEmpty();
  }

  private void requireEnd(String code, Fate fate, String until) {
    Item item = bench.book.resolved(code(code)).orElseThrow();
    assertThat(item.fate()).isEqualTo(fate);
    assertThat(item.until()).isEqualTo(on(until));
  }

  @ParameterizedTest
  @CsvSource({"DEAD, died", "GIVEN, was given away", "DISCARDED, was thrown out"})
  void thatIsGoneUnderTheOtherCodeIsGone(Fate end, String word) {
    bench.say(fate("24-002", end, "2026-04"));
    assertThat(fates().words())
        .contains(TWO + " " + word + " in 2026-04, and so " + ONE + " is gone");
    join();
    requireEnd("24-001", end, "2026-04");
    requireEnd("24-002", end, "2026-04");
  }

  @Test
  void thatDiedOnADayNobodyKnowsIsDeadToo() {
    bench.say(fate("24-002", Fate.DEAD, null));
    assertThat(fates().words()).contains(TWO + " died, and so " + ONE + " is gone");
    join();
    requireEnd("24-001", Fate.DEAD, null);
  }

  @Test
  void thatIsGoneUnderTheCodeThatIsKeptStaysGone() {
    bench.say(fate("24-001", Fate.DEAD, "2026-04"));
    assertThat(fates().words()).contains(ONE + " died in 2026-04, and so " + TWO + " is gone");
    assertThat(fates().joined("one stem"))
        .isEqualTo(new Joined(code("24-001"), code("24-002"), "one stem"));
    join();
    requireEnd("24-002", Fate.DEAD, "2026-04");
  }

  @Test
  void thatIsHereUnderBothIsHereAndNothingIsTold() {
    assertThat(fates().words()).isEmpty();
    join();
    requireEnd("24-001", Fate.ALIVE, null);
  }

  @Test
  void thatWasToBeKeptIsKept() {
    bench.say(fate("24-002", Fate.KEPT, "2026-04"));
    assertThat(fates().words()).contains(TWO + " is kept, and so " + ONE + " is");
    join();
    requireEnd("24-001", Fate.KEPT, null);
  }

  @Test
  void theDayIsTakenFromTheRecordThatKnowsIt() {
    bench.say(fate("24-001", Fate.DEAD, null));
    bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    assertThat(fates().words()).isEmpty();
    join();
    requireEnd("24-001", Fate.DEAD, "2026-04");
  }

  @Test
  void ofTwoDaysOfItsDeathThatOfTheKeptRecordHoldsAndBothAreTold() {
    bench.say(fate("24-001", Fate.DEAD, "2026-05"));
    bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    assertThat(fates().words())
        .contains(
            ONE
                + " died in 2026-05, but "
                + TWO
                + " died in 2026-04; the day of "
                + ONE
                + " holds");
    join();
    requireEnd("24-001", Fate.DEAD, "2026-05");
  }

  @Test
  void twoEndsAreAConflict() {
    bench.say(fate("24-001", Fate.GIVEN, "2026-05"));
    bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    assertThat(fates().isConflict()).isTrue();
    assertThat(fates().words())
        .contains(ONE + " was given away in 2026-05, but " + TWO + " died in 2026-04");
    JoinedFates before = fates();
    assertThat(bench.warnings(before.joined("one stem")))
        .containsExactly(
            before.words().orElseThrow()
                + "; what "
                + ONE
                + " says is read from now on, so see which is right");
    requireEnd("24-002", Fate.GIVEN, "2026-05");
  }

  @Test
  void ofTwoEndsTheOneThatSomebodyWhoKnowsSaysHolds() {
    bench.say(fate("24-001", Fate.GIVEN, "2026-05"));
    bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    JoinedFates before = fates();
    long join = bench.say(before.joined("one stem", true));
    requireEnd("24-001", Fate.DEAD, "2026-04");
    bench.say(struck(join));
    requireEnd("24-001", Fate.GIVEN, "2026-05");
    requireEnd("24-002", Fate.DEAD, "2026-04");
    assertThat(bench.warnings(before.joined("one stem", false))).isEmpty();
    requireEnd("24-001", Fate.GIVEN, "2026-05");
  }

  @Test
  void aPlantThatBoreACrossLaterDidNotDie() {
    bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    long crossed = bench.say(cross("26-001", "24-001", "24-001", "2026-06"));
    assertThat(fates().isConflict()).isTrue();
    assertThat(fates().words())
        .contains(
            TWO
                + " died in 2026-04, but "
                + ONE
                + " was seen alive in 2026-06 (entry "
                + crossed
                + ")");
    JoinedFates before = fates();
    bench.say(before.joined("one stem", false));
    requireEnd("24-002", Fate.ALIVE, null);
  }

  @Test
  void norDidOneThatWasFoundAliveUnderTheOtherCode() {
    bench.say(fate("24-001", Fate.DEAD, "2026-04"));
    bench.say(ramet("26-003", "24-002", "2026-06"));
    assertThat(fates().isConflict()).isTrue();
    bench.say(fates().joined("one stem", true));
    requireEnd("24-001", Fate.ALIVE, null);
  }

  @Test
  void whatWasDoneBeforeItDiedContradictsNothing() {
    bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    bench.say(new Moved(List.of(code("24-001")), "bench A", on("2026-04-20"), null));
    join();
    requireEnd("24-001", Fate.DEAD, "2026-04");
  }

  @Test
  void aSignOfLifeUnderAThirdCodeCountsToo() {
    bench.plant("24-003", "Echeveria laui");
    bench.say(joined("24-001", "24-003"));
    bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    bench.say(new Moved(List.of(code("24-003")), "bench A", on("2026-05"), null));
    assertThat(fates().isConflict()).isTrue();
  }

  @Test
  void strikingThatItDiedTellsOfTheJoinThatStillSaysSo() {
    long died = bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    join();
    assertThat(bench.warnings(struck(died)))
        .containsExactly(
            "entry "
                + (died + 1)
                + " joined "
                + TWO
                + " with "
                + ONE
                + " as one plant that is gone, and still says so; put that one right too if it is"
                + " not");
    requireEnd("24-001", Fate.DEAD, "2026-04");
  }

  @Test
  void strikingTheJoinBringsThePlantBack() {
    bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    long join = bench.say(fates().joined("one stem"));
    requireEnd("24-001", Fate.DEAD, "2026-04");
    bench.say(struck(join));
    requireEnd("24-001", Fate.ALIVE, null);
    requireEnd("24-002", Fate.DEAD, "2026-04");
  }

  @Test
  void whatIsWrittenLaterHolds() {
    bench.say(fate("24-002", Fate.DEAD, "2026-04"));
    long join = bench.say(fates().joined("one stem"));
    assertThat(bench.warnings(fate("24-001", Fate.DEAD, "2026-03")))
        .containsExactly(
            ONE
                + " was gone already, by entry "
                + join
                + "; if this says it better, amend that one");
    bench.say(fate("24-001", Fate.KEPT, "2026-07"));
    requireEnd("24-001", Fate.KEPT, null);
  }

  @Test
  void aPlantIsNotUsedUpAndOnlyWhatIsGoneHasADay() {
    assertThatThrownBy(() -> new Joined(code("24-001"), code("24-002"), "x", Fate.USED_UP, null))
        .hasMessageContaining("a plant is not used up");
    assertThatThrownBy(() -> new Joined(code("24-001"), code("24-002"), "x", Fate.KEPT, on("2026")))
        .hasMessageContaining("on which a plant left or died");
    assertThatThrownBy(() -> new Joined(code("24-001"), code("24-002"), "x", null, on("2026")))
        .isInstanceOf(IllegalArgumentException.class);
  }
}

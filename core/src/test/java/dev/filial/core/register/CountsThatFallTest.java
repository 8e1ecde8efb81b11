package dev.filial.core.register;

import static dev.filial.core.register.Bench.alive;
import static dev.filial.core.register.Bench.amended;
import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.edge;
import static dev.filial.core.register.Bench.germinated;
import static dev.filial.core.register.Bench.harvest;
import static dev.filial.core.register.Bench.numbered;
import static dev.filial.core.register.Bench.on;
import static dev.filial.core.register.Bench.sowing;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How many have come up in all cannot fall, and no more are tallied than there were. */
class CountsThatFallTest {

  private final Bench bench = new Bench();
  private final String sown = code("25-001 S1").text();

  @BeforeEach
  void tenSeedsInOneSowing() {
    bench.plant("24-001", "Echeveria laui");
    bench.plant("24-002", "Echeveria agavoides");
    bench.say(cross("25-001", "24-001", "24-002", "2025-03-04"));
    bench.say(harvest("25-001 H1", "2025-06-01", "40"));
    bench.say(sowing("25-001 S1", "25-001 H1", "2025-06-10", "10"));
    bench.say(edge());
  }

  @Test
  void aLowerCountIsRemarkedOnAndTheHigherHolds() {
    long eight = bench.say(germinated(sown, "2025-07-01", "8"));
    assertThat(bench.warnings(germinated(sown, "2025-07-10", "5")))
        .containsExactly(
            "a count of all that came up cannot fall, and in "
                + sown
                + " it was 8 on 2025-07-01 (entry "
                + eight
                + ") and is 5 on 2025-07-10; the higher one holds until the wrong one is amended");
    assertThat(bench.item(sown).count()).isEqualTo(Count.of(8));
    bench.say(amended(eight, germinated(sown, "2025-07-01", "4")));
    assertThat(bench.item(sown).count()).isEqualTo(Count.of(5));
  }

  @Test
  void soIsAHigherOneOfAnEarlierDayTypedInLater() {
    bench.say(germinated(sown, "2025-07-10", "5"));
    assertThat(bench.warnings(germinated(sown, "2025-07-01", "8"))).hasSize(1);
    assertThat(bench.warnings(germinated(sown, "2025-06-30", "4"))).isEmpty();
    assertThat(bench.item(sown).count()).isEqualTo(Count.of(8));
  }

  /** Those that died have come up all the same: worked by hand, 8 up, 6 alive, 9 up, 7 alive. */
  @Test
  void theDeadStayCounted() {
    bench.say(germinated(sown, "2025-07-01", "8"));
    bench.say(alive(sown, "2025-07-05", "6"));
    bench.say(germinated(sown, "2025-07-10", "6"));
    assertThat(bench.item(sown).count()).isEqualTo(Count.of(6));
    bench.say(germinated(sown, "2025-07-20", "9"));
    assertThat(bench.item(sown).count()).isEqualTo(Count.of(7));
  }

  private Tallied tally(long red, long green) {
    return new Tallied(
        code("25-001 S1"), "edge", Map.of("red", red, "green", green), on("2025-08-01"), null);
  }

  @Test
  void aTallyOfMoreThanWereSownIsRemarkedOn() {
    assertThat(bench.warnings(tally(10, 2)))
        .containsExactly(
            "more of "
                + sown
                + " are tallied (12) than were sown (10): one of the two is wrong, or some seeds"
                + " gave two; amend the one that is wrong");
    assertThat(bench.warnings(tally(8, 2))).isEmpty();
  }

  @Test
  void soIsOneOfMoreThanStoodThereButThoseNumberedSinceCount() {
    bench.say(alive(sown, "2025-07-05", "5"));
    assertThat(bench.warnings(tally(5, 2)))
        .containsExactly(
            "more of "
                + sown
                + " are tallied (7) than stood there by the last count (5); count it again, or"
                + " amend the one that is wrong");
    bench.say(numbered(sown, 1, 3, "2025-07-20"));
    assertThat(bench.warnings(tally(3, 2))).isEmpty();
    assertThat(bench.warnings(tally(4, 2))).hasSize(1);
  }

  @Test
  void aJoinedRecordThatWasGoneIsRemarkedOn() {
    bench.say(numbered(sown, 1, 2, "2025-07-20"));
    bench.say(Bench.fate("25-001-2", Fate.DEAD, "2025-10-01"));
    String one = code("25-001-1").text();
    assertThat(bench.warnings(Bench.joined("25-001-1", "25-001-2")))
        .isEqualTo(
            List.of(
                code("25-001-2").text()
                    + " was gone on 2025-10-01, and is read as "
                    + one
                    + " from now on, which is still here; if the plant is gone, say so of "
                    + one));
  }
}

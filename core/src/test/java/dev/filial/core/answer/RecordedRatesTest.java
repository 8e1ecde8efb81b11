package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import dev.filial.core.register.Sown;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Germination and survival as the register has seen them. */
class RecordedRatesTest {

  private final InventedBench bench = new InventedBench();
  private final Code cross = bench.cross(bench.plant(LAUI), bench.plant(AGAVOIDES));
  private final Code lot = bench.harvest(cross);

  private Code sown(Count seeds) {
    Code sowing = NextCode.in(bench.store).sowing(cross);
    bench.say(
        new Sown(
            sowing,
            lot,
            PartialDate.parse("2025-10-01"),
            seeds,
            null,
            null,
            false,
            null,
            false,
            null,
            null,
            List.of(),
            List.of(),
            null,
            null));
    return sowing;
  }

  private void counted(Code pot, String date, String germinated, String alive) {
    bench.say(
        new Counted(
            PartialDate.parse(date),
            List.of(new Counted.Reading(pot, Count.parse(germinated), Count.parse(alive))),
            null));
  }

  private RecordedRates.Rates ask() {
    return RecordedRates.of(bench.store).ofFamily(cross);
  }

  private static String text(Optional<SeedRate> rate) {
    return rate.map(SeedRate::text).orElse("none");
  }

  @Test
  void theLastCountOfEachSowingIsTaken() {
    Code one = sown(Count.of(25));
    Code other = sown(Count.of(15));
    counted(one, "2025-11-01", "18", "17");
    counted(one, "2025-10-20", "5", "5");
    counted(other, "2025-11-01", "10", "8");

    assertThat(text(ask().germination())).isEqualTo("28 of 40");
    assertThat(text(ask().survival())).isEqualTo("25 of 28");
    assertThat(text(RecordedRates.of(bench.store).ofAll().germination())).isEqualTo("28 of 40");
  }

  @Test
  void aCrossNeverSownGoesByThoseOfTheSameSpecies() {
    counted(sown(Count.of(25)), "2025-11-01", "18", "17");
    Code reciprocal = bench.cross(bench.plant(AGAVOIDES), bench.plant(LAUI));
    Code selfed = bench.selfed(bench.plant(LAUI));

    SeedRate rate =
        RecordedRates.of(bench.store).ofSameSpecies(reciprocal).germination().orElseThrow();
    assertThat(rate.text()).isEqualTo("18 of 25");
    assertThat(rate.from()).isEqualTo("sowings of Echeveria agavoides × Echeveria laui");
    assertThat(text(RecordedRates.of(bench.store).ofSameSpecies(selfed).germination()))
        .isEqualTo("none");
  }

  @Test
  void sowingsThatDifferCountForFewer() {
    counted(sown(Count.of(100)), "2025-11-01", "60", "60");
    counted(sown(Count.of(100)), "2025-11-01", "40", "40");

    // Chi-square 8 on one degree of freedom: each seed counts for an eighth.
    assertThat(text(ask().germination())).isEqualTo("13 of 25");
    assertThat(ask().germination().orElseThrow().from())
        .contains("which differ and so count as 25 and not as 200");
  }

  @Test
  void whatWasCountedTooEarlyIsNoRate() {
    counted(sown(Count.of(50)), "2025-10-03", "1", "1");

    assertThat(text(ask().germination())).isEqualTo("none");
  }

  @Test
  void guessesAreNoCounts() {
    counted(sown(Count.about(30)), "2025-11-01", "18", "17");
    counted(sown(Count.of(20)), "2025-11-01", "~12", "12");

    assertThat(text(ask().germination())).isEqualTo("none");
  }

  @Test
  void whereSeedlingsWentElsewhereNothingIsSaidOfSurvival() {
    Code sowing = sown(Count.of(25));
    counted(sowing, "2025-11-01", "18", "18");
    bench.say(
        new Potted(
            NextCode.in(bench.store).group(cross),
            sowing,
            PartialDate.parse("2025-12-01"),
            Count.of(10),
            null,
            null));
    counted(sowing, "2026-01-01", "18", "8");

    assertThat(text(ask().germination())).isEqualTo("18 of 25");
    assertThat(text(ask().survival())).isEqualTo("none");
  }
}

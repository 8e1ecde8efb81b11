package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Interval;
import dev.filial.core.register.IntervalStated;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How long things take, by what a register's own dates show. */
class LearnedIntervalsTest {

  private static final LocalDate POLLINATED = LocalDate.parse("2026-02-01");

  private final InventedBench bench = new InventedBench();

  /** A sowing of 1 April 2026 of which the first came up after so many days. */
  private void sownAndUpAfter(Code packet, int days) {
    Code sowing = bench.sowing(packet.lot(1), "2026-04-01", 0);
    String nothing = LocalDate.parse("2026-04-01").plusDays(days - 1).toString();
    String some = LocalDate.parse("2026-04-01").plusDays(days).toString();
    bench.say(counted(nothing, sowing, 0));
    bench.say(counted(some, sowing, 2));
  }

  private static Counted counted(String day, Code sowing, int up) {
    return new Counted(
        PartialDate.parse(day), List.of(new Counted.Reading(sowing, Count.of(up), null)), null);
  }

  private IntervalDays comingUp(String taxon) {
    return Intervals.in(bench.store).days(Interval.COMING_UP, TaxonName.parse(taxon));
  }

  @Test
  void fourSowingsAreNotEnoughAndFiveAre() {
    Code packet = bench.packet(LAUI);
    for (int days : new int[] {6, 9, 7, 12}) {
      sownAndUpAfter(packet, days);
    }
    assertThat(comingUp(LAUI))
        .isEqualTo(new IntervalDays(21, IntervalDays.Whence.COMMON_PRACTICE, null, 0));
    sownAndUpAfter(packet, 8);
    // 6, 7, 8, 9, 12: nine in ten of five are all five.
    assertThat(comingUp(LAUI))
        .isEqualTo(new IntervalDays(12, IntervalDays.Whence.LEARNED, LAUI, 5));
  }

  @Test
  void ofTenSowingsTheSlowestIsNotWaitedFor() {
    Code packet = bench.packet(LAUI);
    for (int days = 6; days <= 14; days++) {
      sownAndUpAfter(packet, days);
    }
    sownAndUpAfter(packet, 40);
    assertThat(comingUp(LAUI).days()).isEqualTo(14);
  }

  @Test
  void aSpeciesOfWhichLittleIsKnownGoesByItsGenus() {
    Code packet = bench.packet(LAUI);
    for (int i = 0; i < 5; i++) {
      sownAndUpAfter(packet, 9);
    }
    assertThat(comingUp(AGAVOIDES))
        .isEqualTo(new IntervalDays(9, IntervalDays.Whence.LEARNED, "Echeveria", 5));
    assertThat(comingUp("Sedum album"))
        .isEqualTo(new IntervalDays(9, IntervalDays.Whence.LEARNED, null, 5));
  }

  @Test
  void whatWasStatedGoesBeforeWhatWasLearnedOfTheSameTaxonAndNotOfANarrowerOne() {
    Code packet = bench.packet(LAUI);
    for (int i = 0; i < 5; i++) {
      sownAndUpAfter(packet, 9);
    }
    bench.say(new IntervalStated(Interval.COMING_UP, 30, "Echeveria", null));
    assertThat(comingUp(LAUI).days()).isEqualTo(9);
    assertThat(comingUp(AGAVOIDES).days()).isEqualTo(30);
    bench.say(new IntervalStated(Interval.COMING_UP, 15, LAUI, null));
    assertThat(comingUp(LAUI)).isEqualTo(new IntervalDays(15, IntervalDays.Whence.STATED, LAUI, 0));
  }

  @Test
  void fiveHarvestsOfOneCrossAreOneCase() {
    for (int i = 0; i < 4; i++) {
      pollinatedAndHarvested(50 + i);
    }
    Code cross = pollinatedAndHarvested(58);
    for (int days : new int[] {60, 62, 64, 66}) {
      harvested(cross, days);
    }
    // 50, 51, 52, 53 and, of the last, 58: five crosses, and the middle one is 52.
    assertThat(Intervals.in(bench.store).days(Interval.RIPENING, TaxonName.parse(LAUI)))
        .isEqualTo(new IntervalDays(52, IntervalDays.Whence.LEARNED, LAUI, 5));
    pollinatedAndHarvested(55);
    // 50, 51, 52, 53, 55, 58: the mean of 52 and 53, rounded up.
    assertThat(Intervals.in(bench.store).days(Interval.RIPENING, TaxonName.parse(LAUI)).days())
        .isEqualTo(53);
  }

  private Code pollinatedAndHarvested(int days) {
    Code code = NextCode.in(bench.store).ofYear(2026);
    bench.say(
        new Pollinated(
            code,
            bench.plant(LAUI),
            new Pollen.Itself(),
            PartialDate.of(POLLINATED),
            null,
            List.of(),
            Fraction.ZERO,
            Fraction.ZERO,
            Fraction.ZERO,
            null,
            null,
            false,
            null,
            null));
    harvested(code, days);
    return code;
  }

  private void harvested(Code cross, int days) {
    bench.say(
        new Harvested(
            NextCode.in(bench.store).lot(cross),
            PartialDate.of(POLLINATED.plusDays(days)),
            null,
            false,
            Count.of(20),
            null,
            null,
            null,
            null));
  }

  @Test
  void aPlantFlowersForAsLongAsItUsuallyDoes() {
    Code plant = bench.plant(LAUI);
    int[] lengths = {20, 10, 30, 16, 18};
    for (int i = 0; i < lengths.length; i++) {
      LocalDate open = LocalDate.of(2020 + i, 5, 1);
      // The end is written first, as by one who types a season in backwards.
      bench.say(flowered(plant, Bloom.OVER, open.plusDays(lengths[i])));
      bench.say(flowered(plant, Bloom.OPEN, open.plusDays(3)));
      bench.say(flowered(plant, Bloom.OPEN, open));
    }
    // 10, 16, 18, 20, 30: the middle one.
    assertThat(Intervals.in(bench.store).days(Interval.FLOWERING, TaxonName.parse(LAUI)).days())
        .isEqualTo(18);
  }

  private static Flowered flowered(Code plant, Bloom bloom, LocalDate day) {
    return new Flowered(List.of(plant), bloom, PartialDate.of(day), null);
  }
}

package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Interval;
import dev.filial.core.register.IntervalStated;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Promised;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.SeedAcquired;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is written of flowers, pollen and fruit, in few words, on an invented bench. */
final class FlowersStory {

  final InventedBench bench = new InventedBench();
  private int crosses;

  static @Nullable PartialDate day(@Nullable String text) {
    return text == null ? null : PartialDate.parse(text);
  }

  static LocalDate on(String text) {
    return LocalDate.parse(text);
  }

  Code plant(String taxon) {
    return bench.plant(taxon);
  }

  void open(String day, Code... plants) {
    bench.say(new Flowered(List.of(plants), Bloom.OPEN, day(day), null));
  }

  void over(String day, Code... plants) {
    bench.say(new Flowered(List.of(plants), Bloom.OVER, day(day), null));
  }

  void pollen(Code plant, PollenKept.Step step, @Nullable String day) {
    bench.say(new PollenKept(plant, step, null, day(day), null, null, null));
  }

  void usually(Interval interval, int days, @Nullable String taxon) {
    bench.say(new IntervalStated(interval, days, taxon, null));
  }

  Code cross(Code seed, Code pollen, @Nullable Count flowers) {
    return pollinated(
        seed,
        seed.equals(pollen) ? new Pollen.Itself() : new Pollen.OnePlant(pollen),
        flowers,
        Protection.BAGGED);
  }

  Code pollinated(Code seed, Pollen pollen, @Nullable Count flowers, Protection protection) {
    Code code = Code.of(25, 100 + ++crosses);
    bench.say(
        new Pollinated(
            code,
            seed,
            pollen,
            day("2025-03-01"),
            flowers,
            List.of(protection),
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

  void fruit(
      Code cross,
      @Nullable Count set,
      @Nullable Count failed,
      @Nullable Count aborted,
      @Nullable Count eaten) {
    bench.say(new FruitRecorded(cross, day("2025-04-01"), set, failed, aborted, eaten, null, null));
  }

  Code harvest(Code cross, String day, String count) {
    Code lot = NextCode.in(bench.store).lot(cross);
    bench.say(
        new Harvested(lot, day(day), null, false, Count.parse(count), null, null, null, null));
    return lot;
  }

  Code packet(String taxon, @Nullable String day, String count) {
    Code code = NextCode.in(bench.store).ofYear(2024);
    bench.say(
        new SeedAcquired(
            code,
            Determination.of(taxon),
            Provenance.UNKNOWN,
            day(day),
            Count.parse(count),
            null,
            null));
    return code.lot(1);
  }

  void promise(Code lot, @Nullable String count, String to) {
    bench.say(
        new Promised(
            List.of(lot), count == null ? null : Count.parse(count), to, day("2025-07-01"), null));
  }

  void give(Code lot, @Nullable String count, String to) {
    bench.say(
        new FateRecorded(
            List.of(lot),
            Fate.GIVEN,
            day("2025-08-01"),
            count == null ? null : Count.parse(count),
            to,
            null,
            null));
  }

  void died(Code plant, String day) {
    bench.say(new FateRecorded(List.of(plant), Fate.DEAD, day(day), null, null, null, null));
  }

  Code offset(Code source) {
    Code code = NextCode.in(bench.store).ofYear(2024);
    bench.say(
        new Propagated(
            code, source, "offset", day("2024"), false, List.of(), List.of(), null, null));
    return code;
  }
}

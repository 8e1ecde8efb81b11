package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Sown;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A bench on which seed is sown and counted. */
final class SownBench {

  final InventedBench bench = new InventedBench();

  /** A sowing of a lot that was sown with so many seeds into so many pots of equal size. */
  Code sown(Code lot, @Nullable String date, String seeds, int pots, @Nullable String medium) {
    Code sowing = NextCode.in(bench.store).sowing(lot);
    Code first = NextCode.in(bench.store).group(lot);
    Count all = Count.parse(seeds);
    bench.say(
        new Sown(
            sowing,
            lot,
            date == null ? null : PartialDate.parse(date),
            all,
            medium,
            null,
            false,
            null,
            false,
            null,
            null,
            List.of(),
            java.util.stream.IntStream.range(0, pots)
                .mapToObj(
                    i ->
                        new Sown.Filled(
                            lot.whole().group(first.part().number() + i),
                            all.isExact()
                                ? Count.of(all.size().orElseThrow() / pots)
                                : Count.unknown(),
                            null))
                .toList(),
            null,
            null));
    return sowing;
  }

  Code sown(Code lot, String seeds) {
    return sown(lot, "2025-10-01", seeds, 0, null);
  }

  /** How many came up and are alive; null for what was not counted. */
  void counted(Code pot, @Nullable String date, @Nullable String up, @Nullable String alive) {
    bench.say(
        new Counted(
            date == null ? null : PartialDate.parse(date),
            List.of(
                new Counted.Reading(
                    pot,
                    up == null ? null : Count.parse(up),
                    alive == null ? null : Count.parse(alive))),
            null));
  }

  void left(Code code, Fate fate, String date, @Nullable String number) {
    bench.say(
        new FateRecorded(
            List.of(code),
            fate,
            PartialDate.parse(date),
            number == null ? null : Count.parse(number),
            null,
            null,
            null));
  }
}

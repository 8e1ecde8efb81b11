package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Item;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Statement;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * When the seed of a lot was ripe, or where nobody knows that, when it came: of what was put apart
 * that of the lot it was taken from, of what was mixed that of its parts.
 *
 * @param first the earliest of these days
 * @param last the latest of them, the same unless the lot was mixed
 * @param came whether one of them is the day on which seed came, so that it may be older
 */
record SeedBegun(PartialDate first, PartialDate last, boolean came) {

  /** Of a lot; empty where the day of any part of it is not known. */
  static Optional<SeedBegun> of(RegisterView view, Code lot) {
    Deque<Code> open = new ArrayDeque<>(List.of(lot));
    Set<Code> walked = new HashSet<>();
    SeedBegun all = null;
    while (!open.isEmpty()) {
      Code next = open.remove();
      Optional<Item> item = walked.add(next) ? view.item(next) : Optional.empty();
      if (item.isEmpty()) {
        continue;
      }
      Statement said = view.effective(item.get().entry()).orElse(null);
      if (said instanceof LotSplit split) {
        open.add(split.from());
      } else if (said instanceof LotsMerged merged) {
        merged.parts().forEach(part -> open.add(part.lot()));
      } else {
        PartialDate date = said == null ? null : said.date();
        if (date == null || !(said instanceof Harvested || said instanceof SeedAcquired)) {
          return Optional.empty();
        }
        all = spanning(all, new SeedBegun(date, date, said instanceof SeedAcquired));
      }
    }
    return Optional.ofNullable(all);
  }

  private static SeedBegun spanning(@Nullable SeedBegun one, SeedBegun other) {
    return one == null
        ? other
        : new SeedBegun(
            other.first.earliest().isBefore(one.first.earliest()) ? other.first : one.first,
            other.last.latest().isAfter(one.last.latest()) ? other.last : one.last,
            one.came || other.came);
  }
}

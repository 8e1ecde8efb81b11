package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Interval;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Tended;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tags to be written anew: of plants and pots, by when they were written last. */
final class TagWork {

  private final RegisterView view;
  private final Intervals intervals;
  private final TaxaBehind taxa;

  TagWork(RegisterView view, Intervals intervals, TaxaBehind taxa) {
    this.view = view;
    this.intervals = intervals;
    this.taxa = taxa;
  }

  /** Those due by {@code day}. */
  List<Task> tasks(LocalDate day) {
    List<Task> tasks = new ArrayList<>();
    Map<Code, LocalDate> rewritten = rewritten();
    for (Item item : view.items(Set.of(Item.Kind.PLANT, Item.Kind.SEEDLING, Item.Kind.GROUP))) {
      PartialDate since = item.since();
      if (since == null
          || !item.fate().isHere()
          || item.neverHeld()
          || item.sameAs() != null
          || isEmpty(item)) {
        continue;
      }
      int days = intervals.daysOf(Interval.TAG_FADING, () -> taxa.of(item.code()).one()).days();
      LocalDate written = since.latest();
      LocalDate anew = rewritten.get(item.code());
      if (anew != null && anew.isAfter(written)) {
        written = anew;
      }
      if (!written.plusDays(days).isAfter(day)) {
        tasks.add(
            new Task(
                Task.Work.REWRITE_TAG,
                List.of(item.code()),
                written.plusDays(days),
                "written " + written,
                item.place()));
      }
    }
    return tasks;
  }

  private static boolean isEmpty(Item item) {
    return item.count() != null && item.count().size().orElse(1) == 0;
  }

  /** When tags were written anew, the last time of each. */
  private Map<Code, LocalDate> rewritten() {
    Map<Code, LocalDate> last = new HashMap<>();
    for (long entry : view.entriesOf(Set.of(Tended.class))) {
      if (view.effective(entry).orElse(null) instanceof Tended tended
          && tended.care() == Tended.Care.TAG_REWRITTEN
          && tended.date() != null) {
        LocalDate day = tended.date().latest();
        for (Code code : tended.codes()) {
          last.merge(code, day, (one, other) -> one.isAfter(other) ? one : other);
        }
      }
    }
    return last;
  }
}

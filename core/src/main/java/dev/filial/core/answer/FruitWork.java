package dev.filial.core.answer;

import dev.filial.core.register.Count;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Interval;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Fruit that should be ripe: of crosses of which neither a harvest nor a failure was written. */
final class FruitWork {

  private final RegisterView view;
  private final Intervals intervals;
  private final TaxaBehind taxa;

  FruitWork(RegisterView view, Intervals intervals, TaxaBehind taxa) {
    this.view = view;
    this.intervals = intervals;
    this.taxa = taxa;
  }

  /** Those due by {@code until}. */
  List<Task> tasks(LocalDate until) {
    List<Task> tasks = new ArrayList<>();
    for (Item cross : view.items(Set.of(Item.Kind.CROSS))) {
      // What is said of a cross is read only where its fruit may be due: a book has many crosses.
      PartialDate since = cross.since();
      if (since == null || since.latest().isAfter(until) || isOldAndRaised(cross, since, until)) {
        continue;
      }
      if (view.effective(cross.entry()).orElse(null) instanceof Pollinated pollinated) {
        add(tasks, cross, pollinated, since.latest());
      }
    }
    return tasks;
  }

  /** Of a cross more than a year old that something was raised of, no fruit hangs any more. */
  private boolean isOldAndRaised(Item cross, PartialDate since, LocalDate until) {
    return since.latest().plusDays(Task.Work.HARVEST.givenUpAfter()).isBefore(until)
        && isRaised(cross);
  }

  private boolean isRaised(Item cross) {
    return view.codesUnder(cross.code()).stream().anyMatch(code -> !code.isWhole());
  }

  private void add(List<Task> tasks, Item cross, Pollinated pollinated, LocalDate day) {
    Fruit fruit = fruit(cross);
    if (fruit.isOver(pollinated.flowers())) {
      return;
    }
    IntervalDays usual =
        intervals.daysOf(Interval.RIPENING, () -> taxa.of(pollinated.seedParent()).one());
    tasks.add(
        new Task(
            Task.Work.HARVEST,
            List.of(cross.code()),
            day.plusDays(usual.days()),
            (fruit.set == null ? "pollinated " : fruit.set + " set, pollinated ")
                + day
                + "; usual: "
                + usual.text(),
            cross.place()));
  }

  /** What became of the flowers of one cross, over all entries. */
  private static final class Fruit {
    private @Nullable Count set;
    private Count failed = Count.of(0);
    private Count lost = Count.of(0);
    private Count harvested = Count.of(0);
    private boolean anyHarvest;
    private boolean everyHarvestCounted = true;

    /** Whether no fruit can still hang: all failed, were lost or are harvested. */
    boolean isOver(@Nullable Count flowers) {
      if (set == null) {
        return anyHarvest || isAllMet(flowers, Count.of(0));
      }
      if (anyHarvest && !everyHarvestCounted) {
        return true;
      }
      OptionalLong left = set.less(lost).less(harvested).size();
      boolean none = left.isPresent() && left.getAsLong() == 0;
      return none && (anyHarvest || isAllMet(flowers, set));
    }

    private boolean isAllMet(@Nullable Count flowers, Count alsoMet) {
      OptionalLong met = failed.plus(alsoMet).plus(lost).size();
      if (met.isEmpty() || met.getAsLong() == 0) {
        return false;
      }
      return flowers == null
          || flowers.size().isEmpty()
          || met.getAsLong() >= flowers.size().getAsLong();
    }
  }

  private Fruit fruit(Item cross) {
    Fruit fruit = new Fruit();
    for (long entry : view.entriesOn(Subject.of(cross.code()))) {
      Statement statement = view.effective(entry).orElseThrow();
      if (statement instanceof FruitRecorded recorded) {
        if (recorded.set() != null) {
          fruit.set = fruit.set == null ? recorded.set() : fruit.set.plus(recorded.set());
        }
        fruit.failed = plus(fruit.failed, recorded.failed());
        fruit.lost = plus(plus(fruit.lost, recorded.aborted()), recorded.eaten());
      } else if (statement instanceof Harvested harvest) {
        fruit.anyHarvest = true;
        fruit.everyHarvestCounted &= harvest.fruits() != null || harvest.apart();
        fruit.harvested =
            plus(fruit.harvested, harvest.fruits() == null ? Count.of(1) : harvest.fruits());
      }
    }
    // Seedlings of a cross whose harvest was never written were harvested all the same.
    if (!fruit.anyHarvest && isRaised(cross)) {
      fruit.anyHarvest = true;
      fruit.everyHarvestCounted = false;
    }
    return fruit;
  }

  private static Count plus(Count sum, @Nullable Count more) {
    return more == null ? sum : sum.plus(more);
  }
}

package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Interval;
import dev.filial.core.register.Item;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Tended;
import dev.filial.core.register.Treated;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What sowings want: a count while they come up, a look into the bag, the bag taken off, or a
 * thought about why nothing came up. Pot by pot, since those of one sowing come up apart.
 */
final class SowingWork {

  private final RegisterView view;
  private final Intervals intervals;
  private final TaxaBehind taxa;

  SowingWork(RegisterView view, Intervals intervals, TaxaBehind taxa) {
    this.view = view;
    this.intervals = intervals;
    this.taxa = taxa;
  }

  /** How many had come up by a day. */
  private record Seen(LocalDate day, long up) {}

  /** What was written of one pot, or of a sowing that stands in one. */
  private static final class Diary {
    private final List<Seen> counts = new ArrayList<>();
    private @Nullable LocalDate looked;
    private boolean opened;
    private boolean cameUp;
    private boolean prickedOut;

    void look(@Nullable PartialDate date) {
      if (date != null && (looked == null || date.latest().isAfter(looked))) {
        looked = date.latest();
      }
    }
  }

  /** All that is due of sowings, on whatever day. */
  List<Task> tasks() {
    List<Task> tasks = new ArrayList<>();
    for (Item item : view.items(Set.of(Item.Kind.SOWING))) {
      if (view.effective(item.entry()).orElse(null) instanceof Sown sown && sown.date() != null) {
        add(tasks, item, sown, sown.date().latest());
      }
    }
    return tasks;
  }

  private void add(List<Task> tasks, Item sowing, Sown sown, LocalDate day) {
    if (sown.groups().isEmpty()) {
      Diary diary = diary(List.of(sowing.code()));
      addPot(tasks, sowing, sown, day, sown.seeds(), diary);
      return;
    }
    for (Sown.Filled filled : sown.groups()) {
      Optional<Item> pot = view.item(filled.group());
      if (pot.isPresent()) {
        addPot(
            tasks,
            pot.get(),
            sown,
            day,
            filled.seeds(),
            diary(List.of(sowing.code(), filled.group())));
      }
    }
  }

  private void addPot(
      List<Task> tasks, Item pot, Sown sown, LocalDate sownOn, Count seeds, Diary diary) {
    if (!pot.fate().isHere() || (Count.of(0).equals(pot.count()) && diary.cameUp)) {
      return;
    }
    Supplier<Optional<TaxonName>> names = () -> taxa.of(pot.code()).one();
    if (!diary.cameUp) {
      IntervalDays usual = intervals.daysOf(Interval.COMING_UP, names);
      tasks.add(
          task(
              Task.Work.NOTHING_UP,
              pot,
              sownOn.plusDays(usual.days()),
              (diary.counts.isEmpty() ? "never counted" : "none up")
                  + " since "
                  + sownOn
                  + "; usual: "
                  + usual.text()));
    } else {
      lastCount(diary, seeds)
          .ifPresent(
              last -> {
                IntervalDays usual = intervals.daysOf(Interval.COUNTING, names);
                tasks.add(
                    task(
                        Task.Work.COUNT,
                        pot,
                        last.day().plusDays(usual.days()),
                        "last counted " + last.day() + "; every " + usual.text()));
              });
    }
    if (sown.closed() && !diary.opened) {
      IntervalDays opening = intervals.daysOf(Interval.OPENING, names);
      tasks.add(
          task(
              Task.Work.OPEN,
              pot,
              sownOn.plusDays(opening.days()),
              "closed since " + sownOn + "; usual: " + opening.text()));
      IntervalDays looking = intervals.daysOf(Interval.LOOKING_INTO, names);
      LocalDate last = diary.looked == null ? sownOn : diary.looked;
      tasks.add(
          task(
              Task.Work.LOOK_INTO,
              pot,
              last.plusDays(looking.days()),
              (diary.looked == null ? "closed since " : "last seen on ")
                  + last
                  + "; every "
                  + looking.text()));
    }
  }

  /**
   * The last count, if more are still expected: not when all seeds are up or seedlings were pricked
   * out, nor when the last count found no more than the one before.
   */
  private static Optional<Seen> lastCount(Diary diary, Count seeds) {
    List<Seen> counts = diary.counts;
    if (counts.isEmpty() || diary.prickedOut) {
      return Optional.empty();
    }
    counts.sort(Comparator.comparing(Seen::day));
    Seen last = counts.get(counts.size() - 1);
    OptionalLong all = seeds.size();
    boolean complete = seeds.isExact() && all.isPresent() && last.up() >= all.getAsLong();
    boolean still = counts.size() > 1 && counts.get(counts.size() - 2).up() >= last.up();
    return complete || still ? Optional.empty() : Optional.of(last);
  }

  private Diary diary(List<Code> codes) {
    Diary diary = new Diary();
    for (Code code : codes) {
      for (long entry : view.entriesOn(Subject.of(code))) {
        Statement statement = view.effective(entry).orElseThrow();
        if (statement instanceof Counted counted) {
          addCounts(diary, counted, code);
        } else if (isTakenFrom(statement, code)) {
          diary.cameUp = true;
          diary.prickedOut = true;
        } else if (statement instanceof Tended tended) {
          diary.opened |= tended.care() == Tended.Care.OPENED;
          diary.look(tended.date());
        } else if (statement instanceof Treated treated) {
          diary.look(treated.date());
        }
      }
    }
    return diary;
  }

  private static boolean isTakenFrom(Statement statement, Code code) {
    return (statement instanceof Numbered numbered && numbered.from().equals(code))
        || (statement instanceof Potted potted && potted.from().equals(code));
  }

  private static void addCounts(Diary diary, Counted counted, Code code) {
    for (Counted.Reading reading : counted.readings()) {
      if (reading.code().equals(code)) {
        diary.look(counted.date());
        Count count = reading.germinated() == null ? reading.alive() : reading.germinated();
        long up = count == null ? 0 : count.size().orElse(1);
        diary.cameUp |= up > 0;
        if (counted.date() != null && (reading.germinated() != null || up == 0)) {
          diary.counts.add(new Seen(counted.date().latest(), up));
        }
      }
    }
  }

  private static Task task(Task.Work work, Item pot, LocalDate due, String why) {
    return new Task(work, List.of(pot.code()), due, why, pot.place());
  }
}

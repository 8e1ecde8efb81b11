package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Caution;
import dev.filial.core.register.Count;
import dev.filial.core.register.Item;
import dev.filial.core.register.Promised;
import dev.filial.core.register.Promises;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is due on the bench on a day: sowings to count, to look into, to open or to wonder about;
 * treatments to repeat; fruit that should be ripe; promises; seed and pollen that get old; tags
 * that fade. After which time something is due is told by {@link Intervals}.
 *
 * <p>Cost: every sowing, cross and lot is looked at once with its entries, every plant by itself,
 * and of every other entry what kind it is of.
 */
public final class WorkQuestion {

  private final RegisterView view;
  private final LocalDate day;
  private final int ahead;
  private final boolean longOverdue;

  private WorkQuestion(RegisterView view, LocalDate day, int ahead, boolean longOverdue) {
    this.view = view;
    this.day = day;
    this.ahead = ahead;
    this.longOverdue = longOverdue;
  }

  /** Asks what is due on {@code day} and was due before. */
  public static WorkQuestion of(RegisterView view, LocalDate day) {
    return new WorkQuestion(view, day, 0, false);
  }

  /**
   * The same, with what will be due within so many days.
   *
   * @throws IllegalArgumentException if the days are negative, or more than 36,500
   */
  public WorkQuestion withDaysAhead(int days) {
    if (days < 0 || days > 36_500) {
      throw new IllegalArgumentException(days + " days ahead cannot be looked at; say 0 to 36500");
    }
    return new WorkQuestion(view, day, days, longOverdue);
  }

  /** The same, with what was due so long ago that it was given up, or never written down. */
  public WorkQuestion withLongOverdue(boolean also) {
    return new WorkQuestion(view, day, ahead, also);
  }

  /**
   * The list.
   *
   * @param day the day asked for
   * @param until the last day looked at
   * @param tasks what is due by then, in the order of {@link Task.Work} and of the days
   * @param longOverdue with how many plants, pots and crosses something was due so long ago that it
   *     was left out
   */
  public record Report(LocalDate day, LocalDate until, List<Task> tasks, int longOverdue) {

    /** Copies the list. */
    public Report {
      tasks = List.copyOf(tasks);
    }
  }

  /** The list. */
  public Report ask() {
    LocalDate until = day.plusDays(ahead);
    List<Task> due = new ArrayList<>();
    int left = 0;
    for (Task task : all(until)) {
      if (task.due().isAfter(until)) {
        continue;
      }
      if (!longOverdue && task.due().plusDays(task.work().givenUpAfter()).isBefore(day)) {
        left += task.codes().size();
      } else {
        due.add(task);
      }
    }
    // What is to be opened is looked into by that.
    Set<Code> opened = new HashSet<>();
    due.stream()
        .filter(task -> task.work() == Task.Work.OPEN)
        .forEach(task -> opened.addAll(task.codes()));
    due.removeIf(task -> task.work() == Task.Work.LOOK_INTO && opened.containsAll(task.codes()));
    return new Report(day, until, together(due), left);
  }

  /** One task of those that differ in nothing but the thing it is done with. */
  private static List<Task> together(List<Task> tasks) {
    Map<List<Object>, TreeSet<Code>> alike = new LinkedHashMap<>();
    for (Task task : tasks) {
      String place = task.place() == null ? "" : task.place();
      alike
          .computeIfAbsent(
              List.of(task.work(), task.due(), task.why(), place), any -> new TreeSet<>())
          .addAll(task.codes());
    }
    List<Task> merged = new ArrayList<>();
    for (Task task : tasks) {
      String place = task.place() == null ? "" : task.place();
      TreeSet<Code> codes = alike.remove(List.of(task.work(), task.due(), task.why(), place));
      if (codes != null) {
        merged.add(new Task(task.work(), List.copyOf(codes), task.due(), task.why(), task.place()));
      }
    }
    merged.sort(
        Comparator.comparing(Task::work)
            .thenComparing(Task::due)
            .thenComparing(task -> task.codes().get(0)));
    return merged;
  }

  private List<Task> all(LocalDate until) {
    Intervals intervals = Intervals.in(view);
    TaxaBehind taxa = TaxaBehind.in(view);
    List<Task> tasks = new ArrayList<>();
    tasks.addAll(new SowingWork(view, intervals, taxa).tasks());
    tasks.addAll(new TreatmentWork(view).tasks());
    tasks.addAll(new FruitWork(view, intervals, taxa).tasks(until));
    tasks.addAll(promises());
    tasks.addAll(new StoreWork(view).tasks(until));
    tasks.addAll(new TagWork(view, intervals, taxa).tasks(until));
    return tasks;
  }

  private List<Task> promises() {
    Set<Code> promised = new LinkedHashSet<>();
    // Each promise calls for the caution about borders, and is found by that.
    for (long entry : view.entriesMentioning(Subject.of(Caution.BORDER))) {
      if (view.effective(entry).orElse(null) instanceof Promised one) {
        promised.addAll(one.codes());
      }
    }
    List<Task> tasks = new ArrayList<>();
    for (Code code : promised) {
      for (Promises.Open open : Promises.of(view, code)) {
        LocalDate since = open.since().date() == null ? day : open.since().date().latest();
        String place = view.item(code).map(Item::place).orElse(null);
        tasks.add(
            new Task(
                Task.Work.SEND,
                List.of(code),
                since,
                (open.count().equals(Count.unknown()) ? "" : open.count() + " ")
                    + "to "
                    + open.to()
                    + ", promised "
                    + (open.since().date() == null ? "some day" : open.since().date()),
                place));
      }
    }
    return tasks;
  }
}

package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Seed and pollen that get old: of which some is left, and whose time is over. */
final class StoreWork {

  private final RegisterView view;

  StoreWork(RegisterView view) {
    this.view = view;
  }

  /** Those old by {@code day}. */
  List<Task> tasks(LocalDate day) {
    List<Task> tasks = new ArrayList<>();
    for (TinQuestion.Line lot : TinQuestion.of(view, day).ask()) {
      add(
          tasks,
          Task.Work.SOW_SOON,
          lot.lot(),
          lot.since(),
          lot.keeps(),
          lot.harvested() ? "harvested " : "came ",
          lot.place());
    }
    for (PollenQuestion.Line batch : PollenQuestion.of(view, day).ask()) {
      add(
          tasks,
          Task.Work.USE_POLLEN,
          batch.plant(),
          batch.gathered(),
          batch.keeps(),
          "gathered ",
          batch.place());
    }
    return tasks;
  }

  private static void add(
      List<Task> tasks,
      Task.Work work,
      Code code,
      @Nullable PartialDate since,
      IntervalDays keeps,
      String what,
      @Nullable String place) {
    if (since != null) {
      tasks.add(
          new Task(
              work,
              List.of(code),
              since.latest().plusDays(keeps.days()),
              what + since + "; usual: " + keeps.text(),
              place));
    }
  }
}

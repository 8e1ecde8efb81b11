package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Treated;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Treatments to be repeated: of each thing the last of its sort and product, if that was to be done
 * again. A whole bag or tray that was treated in one entry stays one task.
 */
final class TreatmentWork {

  private final RegisterView view;

  TreatmentWork(RegisterView view) {
    this.view = view;
  }

  /** All that is due, on whatever day. */
  List<Task> tasks() {
    List<Task> tasks = new ArrayList<>();
    for (long entry : view.entriesMentioning(Subject.REPEATED_TREATMENT)) {
      if (view.effective(entry).orElse(null) instanceof Treated treated
          && treated.everyDays() != null
          && treated.date() != null) {
        add(tasks, entry, treated, treated.everyDays(), treated.date().latest());
      }
    }
    return tasks;
  }

  private void add(List<Task> tasks, long entry, Treated treated, int every, LocalDate day) {
    List<Code> codes = new ArrayList<>();
    @Nullable String place = null;
    for (Code code : treated.codes()) {
      Optional<Item> item = view.item(code);
      if (item.isPresent() && item.get().fate().isHere() && isLast(code, entry, treated, day)) {
        codes.add(code);
        place = item.get().place();
      }
    }
    if (!codes.isEmpty()) {
      tasks.add(
          new Task(
              Task.Work.TREAT,
              codes,
              day.plusDays(every),
              DiaryTelling.word(treated.treatment())
                  + (treated.product() == null ? "" : ", " + treated.product())
                  + (treated.dilution() == null ? "" : ", " + treated.dilution())
                  + ", last on "
                  + day
                  + "; every "
                  + DiaryTelling.days(every),
              place));
    }
  }

  /** Of one sort and not of two products, either of which goes its own way. */
  private static boolean isSame(Treated one, Treated other) {
    return one.treatment() == other.treatment()
        && (one.product() == null
            || other.product() == null
            || one.product().strip().equalsIgnoreCase(other.product().strip()));
  }

  /** Whether nothing of that sort was done later, or on the same day and written later. */
  private boolean isLast(Code code, long entry, Treated treated, LocalDate day) {
    for (long later : view.entriesOn(Subject.of(code))) {
      Statement statement = view.effective(later).orElseThrow();
      if (later != entry
          && statement instanceof Treated other
          && isSame(other, treated)
          && other.date() != null) {
        int after = other.date().latest().compareTo(day);
        if (after > 0 || (after == 0 && later > entry)) {
          return false;
        }
      }
    }
    return true;
  }
}

package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The pollen of one plant that was put by, batch by batch. */
public final class PollenStore {

  private final List<PollenBatch> batches = new ArrayList<>();

  /** Why an entry names no batch, by its number. */
  private final Map<Long, String> unplaced = new HashMap<>();

  private PollenStore() {}

  private record Step(long entry, PollenKept kept) {}

  /** By all that was written of the pollen of {@code plant}, in the order of the days. */
  public static PollenStore of(RegisterView view, Code plant) {
    PollenStore store = new PollenStore();
    List<Step> steps = new ArrayList<>();
    for (long entry : view.entriesOn(Subject.of(plant))) {
      if (view.effective(entry).orElse(null) instanceof PollenKept kept) {
        steps.add(new Step(entry, kept));
      }
    }
    steps.sort(
        Comparator.<Step>comparingLong(step -> day(step.kept().date()))
            .thenComparing(step -> step.kept().step())
            .thenComparing(Step::entry));
    steps.forEach(step -> store.take(step, plant));
    return store;
  }

  /** The batches, in the order in which they were gathered. */
  public List<PollenBatch> batches() {
    return List.copyOf(batches);
  }

  /** The batches of which some is left. */
  public List<PollenBatch> left() {
    return batches.stream().filter(PollenBatch::isLeft).toList();
  }

  /**
   * Checks that entry {@code number} names one batch.
   *
   * @throws RegisterRefusal if it names none, or one of several
   */
  void requirePlaced(long number) {
    String why = unplaced.get(number);
    if (why != null) {
      throw new RegisterRefusal(why);
    }
  }

  private static long day(@Nullable PartialDate date) {
    return date == null ? Long.MAX_VALUE : date.latest().toEpochDay();
  }

  private void take(Step step, Code plant) {
    PollenKept kept = step.kept();
    if (kept.step() == PollenKept.Step.GATHERED) {
      batches.add(PollenBatch.gathered(step.entry(), kept));
      return;
    }
    List<PollenBatch> meant =
        left().stream()
            .filter(batch -> kept.gathered() == null || kept.gathered().equals(batch.gathered()))
            .toList();
    if (meant.size() == 1) {
      batches.set(batches.indexOf(meant.get(0)), meant.get(0).after(kept));
    } else {
      unplaced.put(step.entry(), complaint(plant, kept, meant));
    }
  }

  private String complaint(Code plant, PollenKept kept, List<PollenBatch> meant) {
    String when = kept.date() == null ? "" : " on " + kept.date();
    if (meant.size() > 1) {
      return "there was pollen of "
          + plant.text()
          + " of several days"
          + when
          + " ("
          + days(meant)
          + "); say which by the day it was gathered";
    }
    List<PollenBatch> left = left();
    return "no pollen of "
        + plant.text()
        + (kept.gathered() == null ? "" : " gathered on " + kept.gathered())
        + " was left"
        + when
        + (left.isEmpty()
            ? "; enter its gathering first, or mend the day"
            : "; there was that of " + days(left));
  }

  private static String days(List<PollenBatch> batches) {
    return String.join(
        ", ",
        batches.stream()
            .map(batch -> batch.gathered() == null ? "an unknown day" : batch.gathered().toString())
            .toList());
  }
}

package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What single plants showed of one trait. */
final class LastSeen {

  private final RegisterView view;
  private final String key;

  private LastSeen(RegisterView view, String key) {
    this.view = view;
    this.key = key;
  }

  /** Of that trait. */
  static LastSeen of(RegisterView view, String trait) {
    return new LastSeen(view, Subject.trait(trait).key());
  }

  /**
   * One look at a plant.
   *
   * @param entry the entry that says so
   * @param value what it showed
   */
  record Sighting(long entry, String value) {}

  /** What a plant showed on the latest day; of one day, or without a day, what was entered last. */
  Optional<String> value(Code plant) {
    return last(plant).map(Sighting::value);
  }

  /** The same, with the entry. */
  Optional<Sighting> last(Code plant) {
    Sighting last = null;
    long latest = Long.MIN_VALUE;
    for (long entry : view.entriesOn(Subject.of(plant))) {
      if (view.effective(entry).orElseThrow() instanceof Observed seen && isOf(seen.trait())) {
        long day = day(seen.date(), latest);
        if (day >= latest) {
          latest = day;
          last = new Sighting(entry, seen.value());
        }
      }
    }
    return Optional.ofNullable(last);
  }

  /**
   * A look at a plant, with its day.
   *
   * @param entry the entry that says so
   * @param date the day, or null when not known
   * @param value what it showed
   */
  record Look(long entry, @Nullable PartialDate date, String value) {}

  /**
   * Every look at a plant by day, on one day in order of entry; one without a day stands where it
   * was entered. The last of them is {@link #last}.
   */
  List<Look> all(Code plant) {
    record Placed(long day, Look look) {}
    List<Placed> placed = new ArrayList<>();
    long latest = Long.MIN_VALUE;
    for (long entry : view.entriesOn(Subject.of(plant))) {
      if (view.effective(entry).orElseThrow() instanceof Observed seen && isOf(seen.trait())) {
        long day = day(seen.date(), latest);
        latest = Math.max(latest, day);
        placed.add(new Placed(day, new Look(entry, seen.date(), seen.value())));
      }
    }
    placed.sort(Comparator.comparingLong(Placed::day));
    return placed.stream().map(Placed::look).toList();
  }

  /** Whether a seedling was numbered because of what it shows of the trait. */
  boolean isPicked(Item seedling) {
    return view.effective(seedling.entry()).orElse(null) instanceof Numbered numbered
        && numbered.pickedFor() != null
        && isOf(numbered.pickedFor());
  }

  /** That picked ones were left out. */
  static String leftOut(long picked, String trait) {
    return picked
        + (picked == 1 ? " seedling" : " seedlings")
        + " picked for "
        + trait
        + " left out: picked ones are no sample of their family.";
  }

  boolean isOf(String trait) {
    return Subject.trait(trait).key().equals(key);
  }

  /** A day as a number, or what it is to count as where none was given. */
  static long day(@Nullable PartialDate date, long otherwise) {
    return date == null ? otherwise : date.latest().toEpochDay();
  }
}

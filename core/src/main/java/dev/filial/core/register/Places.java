package dev.filial.core.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Which place stands in which, on a day: a tray on a bench, the bench in a house. */
public final class Places {

  private final RegisterView view;
  private final @Nullable LocalDate day;

  private Places(RegisterView view, @Nullable LocalDate day) {
    this.view = view;
    this.day = day;
  }

  /** As they stand by the last that was said. */
  public static Places of(RegisterView view) {
    return new Places(view, null);
  }

  /** The same on the evening of {@code day}; what has no day was always so. */
  public Places on(@Nullable LocalDate evening) {
    return new Places(view, evening);
  }

  /** Every place that was declared, or named as a larger one, as it was last spelt, by name. */
  public List<String> all() {
    Map<String, String> names = new TreeMap<>();
    for (String key : view.keys(Subject.Kind.PLACE)) {
      latest(key)
          .ifPresent(
              declared -> {
                names.put(key, declared.place());
                if (declared.within() != null) {
                  names.putIfAbsent(Subject.place(declared.within()).key(), declared.within());
                }
              });
    }
    return List.copyOf(names.values());
  }

  /**
   * The place and those around it, from the smallest to the largest: {@code tray A, bench 2,
   * house}. The name alone where nothing was said of it.
   */
  public List<String> around(String place) {
    List<String> path = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    String next = place;
    while (next != null && seen.add(Subject.place(next).key())) {
      Optional<PlaceDeclared> declared = latest(Subject.place(next).key());
      path.add(declared.map(PlaceDeclared::place).orElse(next));
      next = declared.map(PlaceDeclared::within).orElse(null);
    }
    return List.copyOf(path);
  }

  /** Whether {@code inner} is {@code outer}, or stands in it, however many places between. */
  public boolean isWithin(@Nullable String inner, String outer) {
    if (inner == null) {
      return false;
    }
    Subject wanted = Subject.place(outer);
    return around(inner).stream().anyMatch(place -> Subject.place(place).equals(wanted));
  }

  private Optional<PlaceDeclared> latest(String key) {
    PlaceDeclared found = null;
    long latest = Long.MIN_VALUE;
    for (long entry : view.entriesOn(new Subject(Subject.Kind.PLACE, key))) {
      if (view.effective(entry).orElse(null) instanceof PlaceDeclared declared) {
        PartialDate date = declared.date();
        long said = date == null ? latest : date.latest().toEpochDay();
        if (said >= latest && (day == null || said <= day.toEpochDay())) {
          latest = said;
          found = declared;
        }
      }
    }
    return Optional.ofNullable(found);
  }

  /**
   * Checks that a place does not stand in itself by way of others.
   *
   * @throws RegisterRefusal if it does
   */
  void requireNoCircle(String place) {
    String key = Subject.place(place).key();
    Set<String> seen = new HashSet<>();
    List<String> path = new ArrayList<>();
    String next = latest(key).map(PlaceDeclared::within).orElse(null);
    while (next != null && seen.add(Subject.place(next).key())) {
      path.add(next);
      if (Subject.place(next).key().equals(key)) {
        throw new RegisterRefusal(
            "\""
                + place
                + "\" would stand in itself, by way of "
                + String.join(", ", path)
                + "; see which of them stands in which");
      }
      next = latest(Subject.place(next).key()).map(PlaceDeclared::within).orElse(null);
    }
  }
}

package dev.filial.core.register;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Follows what was said of field numbers from one to the next. */
final class Populations {

  private Populations() {}

  /**
   * The numbers that lead to {@code number}, itself included.
   *
   * @param without an entry that is to be read as if it were not there, or null
   */
  static NavigableSet<String> of(RegisterView view, String number, @Nullable Long without) {
    NavigableSet<String> population = new TreeSet<>();
    Deque<String> open = new ArrayDeque<>();
    population.add(number.strip());
    open.add(number.strip());
    while (!open.isEmpty()) {
      for (long entry : view.entriesOn(Subject.fieldNumber(open.remove()))) {
        if ((without == null || entry != without)
            && view.effective(entry).orElse(null) instanceof PopulationDeclared declared) {
          for (String other : declared.fieldNumbers()) {
            if (population.add(other.strip())) {
              open.add(other.strip());
            }
          }
        }
      }
    }
    return population;
  }

  /** Says so where a declaration adds nothing to what others say. */
  static void warnIfKnown(
      RegisterView view, long number, PopulationDeclared said, List<String> warnings) {
    NavigableSet<String> known = of(view, said.fieldNumbers().get(0), number);
    if (said.fieldNumbers().stream().map(String::strip).allMatch(known::contains)) {
      warnings.add(
          "that "
              + String.join(", ", said.fieldNumbers())
              + " are one population follows from earlier entries; if this says it better, amend"
              + " one of them");
    }
  }
}

package dev.filial.core.register;

import dev.filial.core.number.Fraction;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Loci that were declared to lie beside each other, and the row they lie in. */
final class LinkedRow {

  private LinkedRow() {}

  /** All that lie beside a locus, over any number of others; itself included, in no order. */
  static Set<String> reached(RegisterView view, String name) {
    Set<String> reached = new LinkedHashSet<>(Set.of(name));
    Deque<String> open = new ArrayDeque<>(reached);
    while (!open.isEmpty()) {
      for (String next : neighbours(view, open.remove())) {
        if (reached.add(next)) {
          open.add(next);
        }
      }
    }
    return reached;
  }

  /**
   * The row in which a locus lies, from the end whose name sorts first; itself alone if it lies
   * beside no other.
   *
   * @throws RegisterRefusal if they lie in no row: one has more than two beside it, or they close a
   *     circle
   */
  static List<String> of(RegisterView view, String name) {
    Set<String> reached = reached(view, name);
    List<String> ends = new ArrayList<>();
    for (String locus : reached) {
      List<String> beside = neighbours(view, locus);
      if (beside.size() > 2) {
        throw new RegisterRefusal(
            "the gene "
                + locus
                + " would lie beside "
                + String.join(", ", beside)
                + "; a gene lies between two others at most, so give them places on a chromosome");
      }
      if (beside.size() < 2) {
        ends.add(locus);
      }
    }
    if (ends.isEmpty()) {
      throw new RegisterRefusal(
          "the genes "
              + String.join(", ", reached)
              + " would lie beside each other in a circle; leave one of the links out");
    }
    ends.sort(null);
    List<String> row = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (String here = ends.get(0); here != null; ) {
      row.add(here);
      seen.add(here);
      here =
          neighbours(view, here).stream()
              .filter(next -> !seen.contains(next))
              .findFirst()
              .orElse(null);
    }
    return row;
  }

  /** The share of gametes recombined between two neighbours. */
  static Fraction recombination(RegisterView view, String one, String other) {
    return stated(view, one, other)
        .or(() -> stated(view, other, one))
        .orElseThrow(() -> new IllegalStateException(one + " does not lie beside " + other));
  }

  private static Optional<Fraction> stated(RegisterView view, String from, String to) {
    return view.locus(from)
        .filter(locus -> locus.linkedTo() != null && locus.linkedTo().strip().equals(to))
        .map(LocusDeclared::recombination);
  }

  /** Those that a locus was declared to lie beside, and those declared to lie beside it. */
  private static List<String> neighbours(RegisterView view, String name) {
    Set<String> beside = new LinkedHashSet<>();
    view.locus(name).map(LocusDeclared::linkedTo).map(String::strip).ifPresent(beside::add);
    for (long entry : view.entriesMentioning(Subject.locus(name))) {
      if (view.effective(entry).orElse(null) instanceof LocusDeclared other) {
        beside.add(other.locus().strip());
      }
    }
    return List.copyOf(beside);
  }
}

package dev.filial.core.register;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How the names of one taxon lead to each other. */
final class NameChains {

  private NameChains() {}

  /**
   * What was declared under a name that is read as {@code taxon}, over any number of renamings; the
   * nearest such name if several were declared.
   */
  static Optional<TaxonDeclared> declaredUnderOlderName(RegisterView view, Taxon taxon) {
    Set<String> seen = new HashSet<>(Set.of(taxon.key()));
    Deque<Taxon> open = new ArrayDeque<>(List.of(taxon));
    while (!open.isEmpty()) {
      Taxon here = open.remove();
      for (String name : here.readAlso()) {
        Optional<Taxon> older = view.taxon(Subject.taxon(name).key());
        // A name that was moved on since is listed still, and read as another now.
        if (older.isEmpty() || !isReadAs(older.get(), here) || !seen.add(older.get().key())) {
          continue;
        }
        if (older.get().declared() != null) {
          return Optional.of(older.get().declared());
        }
        open.add(older.get());
      }
    }
    return Optional.empty();
  }

  private static boolean isReadAs(Taxon older, Taxon taxon) {
    return older.acceptedAs() != null
        && Subject.taxon(older.acceptedAs()).key().equals(taxon.key());
  }

  /** The keys of all names that lead to {@code key} or that it leads to, itself included. */
  static Set<String> keys(RegisterView view, String key) {
    Set<String> keys = new LinkedHashSet<>(Set.of(key));
    Deque<String> open = new ArrayDeque<>(List.of(key));
    while (!open.isEmpty()) {
      Optional<Taxon> taxon = view.taxon(open.remove());
      if (taxon.isEmpty()) {
        continue;
      }
      Set<String> next = new LinkedHashSet<>(taxon.get().readAlso());
      if (taxon.get().acceptedAs() != null) {
        next.add(taxon.get().acceptedAs());
      }
      for (String name : next) {
        String other = Subject.taxon(name).key();
        if (keys.add(other)) {
          open.add(other);
        }
      }
    }
    return keys;
  }

  /**
   * Whether {@code key} leads to a name that is accepted.
   *
   * @throws RegisterRefusal if it leads in a circle
   */
  static void requireNoLoop(RegisterView view, String key) {
    Set<String> seen = new HashSet<>();
    String here = key;
    while (seen.add(here)) {
      Optional<Taxon> taxon = view.taxon(here);
      if (taxon.isEmpty() || taxon.get().acceptedAs() == null) {
        return;
      }
      here = Subject.taxon(taxon.get().acceptedAs()).key();
    }
    Taxon taxon = view.taxon(key).orElseThrow();
    throw new RegisterRefusal(
        taxon.name()
            + " would be read as itself in a circle; strike the entry that read it as "
            + taxon.acceptedAs());
  }

  /**
   * Whether {@code name} counts into a taxon that is not itself.
   *
   * @throws RegisterRefusal if it counts into itself
   */
  static void requireNotWithinItself(RegisterView view, String name) {
    Set<String> seen = new HashSet<>();
    for (String next = name; next != null; ) {
      Taxon known = view.accepted(next);
      if (!seen.add(known.key())) {
        throw new RegisterRefusal(
            name
                + " would count into itself through "
                + known.name()
                + "; mend the taxon it counts into");
      }
      next = known.declared() == null ? null : known.declared().within();
    }
  }
}

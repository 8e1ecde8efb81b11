package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The taxa that stand behind plants, by their accepted names without doubts: of what was acquired
 * its own, of a cross those of both parents. Remembers what it looked up.
 */
final class TaxaBehind {

  private static final Taxa UNKNOWN = new Taxa(new TreeSet<>(), true);

  private final RegisterView view;
  private final Map<Code, Taxa> known = new HashMap<>();

  private TaxaBehind(RegisterView view) {
    this.view = view;
  }

  static TaxaBehind in(RegisterView view) {
    return new TaxaBehind(view);
  }

  /**
   * Taxa, and whether there may be others.
   *
   * @param names accepted names, sorted
   * @param unknown whether somebody nobody knows stands behind the plant too
   */
  record Taxa(NavigableSet<String> names, boolean unknown) {

    /** As {@code Echeveria agavoides × Echeveria laui}, in order of the alphabet. */
    String text() {
      if (names.isEmpty()) {
        return "unknown";
      }
      return String.join(" × ", names) + (unknown ? " × unknown" : "");
    }

    /** As {@link #common}. */
    Optional<TaxonName> one() {
      return Optional.ofNullable(common());
    }

    /** The one taxon, or the genus that all are of; null when there is neither. */
    @Nullable TaxonName common() {
      if (names.isEmpty() || unknown) {
        return null;
      }
      TaxonName first = TaxonName.parse(names.first());
      if (names.size() == 1) {
        return first;
      }
      boolean oneGenus =
          names.stream().allMatch(name -> TaxonName.parse(name).genus().equals(first.genus()));
      return oneGenus ? TaxonName.ofGenus(first.genus()) : null;
    }
  }

  /** Each plant behind it is looked at once, however many came of it. */
  Taxa of(Code code) {
    Deque<Code> open = new ArrayDeque<>(List.of(code));
    Set<Code> begun = new HashSet<>();
    // Parents before offspring; no recursion, since a line may be longer than a stack is deep.
    while (!open.isEmpty()) {
      Code next = open.element();
      if (known.containsKey(next)) {
        open.remove();
        continue;
      }
      Optional<Item> item = view.resolved(next).map(found -> Describing.origin(view, found));
      if (begun.add(next)) {
        item.ifPresent(
            found ->
                parents(found).stream()
                    .filter(parent -> !known.containsKey(parent))
                    .forEach(open::push));
      } else {
        open.remove();
        known.put(next, item.map(this::behind).orElse(UNKNOWN));
      }
    }
    return known.getOrDefault(code, UNKNOWN);
  }

  private static List<Code> parents(Item origin) {
    List<Code> parents = new ArrayList<>();
    if (isStated(origin.determination())) {
      return parents;
    }
    for (Descent way : origin.descent()) {
      parents.add(way.seed());
      if (way.form() == Descent.Form.SEXUAL && way.pollen() != null) {
        parents.add(way.pollen());
      }
    }
    return parents;
  }

  private static boolean isStated(Determination said) {
    return said.taxon() != null || !said.makeup().isEmpty();
  }

  private Taxa behind(Item origin) {
    Determination said = origin.determination();
    if (said.taxon() != null) {
      return new Taxa(new TreeSet<>(Set.of(name(said.taxon()))), false);
    }
    NavigableSet<String> names = new TreeSet<>();
    if (!said.makeup().isEmpty()) {
      said.makeup().keySet().forEach(taxon -> names.add(name(taxon)));
      Fraction sum = said.makeup().values().stream().reduce(Fraction.ZERO, Fraction::plus);
      return new Taxa(names, !sum.isOne());
    }
    boolean unknown = origin.descent().isEmpty();
    Fraction sum = Fraction.ZERO;
    for (Descent way : origin.descent()) {
      sum = sum.plus(way.share());
      unknown |= add(names, way.seed());
      if (way.form() == Descent.Form.SEXUAL) {
        unknown |= way.pollen() == null || add(names, way.pollen());
      }
    }
    return new Taxa(names, unknown || !sum.isOne());
  }

  private boolean add(NavigableSet<String> names, Code parent) {
    Taxa behind = known.getOrDefault(parent, UNKNOWN);
    names.addAll(behind.names());
    return behind.unknown();
  }

  private String name(String written) {
    return Describing.name(view, written).text();
  }
}

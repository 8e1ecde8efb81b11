package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The taxa that stand behind plants, by their accepted names without doubts: of what was acquired
 * its own, of a cross those of both parents. Remembers what it looked up; further back than two
 * hundred generations it does not look.
 */
final class TaxaBehind {

  private static final int GENERATIONS = 200;
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

  Taxa of(Code code) {
    return of(code, 0);
  }

  private Taxa of(Code code, int generation) {
    Taxa found = known.get(code);
    if (found != null || generation > GENERATIONS) {
      return found == null ? UNKNOWN : found;
    }
    // Whoever comes back to a plant that is being looked up learns nothing new from it.
    known.put(code, UNKNOWN);
    Taxa taxa = view.resolved(code).map(item -> behind(item, generation)).orElse(UNKNOWN);
    known.put(code, taxa);
    return taxa;
  }

  private Taxa behind(Item item, int generation) {
    Item origin = Describing.origin(view, item);
    if (!origin.code().equals(item.code())) {
      return of(origin.code(), generation);
    }
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
      unknown |= add(names, way.seed(), generation);
      if (way.form() == Descent.Form.SEXUAL) {
        unknown |= way.pollen() == null || add(names, way.pollen(), generation);
      }
    }
    return new Taxa(names, unknown || !sum.isOne());
  }

  private boolean add(NavigableSet<String> names, Code parent, int generation) {
    Taxa behind = of(parent, generation + 1);
    names.addAll(behind.names());
    return behind.unknown();
  }

  private String name(String written) {
    return Describing.name(view, written).text();
  }
}

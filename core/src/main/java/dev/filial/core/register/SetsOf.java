package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** The chromosome sets of the plants in a lineage, as far as they follow from what was stated. */
final class SetsOf {

  private static final int UNKNOWN = 0;

  private final RegisterView book;
  private final Map<Code, Item> lineage;
  private final Map<Code, Integer> sets = new HashMap<>();

  private SetsOf(RegisterView book, Map<Code, Item> lineage) {
    this.book = book;
    this.lineage = lineage;
  }

  /** The sets of all that {@code roots} descend from. */
  static SetsOf in(RegisterView book, Collection<Code> roots) {
    return new SetsOf(book, book.lineage(roots));
  }

  /** The chromosome sets of {@code code}; empty when its possible origins differ in them. */
  OptionalInt ploidy(Code code) {
    Deque<Code> open = new ArrayDeque<>();
    Set<Code> entered = new HashSet<>();
    open.push(code);
    // Depth first with a stack of our own: a selfed line may be longer than the thread's.
    while (!open.isEmpty()) {
      Code here = open.peek();
      Item item = lineage.get(here);
      if (sets.containsKey(here) || item == null) {
        sets.putIfAbsent(here, UNKNOWN);
        open.pop();
        continue;
      }
      // What was entered and has no answer yet comes of itself; another rule refuses that.
      List<Code> missing =
          entered.add(here)
              ? Lineage.next(item).stream()
                  .filter(next -> !sets.containsKey(next) && !entered.contains(next))
                  .toList()
              : List.of();
      if (missing.isEmpty()) {
        sets.put(here, of(item));
        open.pop();
      } else {
        missing.forEach(open::push);
      }
    }
    int found = sets.getOrDefault(code, UNKNOWN);
    return found == UNKNOWN ? OptionalInt.empty() : OptionalInt.of(found);
  }

  private int of(Item item) {
    if (item.sameAs() != null) {
      return sets.getOrDefault(item.sameAs(), UNKNOWN);
    }
    if (!item.code().isWhole()) {
      return sets.getOrDefault(item.code().whole(), UNKNOWN);
    }
    if (item.descent().isEmpty()) {
      return founder(item);
    }
    int agreed = -1;
    for (Descent descent : item.descent()) {
      int here = of(descent);
      if (agreed != -1 && agreed != here) {
        return UNKNOWN;
      }
      agreed = here;
    }
    return agreed;
  }

  private int of(Descent descent) {
    int seed = sets.getOrDefault(descent.seed(), UNKNOWN);
    return switch (descent.form()) {
      case COPY, SIBLING -> seed;
      case DOUBLED -> 2 * seed;
      case SEXUAL -> {
        int egg = descent.seedSets() != 0 ? descent.seedSets() : seed / 2;
        // Unknown pollen is taken to be of the seed parent's own ploidy, and reduced.
        int parent = descent.pollen() == null ? seed : sets.getOrDefault(descent.pollen(), UNKNOWN);
        boolean halves = descent.pollen() != null || parent % 2 == 0;
        int pollen = descent.pollenSets() != 0 ? descent.pollenSets() : halves ? parent / 2 : egg;
        yield egg == 0 || pollen == 0 ? UNKNOWN : egg + pollen;
      }
    };
  }

  private int founder(Item item) {
    Integer stated = item.determination().ploidy();
    if (stated != null) {
      return stated;
    }
    String taxon = item.determination().taxon();
    Integer ofTaxon = taxon == null ? null : book.accepted(taxon).ploidy();
    return ofTaxon == null ? 2 : ofTaxon;
  }
}

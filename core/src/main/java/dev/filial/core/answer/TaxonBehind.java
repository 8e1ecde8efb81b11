package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.Lineage;
import dev.filial.core.register.RegisterView;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Of which taxa a thing is, from the narrowest to the widest: its species and what stands above
 * that; of a hybrid only what is above all that went into it, as their genus. What is not known is
 * passed over.
 */
final class TaxonBehind {

  private final RegisterView view;

  /** Of each whole code; nothing known of it is another thing than nothing common to it. */
  private final Map<Code, Optional<List<String>>> known = new HashMap<>();

  TaxonBehind(RegisterView view) {
    this.view = view;
  }

  /** The names, the narrowest first; none if nothing is known of it. */
  List<String> of(Code code) {
    // All that stands under a whole code is of one kind; and so are all seedlings of a cross.
    Code start = code.whole();
    Deque<Code> open = new ArrayDeque<>(List.of(start));
    Set<Code> begun = new HashSet<>();
    // Parents before offspring, each looked at once however many come of it; no recursion, since a
    // line may be longer than a stack is deep.
    while (!open.isEmpty()) {
      Code next = open.element();
      if (known.containsKey(next)) {
        open.remove();
        continue;
      }
      Optional<Item> item = view.item(next);
      List<Code> parents = item.map(TaxonBehind::parents).orElse(List.of());
      if (begun.add(next)) {
        parents.stream().filter(parent -> !known.containsKey(parent)).forEach(open::push);
      } else {
        open.remove();
        known.put(next, common(item.orElse(null), parents));
      }
    }
    return known.getOrDefault(start, Optional.empty()).orElse(List.of());
  }

  private static List<Code> parents(Item item) {
    return Lineage.next(item).stream().map(Code::whole).distinct().toList();
  }

  private Optional<List<String>> common(@Nullable Item item, List<Code> parents) {
    Set<String> common = null;
    for (String taxon : item == null ? List.<String>of() : stated(item)) {
      common = both(common, TaxonProfile.upwards(view, taxon));
    }
    for (Code parent : parents) {
      Optional<List<String>> behind = known.getOrDefault(parent, Optional.empty());
      if (behind.isPresent()) {
        common = both(common, behind.get());
      }
    }
    return Optional.ofNullable(common).map(List::copyOf);
  }

  private static Set<String> both(@Nullable Set<String> common, Collection<String> more) {
    if (common == null) {
      return new LinkedHashSet<>(more);
    }
    common.retainAll(more);
    return common;
  }

  private static List<String> stated(Item item) {
    List<String> taxa = new ArrayList<>(item.determination().makeup().keySet());
    Optional.ofNullable(item.determination().taxon()).ifPresent(taxa::add);
    return taxa;
  }
}

package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Of which taxa a thing is, from the narrowest to the widest: its species and what stands above
 * that; of a hybrid only what is above all that went into it, as their genus. What is not known is
 * passed over.
 */
final class TaxonBehind {

  private final RegisterView view;
  private final Map<Code, List<String>> known = new HashMap<>();

  TaxonBehind(RegisterView view) {
    this.view = view;
  }

  /** The names, the narrowest first; none if nothing is known of it. */
  List<String> of(Code code) {
    // All that stands under a whole code is of one kind; and so are all seedlings of a cross.
    Code whole = code.whole();
    List<String> found = known.get(whole);
    if (found == null) {
      found = List.copyOf(find(whole));
      known.put(whole, found);
    }
    return found;
  }

  private Set<String> find(Code whole) {
    Set<String> common = new LinkedHashSet<>();
    boolean first = true;
    for (Item item : view.lineage(List.of(whole)).values()) {
      for (String taxon : stated(item)) {
        Set<String> upwards = TaxonProfile.upwards(view, taxon);
        if (first) {
          common.addAll(upwards);
          first = false;
        } else {
          common.retainAll(upwards);
        }
      }
    }
    return common;
  }

  private static List<String> stated(Item item) {
    List<String> taxa = new ArrayList<>(item.determination().makeup().keySet());
    Optional.ofNullable(item.determination().taxon()).ifPresent(taxa::add);
    return taxa;
  }
}

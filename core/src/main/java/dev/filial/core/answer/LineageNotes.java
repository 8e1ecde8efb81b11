package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.NameException;
import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Item;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What an answer leans on without knowing it for certain. */
final class LineageNotes {

  private LineageNotes() {}

  /** A sentence for each doubt in the lineage, in order of entry. */
  static List<String> of(Collection<Item> lineage) {
    List<String> notes = new ArrayList<>();
    lineage.stream()
        .sorted(Item.IN_ORDER)
        .filter(item -> item.sameAs() == null)
        .forEach(item -> add(notes, item));
    return notes;
  }

  private static void add(List<String> notes, Item item) {
    Code code = item.code();
    if (item.guess() != null) {
      notes.add(
          "what is recorded of "
              + code.text()
              + " is a guess of "
              + item.guess()
              + " (entry "
              + item.entry()
              + ")");
    }
    if (item.unprotected()) {
      notes.add(
          code.text()
              + " was made on unprotected flowers, and no share of selfs and strays is stated: taken"
              + " as pure");
    }
    String taxon = item.determination().taxon();
    if (taxon != null && isDoubtful(taxon)) {
      notes.add(code.text() + " is determined only as " + taxon);
    }
  }

  private static boolean isDoubtful(String taxon) {
    try {
      TaxonName name = TaxonName.parse(taxon);
      return name.qualifier().isPresent() || name.isUndetermined();
    } catch (NameException e) {
      throw new IllegalStateException("the register took a name that cannot be read: " + taxon, e);
    }
  }
}

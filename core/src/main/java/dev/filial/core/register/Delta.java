package dev.filial.core.register;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that accepting entries changes in a register; applied whole or not at all.
 *
 * @param entries the new entries, in order
 * @param changes what entries say from now on, in order of number
 * @param items what is true now of the coded things that were touched
 * @param taxa what is known now of the taxa that were touched, by key; empty for nothing any more
 * @param traits the traits that were touched, by name in lower case; empty for not declared any
 *     more
 */
public record Delta(
    List<Entry> entries,
    List<Change> changes,
    Collection<Item> items,
    Map<String, Optional<Taxon>> taxa,
    Map<String, Optional<TraitDeclared>> traits) {

  /** Copies the collections. */
  public Delta {
    entries = List.copyOf(entries);
    changes = List.copyOf(changes);
    items = List.copyOf(items);
    taxa = Map.copyOf(taxa);
    traits = Map.copyOf(traits);
  }

  /** The same with other things. */
  public Delta withItems(Collection<Item> others) {
    return new Delta(entries, changes, others, taxa, traits);
  }
}

package dev.filial.core.store;

import dev.filial.core.register.Entry;
import java.util.List;

/**
 * What can still be read of a damaged register.
 *
 * @param entries the entries that were found, by number
 * @param lost the numbers of those that were not, before and between the ones that were; how many
 *     may have stood behind the last one cannot be known
 * @param altered the numbers of entries that were found and are not as they were written: something
 *     in them was changed, and what it was cannot be told
 * @param unchecked the numbers of entries whose digest could not be checked, since the entry before
 *     them is lost
 */
public record Salvage(
    List<Entry> entries, List<Range> lost, List<Long> altered, List<Long> unchecked) {

  /** Copies the lists. */
  public Salvage {
    entries = List.copyOf(entries);
    lost = List.copyOf(lost);
    altered = List.copyOf(altered);
    unchecked = List.copyOf(unchecked);
  }

  /**
   * Entries that follow each other.
   *
   * @param first the number of the first
   * @param last the number of the last
   */
  public record Range(long first, long last) {

    /** How many there are. */
    public long size() {
      return last - first + 1;
    }

    @Override
    public String toString() {
      return first == last ? "entry " + first : "entries " + first + " to " + last;
    }
  }

  /** Whether the book is whole from entry 1 to the last one found, each as it was written. */
  public boolean isWhole() {
    return !entries.isEmpty() && lost.isEmpty() && altered.isEmpty();
  }
}

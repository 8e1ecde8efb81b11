package dev.filial.core.store;

import dev.filial.core.register.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

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

  /**
   * Puts entries that were found in order, and says which are missing or do not fit. Of several of
   * one number, as an undone write may leave behind, the one counts that the entries before and
   * after it are sealed with.
   */
  public static Salvage of(List<Entry> found) {
    NavigableMap<Long, List<Entry>> rows = new TreeMap<>();
    for (Entry entry : found) {
      List<Entry> same = rows.computeIfAbsent(entry.number(), any -> new ArrayList<>());
      if (!same.contains(entry)) {
        same.add(entry);
      }
    }
    List<Entry> entries = new ArrayList<>();
    List<Range> lost = new ArrayList<>();
    List<Long> altered = new ArrayList<>();
    List<Long> unchecked = new ArrayList<>();
    long last = 0;
    Optional<String> previous = Optional.of(Entry.NO_DIGEST);
    for (Map.Entry<Long, List<Entry>> row : rows.entrySet()) {
      long number = row.getKey();
      if (number > last + 1) {
        lost.add(new Range(last + 1, number - 1));
        previous = Optional.empty();
      }
      Pick pick = pick(row.getValue(), previous, rows.getOrDefault(number + 1, List.of()));
      if (previous.isEmpty()) {
        unchecked.add(number);
      } else if (!pick.intact()) {
        altered.add(number);
      }
      entries.add(pick.entry());
      last = number;
      previous = Optional.of(pick.entry().digest());
    }
    return new Salvage(entries, lost, altered, unchecked);
  }

  private record Pick(Entry entry, boolean intact) {}

  private static Pick pick(List<Entry> rows, Optional<String> previous, List<Entry> following) {
    List<Entry> intact =
        rows.stream().filter(row -> previous.isPresent() && row.isIntact(previous.get())).toList();
    for (Entry row : intact) {
      if (isSealedOnto(row, following)) {
        return new Pick(row, true);
      }
    }
    if (!intact.isEmpty()) {
      return new Pick(intact.get(0), true);
    }
    for (Entry row : rows) {
      if (previous.isPresent()) {
        // Perhaps it is its digest alone that was changed; the next entry remembers it.
        Entry sealed = Entry.seal(row.number(), row.time(), row.by(), row.body(), previous.get());
        if (isSealedOnto(sealed, following)) {
          return new Pick(sealed, true);
        }
      }
      if (isSealedOnto(row, following)) {
        return new Pick(row, false);
      }
    }
    return new Pick(rows.get(0), false);
  }

  private static boolean isSealedOnto(Entry row, List<Entry> following) {
    return following.stream().anyMatch(next -> next.isIntact(row.digest()));
  }
}

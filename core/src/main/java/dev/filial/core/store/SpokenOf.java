package dev.filial.core.store;

import java.util.HashSet;
import java.util.Set;

/**
 * Which of the entries that were written lately some later entry speaks of, to amend or to doubt
 * them; of the others, nearly all, it is known without looking it up that none does.
 */
final class SpokenOf {

  /** Of so many it is remembered; those before are then looked up. */
  private static final int MOST = 4096;

  /** Up to this entry nothing is known. */
  private long unknownTo;

  private final Set<Long> spokenOf = new HashSet<>();

  /** Begins after the entry {@code last}. */
  SpokenOf(long last) {
    unknownTo = last;
  }

  /** Takes note that an entry was spoken of, when {@code last} is the last entry there is. */
  void add(long entry, long last) {
    if (entry <= unknownTo) {
      return;
    }
    if (spokenOf.size() == MOST) {
      spokenOf.clear();
      unknownTo = last;
    }
    spokenOf.add(entry);
  }

  /** Whether no entry speaks of that one, as far as is known here. */
  boolean isSurelyNot(long entry) {
    return entry > unknownTo && !spokenOf.contains(entry);
  }
}

package dev.filial.core.register;

import java.util.Optional;

/**
 * What one entry says, before and after.
 *
 * @param entry its number
 * @param before what it said until now; empty when it is new or was struck
 * @param concernedBefore what that was about
 * @param after what it says from now on; empty when it is struck
 * @param concernedAfter what that is about
 */
public record Change(
    long entry,
    Optional<Statement> before,
    Concerns concernedBefore,
    Optional<Statement> after,
    Concerns concernedAfter) {

  /** A change of entry {@code entry}. */
  static Change of(long entry, Optional<Statement> before, Optional<Statement> after) {
    return new Change(entry, before, Concerns.of(before), after, Concerns.of(after));
  }

  /** The same, ending otherwise. */
  Change withAfter(Optional<Statement> now) {
    return new Change(entry, before, concernedBefore, now, Concerns.of(now));
  }
}

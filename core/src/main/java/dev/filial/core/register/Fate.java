package dev.filial.core.register;

/** What became of a plant, a group or a seed lot; a dated state, never a deletion. */
public enum Fate {
  /** It lives, or there is seed left. */
  ALIVE,
  /** Marked to be kept. */
  KEPT,
  /** Thrown out. */
  DISCARDED,
  /** It died, or the last of it did. */
  DEAD,
  /** It left the house. */
  GIVEN,
  /** The last seed was sown or packed elsewhere, the last seedling numbered or potted on. */
  USED_UP;

  /** Whether the plant or seed is still here. */
  public boolean isHere() {
    return this == ALIVE || this == KEPT;
  }
}

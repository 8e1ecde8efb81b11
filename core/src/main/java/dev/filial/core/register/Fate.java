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

  /** What became of it, after its name: {@code died}, {@code was given away}. */
  String became() {
    return switch (this) {
      case ALIVE, KEPT -> "is here";
      case DISCARDED -> "was thrown out";
      case DEAD -> "died";
      case GIVEN -> "was given away";
      case USED_UP -> "was used up";
    };
  }

  /** Whether the plant or seed is still here. */
  public boolean isHere() {
    return this == ALIVE || this == KEPT;
  }
}

package dev.filial.core.ancestry;

/** Whether a backcross went to the very plant that was the first parent, ramets counted as one. */
public enum Recurrent {
  /** The same plant each time, the first cross included. */
  SAME_PLANT("the plant of the first cross again", "the same plant each time"),
  /** Another plant of the taxon at least once. */
  OTHER_PLANTS("not the plant of the first cross", "not the same plant each time"),
  /** The first parent is not recorded. */
  NOT_KNOWN("whether to the same plant is not known", "whether to the same plant is not known");

  private final String once;
  private final String often;

  Recurrent(String once, String often) {
    this.once = once;
    this.often = often;
  }

  /**
   * The finding in a grower's words, as {@code the same plant each time}.
   *
   * @param justOne whether there was one backcross, and nothing after it
   */
  public String text(boolean justOne) {
    return justOne ? once : often;
  }
}

package dev.filial.core.ancestry;

/** Whether a backcross went to the very plant that was the first parent, ramets counted as one. */
public enum Recurrent {
  /** The same plant each time, the first cross included. */
  SAME_PLANT("the same plant each time"),
  /** Another plant of the taxon at least once. */
  OTHER_PLANTS("not the same plant each time"),
  /** The first parent is not recorded. */
  NOT_KNOWN("whether to the same plant is not known");

  private final String text;

  Recurrent(String text) {
    this.text = text;
  }

  /** The finding in a grower's words, as {@code the same plant each time}. */
  public String text() {
    return text;
  }
}

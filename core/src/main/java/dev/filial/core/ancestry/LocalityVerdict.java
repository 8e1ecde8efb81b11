package dev.filial.core.ancestry;

/** Whether a plant is true to a collector's field number. */
public enum LocalityVerdict {
  /** Every founder behind it bears the number, and nobody else can have come in. */
  TRUE("true"),
  /**
   * What is recorded leaves it open: a parent is unknown, a founder bears no number, or one of the
   * ways in which it may have come about brings another founder in.
   */
  NOT_CERTAIN("not certain"),
  /** In each way in which it may have come about, a founder of another number stands behind it. */
  NOT_TRUE("not true");

  private final String text;

  LocalityVerdict(String text) {
    this.text = text;
  }

  /** The verdict in a grower's words, as {@code not certain}. */
  public String text() {
    return text;
  }
}

package dev.filial.core.ancestry;

/** What a generation class is counted over: which plants count as of one source. */
public enum Level {
  /** Plants of one taxon are one source. A hybrid, or a plant of a hybrid taxon, is never pure. */
  TAXON("taxon"),
  /**
   * Plants of one cultivar are one source, of whatever breeding: a cultivar is one clone or line.
   */
  CULTIVAR("cultivar"),
  /** Plants that go back to one collector's field number are one source; hybrids are never pure. */
  FIELD_NUMBER("field number"),
  /** Every founder is a source of its own, of whatever breeding: an F2 within one species. */
  PLANT("plant");

  private final String text;

  Level(String text) {
    this.text = text;
  }

  /** The level in a grower's words, as {@code field number}. */
  public String text() {
    return text;
  }
}

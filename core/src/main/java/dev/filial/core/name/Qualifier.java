package dev.filial.core.name;

/** A doubt about the identification of a plant, written within its name. */
public enum Qualifier {
  /** To be compared with: thought to be this taxon, not confirmed. */
  CF("cf."),
  /** Akin to: near this taxon, but not it. */
  AFF("aff.");

  private final String text;

  Qualifier(String text) {
    this.text = text;
  }

  /** The qualifier as it is written. */
  public String text() {
    return text;
  }
}

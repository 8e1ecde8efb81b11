package dev.filial.core.ancestry;

/** How a generation was raised from the one before: it decides how fast a line grows alike. */
public enum Breeding {
  /** One plant, or two ramets of it, pollinated with its own pollen. */
  SELFING("by selfing"),
  /** Two plants that share both parents. */
  SIB_CROSS("by sib cross"),
  /** Two plants of the generation that do not share both parents. */
  BETWEEN_FAMILIES("between plants of different parents"),
  /** Whether the two were sibs cannot be told: an acquired plant is one of them, or the result. */
  NOT_KNOWN("whether selfed or sib crossed is not known");

  private final String text;

  Breeding(String text) {
    this.text = text;
  }

  /** The breeding in a grower's words, as {@code by selfing}. */
  public String text() {
    return text;
  }
}

package dev.filial.core.answer;

/**
 * How plants acquired apart under one collector's field number are taken to be related, which
 * nobody recorded: the number stands for a population, or for the fruits of one plant of it.
 */
public enum FieldNumberKin {
  /** Not at all. */
  UNRELATED("unrelated"),
  /** As seed of one plant, of different pollen. */
  HALF_SIBS("half sibs"),
  /** As seed of one plant and one other's pollen. */
  FULL_SIBS("full sibs");

  private final String text;

  FieldNumberKin(String text) {
    this.text = text;
  }

  /** In a grower's words. */
  public String text() {
    return text;
  }
}

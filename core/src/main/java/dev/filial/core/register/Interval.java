package dev.filial.core.register;

/**
 * How long things usually take, or may be left alone, on the bench. The usual lengths are common
 * practice, no source; a register states its own, and has those it keeps counts of worked out.
 */
public enum Interval {
  /** From sowing until something should have come up. */
  COMING_UP(21),
  /** From one count of a sowing that comes up to the next. */
  COUNTING(7),
  /** From one look into a closed bag to the next. */
  LOOKING_INTO(14),
  /** From sowing until a closed bag is opened. */
  OPENING(56),
  /** From pollination until a fruit should be ripe. */
  RIPENING(60),
  /** From harvest until seed counts as old. */
  SEED_AGEING(1095),
  /** From harvest or drying until stored pollen counts as old. */
  POLLEN_AGEING(365),
  /** From writing a tag until it is rewritten. */
  TAG_FADING(730),
  /** How long a plant once seen in flower is taken to stay so. */
  FLOWERING(21);

  private final int usualDays;

  Interval(int usualDays) {
    this.usualDays = usualDays;
  }

  /** What is taken where nobody said otherwise, in days. Common practice, no source. */
  public int usualDays() {
    return usualDays;
  }
}

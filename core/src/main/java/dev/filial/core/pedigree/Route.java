package dev.filial.core.pedigree;

/**
 * How a plant may have come about: why a case of its pedigree is there. It changes no arithmetic,
 * but for {@link #LOT_SHARE}.
 */
public enum Route {
  /** The cross that was intended. */
  CROSS("cross"),
  /** Pollen of the seed parent itself, intended or not. */
  SELFING("selfing"),
  /** Pollen that got in although the flower was pollinated by hand. */
  STRAY("stray pollen"),
  /** Pollen brought by whatever visited the flower. */
  OPEN_POLLINATION("open pollination"),
  /** One plant of those whose pollen was mixed. */
  POLLEN_MIX("pollen mix"),
  /** Seed without fertilisation: the seed parent again. */
  APOMIXIS("apomixis"),
  /**
   * One of the crosses whose seed was mixed in a lot: a copy by this route is not the seedling that
   * it names, but another like it, and so is each of several that were counted.
   */
  LOT_SHARE("mixed lot"),
  /** One of the plants this one may be, its tag being lost. */
  IDENTITY("doubtful identity");

  private final String text;

  Route(String text) {
    this.text = text;
  }

  /** The route in a grower's words, as {@code open pollination}. */
  public String text() {
    return text;
  }
}

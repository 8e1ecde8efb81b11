package dev.filial.core.plan;

/** What a kept seedling is crossed with in the season after. */
public sealed interface Mate {

  /** Its own pollen. */
  record Itself() implements Mate {}

  /** Another seedling of the same cross that was kept because it shows the same. */
  record Sib() implements Mate {}

  /**
   * One of the candidates; one of the seedling's own parents makes a backcross.
   *
   * @param candidate its number
   * @param asSeed whether it is the seed parent
   */
  record Plant(int candidate, boolean asSeed) implements Mate {}
}

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

  /**
   * A seedling kept of another cross of two candidates, made beside the first one in the same
   * season: what four plants hold comes together in two. In the second season alone.
   *
   * @param seed the number of that cross's seed parent
   * @param pollen that of its pollen parent; the same number for a selfing
   * @param keep the number of the appearance that is kept of it
   * @param asSeed whether the seedling kept of it is the seed parent
   */
  record OtherCross(int seed, int pollen, int keep, boolean asSeed) implements Mate {}
}

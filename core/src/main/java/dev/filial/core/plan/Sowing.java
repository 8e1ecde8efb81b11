package dev.filial.core.plan;

import dev.filial.core.trial.Proportion;
import java.util.List;

/**
 * How many seeds to sow in each season, and how many seedlings to keep, so that the wanted one is
 * had in the end with a stated certainty: the fewest seeds in all.
 *
 * <p>What is uncertain of a plant is not drawn anew for each of its seeds. Of parents that are so
 * or so with weights w the chance of at least one is the sum of w·(1 − (1 − p)ⁿ), never 1 − (1 −
 * mean p)ⁿ; where one of them cannot give it at all no number of seeds makes it sure, and keeping
 * several seedlings, each sown of by itself, may. Several wanted seedlings have to come of one and
 * the same last cross. For one season and two the fewest seeds are found by going through all
 * numbers, in steps of a thousandth where there are many; for three, and where two crosses are made
 * in the first, by steps from an even division of the certainty, so that another division may save
 * a few.
 *
 * <p>Of two crosses made beside each other as many seedlings are kept of each, and crossed two by
 * two; if fewer come up of one of them, so many pairs are carried on.
 *
 * <p>Where some of what is kept sets no seed with its mate, by their S alleles, more is kept, and
 * pollinated one after the other until enough have set; only of these is sown.
 *
 * @param seeds how many to sow in each season, of each plant kept in the season before
 * @param beside how many to sow of the cross that is made beside the first one; 0 if there is none
 * @param keep how many to go on with of each season but the last; pairs where sibs are crossed, or
 *     of each of two crosses
 * @param spare how many to keep beyond them, since not all set seed
 * @param total all seeds of all seasons together
 * @param certainty how sure the wanted seedlings then are
 * @param reachable how sure they can be, however many are sown and kept, up to {@value #MOST_KEPT}
 *     kept
 * @param reached whether {@code certainty} is what was asked for; if not, the numbers are those for
 *     {@value #NEARLY} of {@code reachable}
 */
public record Sowing(
    List<Integer> seeds,
    int beside,
    List<Integer> keep,
    List<Integer> spare,
    long total,
    double certainty,
    double reachable,
    boolean reached) {

  /** More seedlings of one kind are not kept. */
  public static final int MOST_KEPT = 8;

  /**
   * Where no number of seeds makes it as sure as was asked, the numbers are those that come to this
   * share of what can be had.
   */
  public static final double NEARLY = 0.95;

  /** Copies the lists. */
  public Sowing {
    seeds = List.copyOf(seeds);
    keep = List.copyOf(keep);
    spare = List.copyOf(spare);
  }

  /**
   * For that way.
   *
   * @param certain the shares of seeds that come through, taken as certain, multiplied
   * @param counted those that were counted
   * @throws IllegalArgumentException if more seeds would be needed than can be reckoned with, or a
   *     number lies outside its range
   */
  public static Sowing of(
      PlanChances chances, Goal goal, double certain, List<Proportion> counted) {
    return new SowingReckoner(chances, goal, certain, counted).fewest();
  }

  /** The chance that a way succeeds with such numbers of seeds, 0 to 1. */
  public static double success(
      PlanChances chances, int atLeast, List<Integer> seeds, List<Integer> keep) {
    return success(chances, atLeast, seeds, 0, keep);
  }

  /** The same with so many seeds of the cross that is made beside the first one. */
  public static double success(
      PlanChances chances, int atLeast, List<Integer> seeds, int beside, List<Integer> keep) {
    SowingReckoner reckoner = new SowingReckoner(chances, Goal.of(atLeast, NEARLY), 1, List.of());
    int[] numbers = new int[reckoner.numbers()];
    for (int season = 0; season < seeds.size(); season++) {
      numbers[season] = seeds.get(season);
    }
    if (reckoner.isDouble()) {
      numbers[seeds.size()] = beside;
    }
    return reckoner.success(numbers, keep.stream().mapToInt(Integer::intValue).toArray());
  }
}

package dev.filial.core.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the seeds of one season may be, and what follows: the parents are one of several things,
 * each so likely, and by each of them so many seeds are what is looked for.
 *
 * @param branches what the parents may be; their weights sum to 1
 * @param each how many kept plants one further cross takes: 2 for a cross of sibs; 0 after the last
 *     season
 */
record Chances(List<Branch> branches, int each) {

  Chances {
    branches = List.copyOf(branches);
  }

  /**
   * One thing that the parents may be.
   *
   * @param weight how likely that is
   * @param living the share of their seeds that live
   * @param share the share of their seeds that live and are kept, or in the last season wanted
   * @param next the season after, the kept plant being as likely of each genotype as it then is;
   *     itself without branches after the last season
   */
  record Branch(double weight, double living, double share, Chances next) {}

  static final Chances DONE = new Chances(List.of(), 0);

  /** With branches that come to the same put together. */
  static Chances of(List<Branch> branches, int each) {
    Map<Branch, Double> weights = new LinkedHashMap<>();
    for (Branch one : branches) {
      weights.merge(
          new Branch(1, one.living(), one.share(), one.next()), one.weight(), Double::sum);
    }
    return new Chances(
        weights.entrySet().stream()
            .map(
                one ->
                    new Branch(
                        one.getValue(),
                        one.getKey().living(),
                        one.getKey().share(),
                        one.getKey().next()))
            .toList(),
        each);
  }
}

package dev.filial.core.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the seeds of one season may be, and what follows: the parents are one of several things,
 * each so likely, and by each of them so many seeds are what is looked for.
 *
 * <p>Each is equal to itself alone: what goes on alike is made once and shared, and need not be
 * compared in depth.
 */
final class Chances {

  static final Chances DONE = new Chances(List.of(), 0);

  private final List<Branch> branches;
  private final int each;

  private Chances(List<Branch> branches, int each) {
    this.branches = List.copyOf(branches);
    this.each = each;
  }

  /**
   * One thing that the parents may be.
   *
   * @param weight how likely that is
   * @param main the seeds of the cross
   * @param beside the seeds of the cross made beside it, if there is one; otherwise {@link
   *     Seeds#NONE}
   * @param next the season after, the kept plant being as likely of each genotype as it then is;
   *     itself without branches after the last season
   */
  record Branch(double weight, Seeds main, Seeds beside, Chances next) {
    Branch weighing(double other) {
      return new Branch(other, main, beside, next);
    }

    /** How likely one seed of each cross is what is looked for. */
    double share() {
      return main.share() * beside.share();
    }
  }

  /**
   * The seeds of one cross.
   *
   * @param living the share that lives
   * @param share the share that lives and is kept, or in the last season wanted
   */
  record Seeds(double living, double share) {
    /** Of no cross: nothing of it can be missing. */
    static final Seeds NONE = new Seeds(1, 1);
  }

  /**
   * With branches that come to the same put together.
   *
   * @param each how many kept plants one further cross takes: 2 for a cross of sibs; 0 after the
   *     last season
   */
  static Chances of(List<Branch> branches, int each) {
    return new Chances(together(branches), each);
  }

  /** Each of those that come to the same once, their weights added up. */
  static List<Branch> together(List<Branch> branches) {
    Map<Branch, Double> weights = new LinkedHashMap<>();
    for (Branch one : branches) {
      weights.merge(one.weighing(1), one.weight(), Double::sum);
    }
    List<Branch> all = new ArrayList<>();
    weights.forEach((branch, weight) -> all.add(branch.weighing(weight)));
    return all;
  }

  /** What the parents may be; weights sum to 1. */
  List<Branch> branches() {
    return branches;
  }

  /** How many kept plants one further cross takes. */
  int each() {
    return each;
  }
}

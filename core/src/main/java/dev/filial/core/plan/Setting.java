package dev.filial.core.plan;

import java.util.List;

/**
 * How likely what is kept sets seed with what it is crossed with: one of some shares, each so
 * likely. All matings of the seedlings of one cross have the same share, by what its parents are.
 *
 * @param ways what the share may be; weights sum to 1
 */
public record Setting(List<Way> ways) {

  /** More are not tried, however seldom one sets. */
  private static final int MOST_TRIED = 200;

  /** Copies the list. */
  public Setting {
    ways = List.copyOf(ways);
  }

  /**
   * One of them.
   *
   * @param weight how likely it is
   * @param share the share of the matings that set seed, 0 to 1
   */
  public record Way(double weight, double share) {}

  /** The mean share of the matings that set seed, 0 to 1. */
  public double mean() {
    return ways.stream().mapToDouble(way -> way.weight() * way.share()).sum();
  }

  /**
   * Trying one after the other until so many have set.
   *
   * @param kept how many
   * @param failing up to this chance too few may have set when no more are tried; of what can set
   */
  Tries until(int kept, double failing) {
    double[] last = new double[MOST_TRIED];
    double spare = failing;
    for (Way way : ways) {
      double at = Math.pow(way.share(), kept); // the last of them is the very one that was tried
      for (int tried = kept; tried <= MOST_TRIED; tried++) {
        last[tried - 1] += way.weight() * at;
        at *= (1 - way.share()) * tried / (tried - kept + 1);
      }
      spare += way.share() == 0 ? way.weight() : 0;
    }
    double enough = 0;
    int tried = 0;
    while (tried < MOST_TRIED && (tried < kept || enough < 1 - spare)) {
      enough += last[tried++];
    }
    double[][] all = new double[kept][tried];
    for (int number = 1; number <= kept; number++) {
      for (Way way : ways) {
        double at = Math.pow(way.share(), number);
        for (int m = number; m <= tried; m++) {
          all[number - 1][m - 1] += way.weight() * at;
          at *= (1 - way.share()) * m / (m - number + 1);
        }
      }
    }
    return new Tries(tried, all);
  }

  /**
   * Matings tried until enough of them have set.
   *
   * @param tried how many at most
   * @param last by number, from one on, and by try, how likely that number have set with that very
   *     one
   */
  @SuppressWarnings("ArrayRecordComponent") // made for adding up, compared with nothing
  record Tries(int tried, double[][] last) {

    /** All set. */
    static Tries ofAll(int kept) {
      return new Tries(kept, new double[0][]);
    }

    /**
     * How likely one sets, two and so on.
     *
     * @param there how likely one at least can be tried, two and so on
     */
    double[] set(double[] there) {
      if (last.length == 0) {
        return there;
      }
      double[] set = new double[last.length];
      for (int number = 0; number < set.length; number++) {
        for (int m = 0; m < tried; m++) {
          set[number] += last[number][m] * there[m];
        }
      }
      return set;
    }
  }
}

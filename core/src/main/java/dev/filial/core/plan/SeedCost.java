package dev.filial.core.plan;

/**
 * About how many seeds ways take, by the mean odds, to compare them by: each sowing of a way that
 * may fail has to come out with an equal part of the certainty.
 */
final class SeedCost {

  /** More sowings than a way has. */
  private static final int MOST_SOWINGS = 4;

  private static final double NOTHING = 1e-12;

  private static final int MOST_EXACT = 20;

  /** Below it log(1 - x) is -x to the precision that ways are compared with. */
  private static final double RARE = 1e-6;

  private final double coming;
  private final int atLeast;
  private final double failingUntried;
  private final double[] logFailing = new double[MOST_SOWINGS + 1];
  private final double[] meanOfTwo = new double[MOST_SOWINGS + 1];
  private final double[] meanWanted = new double[MOST_SOWINGS + 1];

  /**
   * For that goal.
   *
   * @param coming the share of the seeds that come to a seedling that can be looked at
   */
  SeedCost(Goal goal, double coming) {
    this.coming = coming;
    this.atLeast = goal.atLeast();
    this.failingUntried = goal.failingUntried();
    for (int of = 1; of <= MOST_SOWINGS; of++) {
      double certainty = Math.pow(goal.certainty(), 1.0 / of);
      logFailing[of] = Math.log1p(-certainty);
      meanOfTwo[of] = expected(2, certainty);
      meanWanted[of] = expected(atLeast, certainty);
    }
  }

  /** Seeds until the wanted ones are among them, that share of them being so. */
  double wanted(double mass, int of) {
    return seeds(mass, atLeast, meanWanted[of], of);
  }

  /** Never more than {@link #wanted}, and found without a logarithm. */
  private double atLeastWanted(double mass, int of) {
    return atLeast(mass, atLeast > 1 ? meanWanted[of] : -logFailing[of]);
  }

  private double atLeastOne(double mass, int of) {
    return atLeast(mass, -logFailing[of]);
  }

  private double atLeast(double mass, double mean) {
    double share = Math.min(1, mass * coming);
    // -log(1 - x) is at most x / (1 - x)
    return share < NOTHING ? Double.POSITIVE_INFINITY : (1 - share) * mean / share;
  }

  /** Whether every seed comes to one of them, that share of the seedlings being so. */
  boolean isSure(double mass) {
    return mass * coming >= 1 - NOTHING;
  }

  /** 1 for a sowing that may not come to one of them, that share being so; otherwise 0. */
  int failing(double mass) {
    return isSure(mass) ? 0 : 1;
  }

  /** The chance that nothing that was tried has set seed, where not all do. */
  double failingUntried() {
    return failingUntried;
  }

  /** Seeds until so many more are there to be tried, that share of them being so. */
  double spare(double mass, int number) {
    return number == 0 ? 0 : number / Math.min(1, mass * coming);
  }

  /** Seeds until so many are kept of them, 1 or 2, that share of them being so. */
  double kept(double mass, int number, int of) {
    return seeds(mass, number, meanOfTwo[of], of);
  }

  private double seeds(double mass, int number, double mean, int of) {
    if (mass < NOTHING) {
      return Double.POSITIVE_INFINITY;
    }
    double share = Math.min(1, mass * coming);
    if (number > 1) {
      return number + (1 - share) * mean / share;
    }
    if (share >= 1 - NOTHING) {
      return 1;
    }
    double missing = share < RARE ? -share : Math.log(1 - share);
    return Math.max(1, logFailing[of] / missing);
  }

  /** The mean at which so many come with that certainty, rare as each is. */
  private static double expected(int atLeast, double certainty) {
    if (atLeast > MOST_EXACT) {
      return atLeast + 2 * Math.sqrt(atLeast); // near enough to compare ways by
    }
    double low = 0;
    double high = 10 + 10.0 * atLeast;
    for (int step = 0; step < 60; step++) {
      double mean = (low + high) / 2;
      double term = Math.exp(-mean);
      double fewer = 0;
      for (int k = 0; k < atLeast; k++) {
        fewer += term;
        term *= mean / (k + 1);
      }
      if (1 - fewer < certainty) {
        low = mean;
      } else {
        high = mean;
      }
    }
    return high;
  }

  /** Of two crosses of the first season and one more of what is kept of both. */
  DoubleCrosses.Seeds ofTwoAndOne() {
    return new DoubleCrosses.Seeds() {
      @Override
      public double kept(double share) {
        return SeedCost.this.kept(share, 1, 3);
      }

      @Override
      public int failing(double share) {
        return SeedCost.this.failing(share);
      }

      @Override
      public double after(double mass, int failing) {
        return wanted(mass, 1 + failing);
      }

      @Override
      public double atLeastAfter(double mass, int failing) {
        return atLeastWanted(mass, 1 + failing);
      }
    };
  }

  /**
   * The same with a further cross of what is kept of that. However its share and that of the wanted
   * ones divide, it takes no less than if both were the root of their product.
   */
  DoubleCrosses.Seeds ofTwoAndTwo() {
    return new DoubleCrosses.Seeds() {
      @Override
      public double kept(double share) {
        return SeedCost.this.kept(share, 1, 4);
      }

      @Override
      public int failing(double share) {
        return SeedCost.this.failing(share);
      }

      @Override
      public double after(double mass, int failing) {
        return 2 * SeedCost.this.kept(Math.sqrt(mass), 1, 2 + failing);
      }

      @Override
      public double atLeastAfter(double mass, int failing) {
        return 2 * atLeastOne(Math.sqrt(mass), 2 + failing);
      }
    };
  }
}

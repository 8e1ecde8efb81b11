package dev.filial.core.heredity;

/** How a distance on a genetic map turns into recombination. */
public enum MapFunction {
  /**
   * Crossovers fall independently: r = (1 − e<sup>−2d</sup>)/2 (Haldane 1919, Journal of Genetics
   * 8:299-309).
   */
  HALDANE {
    @Override
    double ratio(double morgans) {
      return -Math.expm1(-2 * morgans) / 2;
    }

    @Override
    double distance(double recombination) {
      return -Math.log1p(-2 * recombination) / 2;
    }
  },
  /**
   * A crossover keeps others at a distance: r = tanh(2d)/2 (Kosambi 1944, Annals of Eugenics
   * 12:172-175).
   */
  KOSAMBI {
    @Override
    double ratio(double morgans) {
      return Math.tanh(2 * morgans) / 2;
    }

    @Override
    double distance(double recombination) {
      return Math.log((1 + 2 * recombination) / (1 - 2 * recombination)) / 4;
    }
  };

  abstract double ratio(double morgans);

  abstract double distance(double recombination);

  /**
   * The share of gametes recombined between two loci so far apart, 0 to ½.
   *
   * @param morgans the distance, 0 or more
   * @throws IllegalArgumentException if it is negative or no number
   */
  public double recombination(double morgans) {
    if (!(morgans >= 0)) {
      throw new IllegalArgumentException(
          "a map distance of " + morgans + " morgans; it is 0 or more");
    }
    return Math.min(0.5, ratio(morgans));
  }

  /**
   * How far apart loci of that recombination lie, in morgans; infinite at ½.
   *
   * @param recombination 0 to ½
   * @throws IllegalArgumentException if it is not
   */
  public double morgans(double recombination) {
    if (!(recombination >= 0 && recombination <= 0.5)) {
      throw new IllegalArgumentException(
          "a recombination of " + recombination + "; it lies between 0 and 1/2");
    }
    return recombination == 0.5 ? Double.POSITIVE_INFINITY : distance(recombination);
  }
}

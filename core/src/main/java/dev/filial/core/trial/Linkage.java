package dev.filial.core.trial;

/**
 * How closely two loci are linked, from the counts of one family: maximum likelihood, with its
 * standard error and LOD.
 *
 * @param recombination the share of recombined gametes, 0 to ½; ½ is no linkage
 * @param standardError of the recombination, from the expected information; where no recombined
 *     gamete was seen it is 0 and says nothing, except in repulsion
 * @param theta in an F2, the square that is estimated: of the share of parental gametes in
 *     coupling, of recombined ones in repulsion; in a backcross the recombination itself
 * @param thetaStandardError its standard error
 * @param lod the decimal logarithm of how much likelier the counts are so than without linkage
 */
public record Linkage(
    double recombination,
    double standardError,
    double theta,
    double thetaStandardError,
    double lod) {

  private static final double UNLINKED = 0.25;

  /** How the two dominant alleles came into the F1. */
  public enum Phase {
    /** Both from one parent. */
    COUPLING,
    /** One from each. */
    REPULSION
  }

  /**
   * From an F2 of two dominant traits (Fisher and Balmukand 1928, Journal of Genetics 20:79-92;
   * Fisher, Statistical Methods for Research Workers).
   *
   * <p>The classes are expected as 2 + θ, 1 − θ, 1 − θ and θ quarters; the likelihood is greatest
   * where nθ² − (a − 2b − 2c − d)θ − 2d = 0.
   *
   * @param both how many show both dominant states
   * @param first how many show the first alone
   * @param second how many show the second alone
   * @param neither how many show neither
   * @throws IllegalArgumentException if a count is negative or all are 0
   */
  public static Linkage inF2(Phase phase, long both, long first, long second, long neither) {
    double n = Counts.total(both, first, second, neither);
    double b = both - 2.0 * (first + second) - neither;
    double root = Math.sqrt(b * b + 8.0 * n * neither);
    // The same root twice: a difference of two large numbers would have few digits left.
    double free = Math.min(1, b < 0 ? 4.0 * neither / (root - b) : (b + root) / (2 * n));
    // Beyond a quarter the recombination would exceed a half, which linkage cannot.
    double theta = phase == Phase.COUPLING ? Math.max(UNLINKED, free) : Math.min(UNLINKED, free);
    double thetaError = Math.sqrt(2 * theta * (1 - theta) * (2 + theta) / (n * (1 + 2 * theta)));
    double lod =
        logLikelihood(theta, both, first + second, neither)
            - logLikelihood(UNLINKED, both, first + second, neither);
    return new Linkage(
        phase == Phase.COUPLING ? 1 - Math.sqrt(theta) : Math.sqrt(theta),
        Math.sqrt((1 - theta) * (2 + theta) / (2 * n * (1 + 2 * theta))),
        theta,
        thetaError,
        Math.max(0, lod / Math.log(10)));
  }

  /**
   * What an F2 of two dominant traits is expected to show at a recombination: the shares of both
   * dominant states, the first alone, the second alone, and neither. For {@link
   * SegregationModel#oneParameter}, from 0 to ½.
   *
   * @param recombination the share of recombined gametes, 0 to 1, the same in both parents
   * @throws IllegalArgumentException if it is not from 0 to 1
   */
  public static double[] sharesInF2(Phase phase, double recombination) {
    if (!(recombination >= 0 && recombination <= 1)) {
      throw new IllegalArgumentException(
          "a recombination of " + recombination + "; it lies from 0 to 1");
    }
    double recessives = phase == Phase.COUPLING ? 1 - recombination : recombination;
    double theta = recessives * recessives;
    return new double[] {(2 + theta) / 4, (1 - theta) / 4, (1 - theta) / 4, theta / 4};
  }

  private static double logLikelihood(double theta, long both, long one, long neither) {
    return times(both, (2 + theta) / 4) + times(one, (1 - theta) / 4) + times(neither, theta / 4);
  }

  /**
   * From a backcross to the plant recessive at both loci, in which every gamete shows.
   *
   * @param parental how many are like one of the parents
   * @param recombined how many are not
   * @throws IllegalArgumentException if a count is negative or both are 0
   */
  public static Linkage inBackcross(long parental, long recombined) {
    double n = Counts.total(parental, recombined);
    double r = Math.min(0.5, recombined / n);
    double error = Math.sqrt(r * (1 - r) / n);
    double lod = times(recombined, r) + times(parental, 1 - r) - n * Math.log(0.5);
    return new Linkage(r, error, r, error, Math.max(0, lod / Math.log(10)));
  }

  private static double times(long count, double probability) {
    return count == 0 ? 0 : count * Math.log(probability);
  }
}

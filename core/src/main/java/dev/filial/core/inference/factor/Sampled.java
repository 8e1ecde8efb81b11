package dev.filial.core.inference.factor;

/** What a {@link BlockSampler} found. */
public final class Sampled {

  private final Reduced reduced;
  private final double[] joint;
  private final double[] standardErrors;
  private final int sweeps;
  private final int[][] counts;

  Sampled(Reduced reduced, double[] joint, double[] standardErrors, int sweeps, int[][] counts) {
    this.reduced = reduced;
    this.joint = joint;
    this.standardErrors = standardErrors;
    this.sweeps = sweeps;
    this.counts = counts;
  }

  /**
   * The estimated distribution of the asked variables together, over all their states, in the order
   * they were asked for, row-major; it sums to 1. A state no sweep came to has 0, and an error of
   * 0, and may be possible all the same.
   */
  public double[] joint() {
    return joint.clone();
  }

  /**
   * The Monte Carlo standard error of each entry of the joint distribution, from the means of 40
   * batches, ten of each chain (Flegal and Jones, Annals of Statistics 38, 2010). Near 0 where the
   * whole graph was one block and nothing was left to chance.
   */
  public double[] standardErrors() {
    return standardErrors.clone();
  }

  /** How many sweeps were counted, of all chains together. */
  public int sweeps() {
    return sweeps;
  }

  /**
   * The estimated distribution of any variable: how often each state was drawn.
   *
   * @throws IllegalArgumentException if there is no such variable
   */
  public double[] marginal(int variable) {
    if (variable < 0 || variable >= reduced.kept.length) {
      throw new IllegalArgumentException("there is no variable " + variable);
    }
    int v = reduced.remaining[variable];
    if (v < 0) {
      return Expansion.marginal(reduced, variable, new double[] {1});
    }
    double[] shares = new double[counts[v].length];
    for (int s = 0; s < shares.length; s++) {
      shares[s] = (double) counts[v][s] / sweeps;
    }
    return Expansion.marginal(reduced, variable, shares);
  }
}

package dev.filial.core.inference.factor;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A graph that has been worked through: its weight, and the distributions that were planned. */
public final class Calibrated {

  private final boolean possible;
  private final double logWeight;
  private final @Nullable Reduced reduced;
  private final double @Nullable [][] marginals;
  private final int @Nullable [] asked;
  private final double @Nullable [] joint;

  private Calibrated(
      boolean possible,
      double logWeight,
      @Nullable Reduced reduced,
      double @Nullable [][] marginals,
      int @Nullable [] asked,
      double @Nullable [] joint) {
    this.possible = possible;
    this.logWeight = logWeight;
    this.reduced = reduced;
    this.marginals = marginals;
    this.asked = asked;
    this.joint = joint;
  }

  static Calibrated impossible(int @Nullable [] asked) {
    return new Calibrated(false, Double.NEGATIVE_INFINITY, null, null, asked, null);
  }

  static Calibrated ofAll(Reduced reduced, double logWeight, double[][] marginals) {
    return new Calibrated(true, logWeight, reduced, marginals, null, null);
  }

  static Calibrated ofAsked(Reduced reduced, double logWeight, int[] asked, double[] joint) {
    return new Calibrated(
        true, logWeight, reduced, null, asked, Expansion.joint(reduced, asked, joint));
  }

  /** Whether any assignment at all has a weight. */
  public boolean isPossible() {
    return possible;
  }

  /**
   * The natural logarithm of the sum, over all assignments, of the product of all tables: the log
   * likelihood, where the tables are a Bayesian network and its observations. {@link
   * Double#NEGATIVE_INFINITY} if nothing is possible.
   */
  public double logWeight() {
    return logWeight;
  }

  /**
   * The distribution of one variable over all its states, impossible ones with 0; it sums to 1.
   *
   * @throws IllegalStateException if nothing is possible, or if the plan was for the joint
   *     distribution of some variables and this is none of them
   * @throws IllegalArgumentException if there is no such variable
   */
  public double[] marginal(int variable) {
    Reduced of = requirePossible();
    if (variable < 0 || variable >= of.kept.length) {
      throw new IllegalArgumentException("there is no variable " + variable);
    }
    if (marginals != null) {
      int v = of.remaining[variable];
      return Expansion.marginal(of, variable, v < 0 ? new double[] {1} : marginals[v]);
    }
    if (asked != null && joint != null) {
      for (int i = 0; i < asked.length; i++) {
        if (asked[i] == variable) {
          return Expansion.marginalOfJoint(of, asked, i, joint);
        }
      }
    }
    throw new IllegalStateException(
        "variable " + variable + " is none of those that were asked for");
  }

  /**
   * The distribution of the asked variables together, over all their states, in the order they were
   * asked for, row-major: the last one's state changes fastest; it sums to 1.
   *
   * @throws IllegalStateException if nothing is possible, or if the plan was for all marginals
   */
  public double[] joint() {
    requirePossible();
    if (joint == null) {
      throw new IllegalStateException("no joint distribution was asked for");
    }
    return Arrays.copyOf(joint, joint.length);
  }

  private Reduced requirePossible() {
    if (reduced == null) {
      throw new IllegalStateException("nothing is possible here, so nothing has a probability");
    }
    return reduced;
  }
}

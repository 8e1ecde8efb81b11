package dev.filial.core.inference.factor;

/**
 * One table of a {@link FactorGraph}: a weight for every combination of states of its variables.
 */
public final class Factor {

  private final int[] variables;
  private final double[] values;

  /** Keeps both arrays as they are; whoever passes them lets go of them. */
  Factor(int[] variables, double[] values) {
    this.variables = variables;
    this.values = values;
  }

  /** The variables it ties, in the order of its dimensions; a copy. */
  public int[] variables() {
    return variables.clone();
  }

  /** Its weights, row-major: the last variable's state changes fastest; a copy. */
  public double[] values() {
    return values.clone();
  }

  /** The array itself, for reading. */
  int[] scope() {
    return variables;
  }

  /** The array itself, for reading. */
  double[] table() {
    return values;
  }
}

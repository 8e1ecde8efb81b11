package dev.filial.core.inference.factor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Discrete variables and the tables that tie them. What it stands for is the product of all tables,
 * a weight for every assignment of a state to each variable; divided by its sum, a probability. A
 * Bayesian network is the case where each table is one variable's distribution given its parents,
 * and an observation is a table over one variable.
 *
 * <p>Immutable.
 */
public final class FactorGraph {

  private final int[] states;
  private final List<Factor> factors;

  private FactorGraph(int[] states, List<Factor> factors) {
    this.states = states;
    this.factors = factors;
  }

  /** A graph to be put together, empty so far. */
  public static Builder builder() {
    return new Builder();
  }

  /** How many variables there are; they are numbered from 0. */
  public int variables() {
    return states.length;
  }

  /**
   * How many states the variable has, at least 1; they are numbered from 0.
   *
   * @throws IllegalArgumentException if there is no such variable
   */
  public int states(int variable) {
    requireVariable(variable);
    return states[variable];
  }

  /** The tables, in the order they were put in. */
  public List<Factor> factors() {
    return factors;
  }

  /** The array itself, for reading. */
  int[] allStates() {
    return states;
  }

  void requireVariable(int variable) {
    if (variable < 0 || variable >= states.length) {
      throw new IllegalArgumentException(
          "there is no variable " + variable + " among " + states.length);
    }
  }

  /** Checks that each of some variables is there, and there once. */
  void requireDistinct(int[] variables) {
    for (int variable : variables) {
      requireVariable(variable);
    }
    requireNoneTwice(variables);
  }

  private static void requireNoneTwice(int[] variables) {
    Set<Integer> seen = new HashSet<>();
    for (int variable : variables) {
      if (!seen.add(variable)) {
        throw new IllegalArgumentException("variable " + variable + " is named twice");
      }
    }
  }

  /** Puts a graph together; each variable is added before the first table over it. */
  public static final class Builder {

    private int[] states = new int[16];
    private int count;
    private final List<Factor> factors = new ArrayList<>();

    private Builder() {}

    /**
     * Adds a variable.
     *
     * @param states how many states it can be in, at least 1
     * @return its number: 0 for the first, then 1, 2 and so on
     * @throws IllegalArgumentException if there would be no state
     */
    public int variable(int states) {
      if (states < 1) {
        throw new IllegalArgumentException("a variable has at least one state, not " + states);
      }
      if (count == this.states.length) {
        this.states = Arrays.copyOf(this.states, 2 * count);
      }
      this.states[count] = states;
      return count++;
    }

    /**
     * Adds a table.
     *
     * @param variables what it ties, each once; none at all for a table of one number
     * @param values a weight for every combination of their states, row-major: the last variable's
     *     state changes fastest; finite and not negative
     * @return this
     * @throws IllegalArgumentException if a variable is unknown or named twice, if there are more
     *     or fewer values than combinations, or if a value is negative, infinite or not a number
     */
    public Builder factor(int[] variables, double[] values) {
      int[] scope = variables.clone();
      double[] table = values.clone();
      long size = 1;
      for (int variable : scope) {
        if (variable < 0 || variable >= count) {
          throw new IllegalArgumentException(
              "there is no variable " + variable + " among " + count);
        }
        size = Math.min(size * states[variable], Integer.MAX_VALUE);
      }
      for (int i = 1; i < scope.length; i++) {
        for (int j = 0; j < i; j++) {
          if (scope[i] == scope[j]) {
            throw new IllegalArgumentException("variable " + scope[i] + " is named twice");
          }
        }
      }
      if (table.length != size) {
        throw new IllegalArgumentException(
            "a table over variables "
                + Arrays.toString(scope)
                + " has "
                + size
                + " values, not "
                + table.length);
      }
      for (double value : table) {
        if (!(value >= 0) || value == Double.POSITIVE_INFINITY) {
          throw new IllegalArgumentException("a weight is finite and not negative, not " + value);
        }
      }
      factors.add(new Factor(scope, table));
      return this;
    }

    /** The graph as it stands; the builder may go on. */
    public FactorGraph build() {
      return new FactorGraph(Arrays.copyOf(states, count), List.copyOf(factors));
    }
  }
}

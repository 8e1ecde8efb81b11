package dev.filial.core.ancestry;

/** The coancestries of all genotypes of a {@link GeneFlow}, worked out one way or another. */
sealed interface Kin permits CoancestryTable, TracedCoancestry {

  /** The coancestry of two nodes; 0 with a plant nobody knows. */
  double between(int a, int b);

  /** The inbreeding coefficient of a node. */
  double inbreeding(int node);

  /** The coancestry of a node with itself. */
  double self(int node);

  /** The coancestries of a node with all nodes, written into {@code out}. */
  void row(int node, double[] out);
}

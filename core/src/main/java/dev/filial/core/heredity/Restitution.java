package dev.filial.core.heredity;

/** How an unreduced gamete came about. */
public enum Restitution {
  /** The first division failed: the gamete has one chromatid of each homologous chromosome. */
  FIRST_DIVISION,
  /** The second failed: the gamete has both chromatids of one of them. */
  SECOND_DIVISION
}

package dev.filial.core.inference;

import java.util.List;

/**
 * How an answer came about.
 *
 * @param findings how much of what was seen can bear on what was asked
 * @param width the most variables that had to be looked at together, less one
 * @param entries how many numbers all tables had together
 * @param sweeps how often everything was drawn anew, where it was sampled; 0 for an exact answer
 * @param leanedOn genes whose frequencies nobody stated, each with the taxon: they were unknowns
 *     shared by all founders of it
 */
public record Reckoning(
    int findings, int width, double entries, int sweeps, List<String> leanedOn) {
  /** Copies the list. */
  public Reckoning {
    leanedOn = List.copyOf(leanedOn);
  }

  /** Whether the answer is exact, to the rounding of doubles, and not sampled. */
  public boolean isExact() {
    return sweeps == 0;
  }
}

package dev.filial.core.plan;

import dev.filial.core.heredity.Genotype;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A plant that can be a parent, and what it most likely carries. */
public final class Candidate {

  private static final double ROUNDING = 1e-6;

  private final String name;
  private final double[] odds;
  private final boolean selfs;
  private final @Nullable Genotype alleles;

  private Candidate(String name, double[] odds, boolean selfs, @Nullable Genotype alleles) {
    this.name = name;
    this.odds = odds.clone();
    this.selfs = selfs;
    this.alleles = alleles;
  }

  /**
   * A plant on which its own pollen sets seed.
   *
   * @param name what it is called
   * @param odds how likely it is of each genotype of {@link PlanGenes}; sums to 1
   * @throws IllegalArgumentException if one is below 0, or they do not sum to 1
   */
  public static Candidate of(String name, double[] odds) {
    double sum = 0;
    for (double one : odds) {
      if (!(one >= 0)) {
        throw new IllegalArgumentException(name + " has odds of " + one + "; none is below 0");
      }
      sum += one;
    }
    if (Math.abs(sum - 1) > ROUNDING) {
      throw new IllegalArgumentException("the odds of " + name + " sum to " + sum + ", not to 1");
    }
    return new Candidate(name, odds, true, null);
  }

  /** The same on which its own pollen sets seed, or none. */
  public Candidate withSelfing(boolean sets) {
    return new Candidate(name, odds, sets, alleles);
  }

  /**
   * The same with its S alleles known: what is kept of its seedlings is then reckoned to set seed
   * as often as theirs let it.
   *
   * @param genotype at the S locus alone, which lies on the chromosome of no gene of the plan; of
   *     all candidates of one genome
   * @throws IllegalArgumentException if its genome has no S locus
   */
  public Candidate withAlleles(Genotype genotype) {
    if (genotype.genome().selfIncompatibility().isEmpty()) {
      throw new IllegalArgumentException(
          "no S locus is among the genes of " + genotype.text() + "; state the S alleles");
    }
    return new Candidate(name, odds, selfs, genotype);
  }

  /** What it is called. */
  public String name() {
    return name;
  }

  /** How likely it is of each genotype. */
  public double[] odds() {
    return odds.clone();
  }

  /** Its S alleles; empty if they are not known. */
  public Optional<Genotype> alleles() {
    return Optional.ofNullable(alleles);
  }

  /** Whether its own pollen sets seed on it. */
  public boolean selfs() {
    return selfs;
  }
}

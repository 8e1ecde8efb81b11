package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which founders stand behind a set of plants, and by how much: the mean of their expected shares,
 * clones counting as one genotype.
 *
 * <p>The effective number of founders is 1 / Σ p², the number of founders that, contributing
 * equally, would leave the set as varied (Lacy 1989, Zoo Biology 8:111-123; from memory). Each
 * parent nobody knows counts as a founder of its own.
 *
 * @param genotypes how many different genotypes the set has
 * @param founders the founders, the largest contribution first
 * @param unknown the contribution of parents nobody knows; with the others it sums to 1
 * @param unknownParents how many such parents there are
 * @param effectiveNumber 1 / Σ p² over founders and unknown parents; 0 of an empty set
 */
public record FounderContributions(
    int genotypes,
    List<Contribution> founders,
    double unknown,
    int unknownParents,
    double effectiveNumber) {

  /** Copies the founders. */
  public FounderContributions {
    founders = List.copyOf(founders);
  }

  /**
   * What a founder contributes.
   *
   * @param code the founder
   * @param share its expected share of the set, above 0 and at most 1
   */
  public record Contribution(String code, double share) {}

  /**
   * The founders behind the plants; time and memory are linear in the plants behind them.
   *
   * @param plants by index; several ramets of one genotype count once
   */
  public static FounderContributions of(Pedigree pedigree, int... plants) {
    GeneFlow flow = GeneFlow.behind(pedigree, plants);
    boolean[] chosen = new boolean[flow.size()];
    int genotypes = 0;
    for (int plant : plants) {
      int node = flow.nodeOf(plant);
      genotypes += chosen[node] ? 0 : 1;
      chosen[node] = true;
    }
    Trace trace = new Trace(flow);
    for (int i = 0; i < chosen.length; i++) {
      if (chosen[i]) {
        trace.add(i, 1.0 / genotypes);
      }
    }
    trace.run();
    List<Contribution> founders = new ArrayList<>();
    Unknown unknown = new Unknown();
    double squares = 0;
    for (int k = 0; k < trace.count(); k++) {
      int node = trace.node(k);
      if (flow.isFounder(node)) {
        founders.add(new Contribution(pedigree.code(flow.plant(node)), trace.part(k)));
        squares += trace.part(k) * trace.part(k);
      } else {
        double part = trace.part(k);
        flow.eachParent(node, (parent, weight) -> unknown.addIfUnknown(parent, part * weight));
      }
    }
    founders.sort(
        Comparator.comparingDouble(Contribution::share)
            .reversed()
            .thenComparing(Contribution::code));
    squares += unknown.squares;
    return new FounderContributions(
        genotypes, founders, unknown.sum, unknown.count, squares == 0 ? 0 : 1 / squares);
  }

  /** The parents nobody knows. */
  private static final class Unknown {
    private double sum;
    private double squares;
    private int count;

    void addIfUnknown(int parent, double part) {
      if (parent == GeneFlow.UNKNOWN) {
        sum += part;
        squares += part * part;
        count++;
      }
    }
  }
}

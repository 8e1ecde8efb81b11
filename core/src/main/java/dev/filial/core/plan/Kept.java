package dev.filial.core.plan;

import java.util.ArrayList;
import java.util.List;

/** A seedling that is kept of a cross for what it shows; equal to itself alone. */
final class Kept {

  private static final double NOTHING = 1e-12;

  private final int appearance;
  private final double share;
  private final double[] odds;
  private final double[] eggs;
  private final double[] grains;

  private Kept(PlanGenes genes, int appearance, double share, double[] odds) {
    this.appearance = appearance;
    this.share = share;
    this.odds = odds;
    this.eggs = genes.eggs(odds);
    this.grains = genes.grains(odds);
  }

  /** One of each appearance that these seeds have. */
  static List<Kept> of(PlanGenes genes, double[] seeds) {
    List<Kept> all = new ArrayList<>();
    for (int k = 0; k < genes.appearances().size(); k++) {
      double share = genes.showing(seeds, k);
      if (share > NOTHING) {
        all.add(new Kept(genes, k, share, genes.kept(seeds, k, share)));
      }
    }
    return all;
  }

  /** The number of what it shows. */
  int appearance() {
    return appearance;
  }

  /** The share of the seeds that live and show it. */
  double share() {
    return share;
  }

  /** How likely it is of each genotype. */
  double[] odds() {
    return odds;
  }

  /** Its eggs. */
  double[] eggs() {
    return eggs;
  }

  /** Its pollen. */
  double[] grains() {
    return grains;
  }
}

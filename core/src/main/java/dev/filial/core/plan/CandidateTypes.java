package dev.filial.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Candidates of the same odds taken together, as plants of one type: what they hand on, and how
 * likely what comes of it is as wanted, now or a season later.
 */
final class CandidateTypes {

  private final int[] types;
  private final List<double[]> odds = new ArrayList<>();
  private final List<double[]> eggs = new ArrayList<>();
  private final List<double[]> grains = new ArrayList<>();
  private final List<double[]> wantedByEgg = new ArrayList<>();
  private final List<double[]> wantedByGrain = new ArrayList<>();
  private final List<double[]> laterByEgg = new ArrayList<>();
  private final List<double[]> laterByGrain = new ArrayList<>();
  private final double[] wantedOfSelfed;
  private final double[] laterOfSelfed;

  CandidateTypes(PlanGenes genes, List<Candidate> candidates) {
    this.wantedOfSelfed = genes.wantedOfSelfed();
    this.laterOfSelfed = new double[genes.size()];
    for (int n = 0; n < laterOfSelfed.length; n++) {
      double[] seeds = genes.seeds(n, n);
      laterOfSelfed[n] =
          Math.max(wantedOfSelfed[n], PlanGenes.dot(seeds, wantedOfSelfed)) * genes.lives(n);
    }
    this.types = new int[candidates.size()];
    for (int i = 0; i < types.length; i++) {
      double[] its = candidates.get(i).odds();
      int found = -1;
      for (int t = 0; t < odds.size() && found < 0; t++) {
        found = Arrays.equals(odds.get(t), its) ? t : -1;
      }
      if (found < 0) {
        found = odds.size();
        odds.add(its);
        double[] egg = genes.eggs(its);
        double[] grain = genes.grains(its);
        eggs.add(egg);
        grains.add(grain);
        wantedByEgg.add(genes.wantedByEgg(grain, genes.wantedSeeds()));
        wantedByGrain.add(genes.wantedByGrain(egg, genes.wantedSeeds()));
        laterByEgg.add(genes.wantedByEgg(grain, laterOfSelfed));
        laterByGrain.add(genes.wantedByGrain(egg, laterOfSelfed));
      }
      types[i] = found;
    }
  }

  /** The type of a candidate. */
  int of(int candidate) {
    return types[candidate];
  }

  /** How many types there are. */
  int size() {
    return odds.size();
  }

  /** How likely one is of each genotype. */
  double[] odds(int type) {
    return odds.get(type);
  }

  /** Its eggs. */
  double[] eggs(int type) {
    return eggs.get(type);
  }

  /** Its pollen. */
  double[] grains(int type) {
    return grains.get(type);
  }

  /** The share of wanted seeds that eggs find in its pollen: by egg. */
  double[] wantedByEgg(int type) {
    return wantedByEgg.get(type);
  }

  /** The same of pollen on its eggs: by grain. */
  double[] wantedByGrain(int type) {
    return wantedByGrain.get(type);
  }

  /** As {@link #wantedByEgg}, of seeds selfed once more where that is better. */
  double[] laterByEgg(int type) {
    return laterByEgg.get(type);
  }

  /** The same by grain. */
  double[] laterByGrain(int type) {
    return laterByGrain.get(type);
  }

  /** By genotype, the share of wanted ones among what it gives selfed. */
  double[] wantedOfSelfed() {
    return wantedOfSelfed;
  }

  /** The same, selfed once or twice, whichever gives more. */
  double[] laterOfSelfed() {
    return laterOfSelfed;
  }
}

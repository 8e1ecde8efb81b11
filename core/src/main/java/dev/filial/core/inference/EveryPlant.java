package dev.filial.core.inference;

import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.Locus;
import dev.filial.core.inference.factor.Calibrated;
import java.util.List;

/**
 * The odds of every plant of a pedigree, linkage group by linkage group, worked out in one pass.
 */
public final class EveryPlant {

  private final List<String> plants;
  private final GenomeStates states;
  private final AskedNetwork network;
  private final Calibrated done;
  private final Reckoning reckoning;

  EveryPlant(
      List<String> plants,
      GenomeStates states,
      AskedNetwork network,
      Calibrated done,
      Reckoning reckoning) {
    this.plants = plants;
    this.states = states;
    this.network = network;
    this.done = done;
    this.reckoning = reckoning;
  }

  /** The plants' codes. */
  public List<String> plants() {
    return plants;
  }

  /**
   * The chance that a plant carries an allele at least once.
   *
   * @throws IllegalArgumentException if the locus is not among the genes
   */
  public double carries(String plant, Locus locus, String allele) {
    return copies(plant, locus, allele, 1);
  }

  /**
   * The chance that a plant has an allele at least so many times.
   *
   * @param least 0 to the number of its chromosome sets
   * @throws IllegalArgumentException if the locus is not among the genes
   */
  public double copies(String plant, Locus locus, String allele, int least) {
    int number = network.number(plant);
    for (int group = 0; group < states.genome().groups().size(); group++) {
      int place = states.genome().groups().get(group).loci().indexOf(locus);
      if (place >= 0) {
        double[] chances = done.marginal(network.variable(number, group));
        double sum = 0;
        for (int i = 0; i < chances.length; i++) {
          if (states.copies(
                  group, network.lineages().form(number), i, place, locus.alleles().indexOf(allele))
              >= least) {
            sum += chances[i];
          }
        }
        return sum;
      }
    }
    throw new IllegalArgumentException(
        "the gene " + locus.name() + " is not among those reckoned with");
  }

  /** The genotypes that {@link #odds} are of. */
  public GenomeStates states() {
    return states;
  }

  /**
   * How likely a plant is of each genotype at a linkage group, by the numbers of {@link #states};
   * sums to 1. What it has at one group tells of another where a trait hangs on both; that is not
   * in these.
   */
  public double[] odds(String plant, int group) {
    return done.marginal(network.variable(network.number(plant), group)).clone();
  }

  /** How they were worked out. */
  public Reckoning reckoning() {
    return reckoning;
  }
}

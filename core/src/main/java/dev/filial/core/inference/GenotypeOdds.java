package dev.filial.core.inference;

import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import java.util.Comparator;
import java.util.List;

/**
 * What a plant carries, by everything that was seen.
 *
 * @param plant its code
 * @param genotypes those that are possible, the likeliest first; their chances sum to 1
 * @param reckoning how they were worked out
 */
public record GenotypeOdds(String plant, List<Chance> genotypes, Reckoning reckoning) {

  /**
   * A genotype.
   *
   * @param chance how likely it is, above 0 and at most 1
   * @param error the standard error of that where it was sampled, else 0
   */
  public record Chance(Genotype genotype, double chance, double error) {}

  /** Sorts them. */
  public GenotypeOdds {
    genotypes =
        genotypes.stream().sorted(Comparator.comparingDouble(Chance::chance).reversed()).toList();
  }

  /** The chance of a genotype; 0 for one that is impossible. */
  public double of(Genotype genotype) {
    return genotypes.stream()
        .filter(one -> one.genotype().equals(genotype))
        .mapToDouble(Chance::chance)
        .sum();
  }

  /** The chance of a genotype as it is written, as {@code Aa Bb}. */
  public double of(String text) {
    return genotypes.stream()
        .filter(one -> one.genotype().text().equals(text))
        .mapToDouble(Chance::chance)
        .sum();
  }

  /**
   * The chance that it carries an allele at least once.
   *
   * @throws IllegalArgumentException if the locus is not among the genes
   */
  public double carries(Locus locus, String allele) {
    return genotypes.stream()
        .filter(one -> one.genotype().alleles(locus).contains(allele))
        .mapToDouble(Chance::chance)
        .sum();
  }

  /**
   * The chance that it breeds true for a trait: that all that comes of it by selfing, for good,
   * shows one state.
   *
   * @throws IllegalArgumentException if that is not reckoned for such a plant, as for triploids
   */
  public double breedsTrue(TraitModel model) {
    Wish wish = Wish.any().andBreedingTrue(model);
    double sum = 0;
    for (Chance one : genotypes) {
      sum += one.chance() * wish.chanceOf(one.genotype()).toDouble();
    }
    return sum;
  }
}

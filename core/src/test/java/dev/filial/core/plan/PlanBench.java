package dev.filial.core.plan;

import dev.filial.core.heredity.Compatibility;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Some plants and what is wanted of them. */
final class PlanBench {

  private final Genome genome;
  private final PlanGenes genes;
  private final List<Candidate> plants = new ArrayList<>();

  PlanBench(Genome genome, List<TraitModel> models, Wish wish) {
    this.genome = genome;
    genes = PlanGenes.of(GenomeStates.of(genome), models, List.of(), wish);
  }

  /** A plant that is certainly of that genotype. */
  PlanBench with(String genotype) {
    return with(Map.of(genotype, 1.0));
  }

  PlanBench with(Map<String, Double> chances) {
    double[] odds = new double[genes.genotypes().size()];
    chances.forEach((text, chance) -> odds[number(text)] = chance);
    plants.add(Candidate.of(String.join(" or ", chances.keySet()), odds));
    return this;
  }

  /** The S alleles of the plant that was added last. */
  PlanBench carrying(Genotype alleles) {
    int last = plants.size() - 1;
    Candidate plant = plants.get(last).withAlleles(alleles);
    plants.set(
        last,
        plant.withSelfing(
            Compatibility.of(alleles, alleles).verdict() != Compatibility.Verdict.NONE));
    return this;
  }

  int number(String text) {
    return genes.number(genome.genotype(text)).orElseThrow();
  }

  Relations unrelated() {
    double[][] coancestry = new double[plants.size()][plants.size()];
    for (int i = 0; i < coancestry.length; i++) {
      coancestry[i][i] = 0.5;
    }
    return Relations.of(coancestry, new double[plants.size()][0]);
  }

  PlanSearch search(Goal goal, int seasons) {
    return PlanSearch.of(genes, plants, unrelated(), goal).withSeasons(seasons);
  }

  /** As if what two of them carry were independent. */
  PlanChances chances(CrossPath path) {
    List<PlanChances.Both> both = new ArrayList<>();
    double[] seed = plants.get(path.seed()).odds();
    double[] pollen = plants.get(path.pollen()).odds();
    for (int i = 0; i < seed.length; i++) {
      for (int j = 0; j < pollen.length; j++) {
        boolean selfed = path.seed() == path.pollen();
        double chance = selfed ? (i == j ? seed[i] : 0) : seed[i] * pollen[j];
        if (chance > 0) {
          both.add(new PlanChances.Both(i, j, chance));
        }
      }
    }
    return PlanChances.of(genes, path, both, plants);
  }

  Sowing sowing(CrossPath path, double certainty) {
    return Sowing.of(chances(path), Goal.of(1, certainty), 1, List.of());
  }

  PlanGenes genes() {
    return genes;
  }

  List<Candidate> plants() {
    return plants;
  }

  static CrossPath path(int seed, int pollen, CrossPath.Later... later) {
    return new CrossPath(seed, pollen, List.of(later));
  }

  static CrossPath.Later then(int keep, Mate mate) {
    return new CrossPath.Later(keep, mate);
  }

  /** The best of so many seasons. */
  static CrossPath first(List<PlanSearch.Found> found, int seasons) {
    return found.stream()
        .map(PlanSearch.Found::path)
        .filter(path -> path.seasons() == seasons)
        .findFirst()
        .orElseThrow();
  }
}

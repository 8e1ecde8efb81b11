package dev.filial.core.plan;

import dev.filial.core.heredity.Compatibility;
import dev.filial.core.heredity.Cross;
import dev.filial.core.heredity.Genotype;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The S alleles of what is kept, season by season, and how often it sets seed with what it is
 * crossed with: exactly, where the S alleles of all plants it comes of are known.
 *
 * <p>Gametophytic: a grain fails on a style with its own allele, so that seedlings of a cross with
 * one allele in common are of the other one of their pollen parent. A mating of which no grain
 * works sets no seed, and it goes on with one that does. Seedlings are kept for their looks, which
 * the S locus, on a chromosome of its own, has no part in.
 */
final class KeptAlleles {

  private final List<Candidate> candidates;
  private final boolean areSomeKnown;
  private final Map<Parents, Map<Genotype, Double>> seeds = new HashMap<>();
  private final Map<Parents, Boolean> setting = new HashMap<>();

  KeptAlleles(List<Candidate> candidates) {
    this.candidates = candidates;
    this.areSomeKnown = candidates.stream().anyMatch(one -> one.alleles().isPresent());
  }

  /** By their S alleles alone. */
  private record Parents(Genotype seed, Genotype pollen) {}

  /** Of each season after the first, how likely its matings set seed; empty where not known. */
  List<Optional<Setting>> along(CrossPath path) {
    List<Optional<Setting>> all = new ArrayList<>();
    Map<Parents, Double> now = begun(path.seed(), path.pollen());
    for (CrossPath.Later later : path.later()) {
      List<Setting.Way> ways = new ArrayList<>();
      Map<Parents, Double> next = new LinkedHashMap<>();
      for (Map.Entry<Parents, Double> one : now.entrySet()) {
        Map<Parents, Double> mated = mated(seedsOf(one.getKey()), later.mate());
        if (mated.isEmpty()) {
          ways.clear();
          next.clear();
          break;
        }
        double sets = 0;
        for (Map.Entry<Parents, Double> its : mated.entrySet()) {
          sets += sets(its.getKey()) ? its.getValue() : 0;
        }
        ways.add(new Setting.Way(one.getValue(), sets));
        for (Map.Entry<Parents, Double> its : mated.entrySet()) {
          if (sets(its.getKey())) {
            next.merge(its.getKey(), one.getValue() * its.getValue() / sets, Double::sum);
          }
        }
      }
      all.add(ways.isEmpty() ? Optional.empty() : Optional.of(new Setting(ways)));
      double sum = next.values().stream().mapToDouble(Double::doubleValue).sum();
      next.replaceAll((parents, chance) -> chance / sum);
      now = next;
    }
    return all;
  }

  /**
   * How many matings of the last season have to be tried until one sets, all but so surely; what is
   * not known sets at the first.
   *
   * @param failing the chance that none does, of what can set
   * @return 1 or more; empty if in some season none ever sets
   */
  OptionalInt tried(CrossPath path, double failing) {
    int tried = 1;
    if (areSomeKnown) {
      for (Optional<Setting> one : along(path)) {
        if (one.isPresent() && one.get().mean() == 0) {
          return OptionalInt.empty();
        }
        tried = one.map(setting -> setting.until(1, failing).tried()).orElse(1);
      }
    }
    return OptionalInt.of(tried);
  }

  /** The parents of a cross of candidates; none if it is not known what they are. */
  private Map<Parents, Double> begun(int seed, int pollen) {
    Genotype one = candidates.get(seed).alleles().orElse(null);
    Genotype other = candidates.get(pollen).alleles().orElse(null);
    if (one == null || other == null) {
      return Map.of();
    }
    Parents both = new Parents(one, other);
    return sets(both) ? Map.of(both, 1.0) : Map.of();
  }

  /** A mating of a kept seedling, by how likely its parents are so; none if it is not known. */
  private Map<Parents, Double> mated(Map<Genotype, Double> kept, Mate mate) {
    Map<Parents, Double> all = new LinkedHashMap<>();
    if (mate instanceof Mate.Itself) {
      kept.forEach((one, chance) -> all.put(new Parents(one, one), chance));
      return all;
    }
    Map<Genotype, Double> others = Map.of();
    boolean turned = false;
    if (mate instanceof Mate.Sib) {
      others = kept;
    } else if (mate instanceof Mate.Plant plant) {
      turned = plant.asSeed();
      others =
          candidates.get(plant.candidate()).alleles().map(its -> Map.of(its, 1.0)).orElse(Map.of());
    } else if (mate instanceof Mate.OtherCross cross) {
      turned = cross.asSeed();
      for (Parents parents : begun(cross.seed(), cross.pollen()).keySet()) {
        others = seedsOf(parents);
      }
    }
    for (Map.Entry<Genotype, Double> one : kept.entrySet()) {
      for (Map.Entry<Genotype, Double> other : others.entrySet()) {
        Parents parents =
            turned
                ? new Parents(other.getKey(), one.getKey())
                : new Parents(one.getKey(), other.getKey());
        all.merge(parents, one.getValue() * other.getValue(), Double::sum);
      }
    }
    return all;
  }

  private Map<Genotype, Double> seedsOf(Parents parents) {
    return seeds.computeIfAbsent(
        parents,
        any -> {
          Map<Genotype, Double> chances = new LinkedHashMap<>();
          for (Cross.GenotypeChance one : Cross.of(parents.seed(), parents.pollen()).genotypes()) {
            chances.merge(one.genotype(), one.chance().toDouble(), Double::sum);
          }
          return chances;
        });
  }

  private boolean sets(Parents parents) {
    return setting.computeIfAbsent(
        parents,
        any ->
            Compatibility.of(parents.seed(), parents.pollen()).verdict()
                != Compatibility.Verdict.NONE);
  }
}

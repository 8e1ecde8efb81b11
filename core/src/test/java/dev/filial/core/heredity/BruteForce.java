package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a cross throws, the long way: every way through the strands of both parents, every plant
 * that comes of it, every table read from the top. Shares nothing with what it checks but the
 * records that tables are written in.
 */
final class BruteForce {

  private final RandomCross of;

  /** Sums of the classes, those that die left out; by the states of all tables. */
  final Map<List<String>, Fraction> classes = new LinkedHashMap<>();

  Fraction living = Fraction.ZERO;

  private BruteForce(RandomCross of) {
    this.of = of;
  }

  static BruteForce of(RandomCross cross, int seed, int pollen) {
    BruteForce force = new BruteForce(cross);
    force.seedlings(
        0, cross.plants.get(seed), cross.plants.get(pollen), new ArrayList<>(), Fraction.ONE);
    return force;
  }

  /** One way through the two strands of a group, and its chance. */
  record Gamete(List<Integer> alleles, Fraction chance) {}

  static List<Gamete> gametes(int[][] strands, List<Fraction> recombination) {
    List<Gamete> gametes = new ArrayList<>();
    int intervals = recombination.size();
    for (int start = 0; start < 2; start++) {
      for (int exchanges = 0; exchanges < 1 << intervals; exchanges++) {
        int strand = start;
        Fraction chance = Fraction.HALF;
        List<Integer> alleles = new ArrayList<>(List.of(strands[strand][0]));
        for (int i = 0; i < intervals; i++) {
          boolean exchanged = (exchanges >> i & 1) == 1;
          strand = exchanged ? 1 - strand : strand;
          Fraction r = recombination.get(i);
          chance = chance.times(exchanged ? r : Fraction.ONE.minus(r));
          alleles.add(strands[strand][i + 1]);
        }
        if (!chance.isZero()) {
          gametes.add(new Gamete(alleles, chance));
        }
      }
    }
    return gametes;
  }

  private void seedlings(
      int group, int[][][] seed, int[][][] pollen, List<int[]> plant, Fraction chance) {
    if (group == of.groups.size()) {
      count(plant, chance);
      return;
    }
    for (Gamete egg : gametes(seed[group], of.recombination.get(group))) {
      for (Gamete grain : gametes(pollen[group], of.recombination.get(group))) {
        List<int[]> more = new ArrayList<>(plant);
        for (int i = 0; i < egg.alleles().size(); i++) {
          more.add(new int[] {egg.alleles().get(i), grain.alleles().get(i)});
        }
        seedlings(group + 1, seed, pollen, more, chance.times(egg.chance()).times(grain.chance()));
      }
    }
  }

  private void count(List<int[]> plant, Fraction chance) {
    Map<List<String>, Fraction> here = new LinkedHashMap<>();
    here.put(List.of(), chance);
    for (TraitModel model : of.models) {
      Outcome outcome = outcome(model, plant);
      Map<List<String>, Fraction> next = new LinkedHashMap<>();
      here.forEach(
          (states, mass) ->
              outcome
                  .shows()
                  .forEach(
                      (state, share) -> {
                        List<String> more = new ArrayList<>(states);
                        more.add(state);
                        next.merge(more, mass.times(share).times(outcome.lives()), Fraction::plus);
                      }));
      here = next;
    }
    here.forEach(
        (states, mass) -> {
          if (!mass.isZero()) {
            classes.merge(states, mass, Fraction::plus);
            living = living.plus(mass);
          }
        });
  }

  private Outcome outcome(TraitModel model, List<int[]> plant) {
    for (TraitModel.Row row : model.rows()) {
      if (row.patterns().stream().allMatch(pattern -> fits(pattern, plant))) {
        return row.outcome();
      }
    }
    throw new IllegalStateException("a table without a last row");
  }

  private boolean fits(Pattern pattern, List<int[]> plant) {
    int[] present = plant.get(of.loci().indexOf(pattern.locus()));
    for (String allele : pattern.locus().alleles()) {
      int wanted = (int) pattern.alleles().stream().filter(allele::equals).count();
      int index = pattern.locus().alleles().indexOf(allele);
      int there = (present[0] == index ? 1 : 0) + (present[1] == index ? 1 : 0);
      if (pattern.open() ? there < wanted : there != wanted) {
        return false;
      }
    }
    return true;
  }
}

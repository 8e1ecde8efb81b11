package dev.filial.core.benchmark;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.FounderPriors;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Pedigrees that tie many plants to each other: lines of full sibs and of backcrosses, at some
 * linked loci, one neighbour recombining with the next in one of ten gametes. Each locus has two
 * alleles and a trait with dominance. Genotypes are dropped through the pedigree.
 */
final class HardStructures {

  private static final double RECOMBINATION = 0.1;

  private final int loci;
  private final Random random = new Random(12);
  private final List<PlantRecord> plants = new ArrayList<>();
  private final Map<String, int[]> truth = new HashMap<>();
  private final List<Evidence> seen = new ArrayList<>();

  private HardStructures(int loci) {
    this.loci = loci;
  }

  /**
   * A line of full sibs: two of each generation are crossed, and these and more of their sibs are
   * looked at. The line begins with two plants of a species.
   *
   * @param looked how many of each generation are looked at, 2 or more
   */
  static PedigreeOdds fullSibs(int generations, int looked, int loci) {
    HardStructures line = new HardStructures(loci);
    String mother = line.acquire("mother");
    String father = line.acquire("father");
    for (int generation = 1; generation <= generations; generation++) {
      List<String> family = new ArrayList<>();
      for (int i = 0; i < looked; i++) {
        family.add(line.sow("G" + generation + "-" + i, mother, father));
      }
      mother = family.get(0);
      father = family.get(1);
    }
    return line.odds();
  }

  /**
   * Two siblings of each generation are crossed with one recurrent parent, the plants of the two
   * lines being looked at; another seedling of each as well.
   */
  static PedigreeOdds backcrosses(int generations, int looked, int loci) {
    HardStructures line = new HardStructures(loci);
    String donor = line.acquire("donor");
    String recurrent = line.acquire("recurrent");
    String last = line.sow("F1", donor, recurrent);
    for (int generation = 1; generation <= generations; generation++) {
      List<String> family = new ArrayList<>();
      for (int i = 0; i < looked; i++) {
        family.add(line.sow("BC" + generation + "-" + i, last, recurrent));
      }
      last = family.get(0);
    }
    return line.odds();
  }

  private String acquire(String code) {
    plants.add(PlantRecord.pure(code, "Echeveria laui"));
    truth.put(code, new int[] {random.nextInt(1 << loci), random.nextInt(1 << loci)});
    return code;
  }

  private String sow(String code, String mother, String father) {
    plants.add(PlantRecord.cross(code, mother, father));
    int[] homologs = {gamete(mother), gamete(father)};
    truth.put(code, homologs);
    for (int locus = 0; locus < loci; locus++) {
      String state = ((homologs[0] | homologs[1]) >> locus & 1) == 1 ? "shown" : "hidden";
      seen.add(Evidence.Shown.of(code, "trait" + locus, state, code));
    }
    return code;
  }

  private int gamete(String parent) {
    int[] homologs = truth.getOrDefault(parent, new int[2]);
    int which = random.nextInt(2);
    int gamete = 0;
    for (int locus = 0; locus < loci; locus++) {
      if (locus > 0 && random.nextDouble() < RECOMBINATION) {
        which = 1 - which;
      }
      gamete |= homologs[which] & 1 << locus;
    }
    return gamete;
  }

  private PedigreeOdds odds() {
    List<Locus> group = new ArrayList<>();
    List<TraitModel> traits = new ArrayList<>();
    FounderPriors priors = FounderPriors.none();
    for (int i = 0; i < loci; i++) {
      Locus locus = Locus.of("gene" + i, "A" + i, "a" + i);
      group.add(locus);
      traits.add(TraitModel.dominant("trait" + i, locus, List.of("shown", "hidden")));
      priors =
          priors.withFrequencies(
              "Echeveria laui",
              locus.name(),
              Map.of("A" + i, Fraction.HALF, "a" + i, Fraction.HALF));
    }
    LinkageGroup linked =
        new LinkageGroup(group, Collections.nCopies(loci - 1, Fraction.of(1, 10)), true);
    return PedigreeOdds.of(Pedigree.of(plants), Genome.of(linked), traits)
        .withPriors(priors)
        .withEvidence(seen);
  }
}

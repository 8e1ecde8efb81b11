package dev.filial.core.heredity;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which genotypes a plant can have, by its parents and by what it shows, likely or not.
 *
 * <p>Kept linkage group by linkage group. What is ruled out is impossible; where a trait depends on
 * several groups more may be impossible than is ruled out. So a plant for which one genotype is
 * left certainly has it, and of several left nothing is said of their odds.
 */
public final class PossibleGenotypes {

  /** A group with more possibilities says nothing worth keeping. */
  private static final int MOST = 4000;

  private final Genome genome;
  private final int ploidy;

  /** What is possible at each group; a group that is missing may be anything. */
  private final Map<Integer, Set<Long>> groups;

  private PossibleGenotypes(Genome genome, int ploidy, Map<Integer, Set<Long>> groups) {
    this.genome = genome;
    this.ploidy = ploidy;
    this.groups = groups;
  }

  /** Just this one. */
  public static PossibleGenotypes only(Genotype genotype) {
    Map<Integer, Set<Long>> groups = new TreeMap<>();
    for (int group = 0; group < genotype.genome().groups().size(); group++) {
      groups.put(group, Set.of(genotype.homologs(group)));
    }
    return new PossibleGenotypes(genotype.genome(), genotype.ploidy(), groups);
  }

  /**
   * All that are made of these alleles.
   *
   * @param ploidy chromosome sets, 2 to 4
   * @param alleles the alleles by the name of their locus; of a locus that is not named all
   * @throws IllegalArgumentException if the ploidy lies outside, or a locus lacks an allele
   */
  public static PossibleGenotypes madeOf(
      Genome genome, int ploidy, Map<String, Set<String>> alleles) {
    requirePloidy(ploidy);
    Map<Integer, Set<Long>> groups = new TreeMap<>();
    for (int group = 0; group < genome.groups().size(); group++) {
      LinkageGroup linked = genome.groups().get(group);
      List<Set<Integer>> choices = new ArrayList<>();
      for (Locus locus : linked.loci()) {
        Set<Integer> indexes = new TreeSet<>();
        for (String allele : alleles.getOrDefault(locus.name(), Set.copyOf(locus.alleles()))) {
          indexes.add(locus.index(allele));
        }
        choices.add(indexes);
      }
      int copies = linked.loci().get(0).isCytoplasmic() ? 1 : ploidy;
      put(groups, group, combinations(haplotypes(linked, choices), copies));
    }
    return new PossibleGenotypes(genome, ploidy, groups);
  }

  private static void requirePloidy(int ploidy) {
    if (ploidy < 2 || ploidy > Homologs.MOST) {
      throw new IllegalArgumentException(
          "a plant of " + ploidy + " chromosome sets; genotypes are reckoned for 2, 3 and 4");
    }
  }

  private static void put(Map<Integer, Set<Long>> groups, int group, Set<Long> possible) {
    if (possible.size() <= MOST) {
      groups.put(group, possible);
    }
  }

  /** All haplotypes that can be put together of these alleles; empty if there are too many. */
  private static List<Integer> haplotypes(LinkageGroup linked, List<Set<Integer>> choices) {
    List<int[]> soFar = new ArrayList<>(List.of(new int[0]));
    for (Set<Integer> choice : choices) {
      List<int[]> next = new ArrayList<>();
      for (int[] begun : soFar) {
        for (int allele : choice) {
          int[] more = Arrays.copyOf(begun, begun.length + 1);
          more[begun.length] = allele;
          next.add(more);
        }
      }
      if (next.size() > MOST) {
        return List.of();
      }
      soFar = next;
    }
    return soFar.stream().map(linked::haplotype).toList();
  }

  /** All combinations with repetition; one past the bound if there are too many. */
  private static Set<Long> combinations(List<Integer> haplotypes, int copies) {
    Set<Long> found = new LinkedHashSet<>();
    if (haplotypes.isEmpty()) {
      for (long i = 0; i <= MOST; i++) {
        found.add(i);
      }
      return found;
    }
    combine(haplotypes, 0, new int[copies], 0, found);
    return found;
  }

  private static void combine(
      List<Integer> haplotypes, int from, int[] chosen, int place, Set<Long> found) {
    if (place == chosen.length) {
      found.add(Homologs.of(chosen));
      return;
    }
    for (int i = from; i < haplotypes.size() && found.size() <= MOST; i++) {
      chosen[place] = haplotypes.get(i);
      combine(haplotypes, i, chosen, place + 1, found);
    }
  }

  /**
   * Those of the seedlings of two plants.
   *
   * @param eggSets chromosome sets of the egg
   * @param pollenSets chromosome sets of the pollen
   * @throws IllegalArgumentException if the seedlings would not have 2, 3 or 4 sets
   */
  public static PossibleGenotypes ofSeedlings(
      PossibleGenotypes seed, int eggSets, PossibleGenotypes pollen, int pollenSets) {
    requirePloidy(eggSets + pollenSets);
    Map<Integer, Set<Long>> groups = new TreeMap<>();
    for (int group = 0; group < seed.genome.groups().size(); group++) {
      if (seed.genome.groups().get(group).loci().get(0).isCytoplasmic()) {
        Set<Long> own = seed.groups.get(group);
        if (own != null) {
          groups.put(group, own);
        }
        continue;
      }
      Set<Long> eggs = seed.gametes(group, eggSets, false);
      Set<Long> grains = pollen.gametes(group, pollenSets, true);
      if (!eggs.isEmpty() && !grains.isEmpty()) {
        Set<Long> seedlings = new LinkedHashSet<>();
        for (long egg : eggs) {
          for (long grain : grains) {
            if (seedlings.size() <= MOST) {
              seedlings.add(Homologs.join(egg, grain));
            }
          }
        }
        put(groups, group, seedlings);
      }
    }
    return new PossibleGenotypes(seed.genome, eggSets + pollenSets, groups);
  }

  /** All gametes that can be formed; empty if the group may be anything. */
  private Set<Long> gametes(int group, int sets, boolean asPollen) {
    Set<Long> possible = groups.get(group);
    if (possible == null) {
      return Set.of();
    }
    LinkageGroup linked = genome.groups().get(group);
    Set<Long> gametes = new LinkedHashSet<>();
    for (long homologs : possible) {
      int[] all = Homologs.all(homologs);
      if (all.length == 2 && sets == 1) {
        gametes.addAll(
            Gametes.selfing(genome, group, homologs, 2, Meiosis.REDUCED, asPollen)
                .masses()
                .keySet());
      } else if (Homologs.areApart(homologs) && sets == 2) {
        for (int i = 0; i < 2; i++) {
          for (int j = 2; j < 4; j++) {
            gametes.add(Homologs.apart(all[i], all[j]));
          }
        }
      } else {
        // Whatever can be put together of the plant's alleles: unreduced gametes, those of
        // polyploids, double reduction.
        List<Set<Integer>> choices = new ArrayList<>();
        for (int place = 0; place < linked.loci().size(); place++) {
          Set<Integer> alleles = new TreeSet<>();
          for (int haplotype : all) {
            alleles.add(linked.allele(haplotype, place));
          }
          choices.add(alleles);
        }
        gametes.addAll(combinations(haplotypes(linked, choices), sets));
      }
      if (gametes.size() > MOST) {
        return Set.of();
      }
    }
    return gametes;
  }

  /** Of a plant with every chromosome twice, as after colchicine. */
  public PossibleGenotypes doubled() {
    requirePloidy(2 * ploidy);
    Map<Integer, Set<Long>> twice = new TreeMap<>();
    groups.forEach(
        (group, possible) -> {
          boolean cytoplasm = genome.groups().get(group).loci().get(0).isCytoplasmic();
          Set<Long> now = new LinkedHashSet<>();
          for (long one : possible) {
            now.add(cytoplasm ? one : Homologs.join(one, one));
          }
          twice.put(group, now);
        });
    return new PossibleGenotypes(genome, 2 * ploidy, twice);
  }

  /** What is possible of either plant, of one that may be the one or the other. */
  public PossibleGenotypes or(PossibleGenotypes other) {
    Map<Integer, Set<Long>> both = new TreeMap<>();
    groups.forEach(
        (group, possible) -> {
          Set<Long> more = other.groups.get(group);
          if (more != null) {
            Set<Long> all = new LinkedHashSet<>(possible);
            all.addAll(more);
            put(both, group, all);
          }
        });
    return new PossibleGenotypes(genome, ploidy == other.ploidy ? ploidy : 0, both);
  }

  /** Those that can show this state and live. */
  public PossibleGenotypes showing(TraitModel model, String state) {
    return kept(
        model,
        outcome ->
            !outcome.lives().isZero()
                && outcome.shows().containsKey(state)
                && !outcome.shows().get(state).isZero());
  }

  /** Just this one, if it is among them; none if it is not. */
  public PossibleGenotypes like(Genotype stated) {
    Map<Integer, Set<Long>> left = new TreeMap<>();
    for (int group = 0; group < genome.groups().size(); group++) {
      Set<Long> known = groups.get(group);
      long homologs = stated.homologs(group);
      boolean possible = known == null || known.contains(homologs);
      if (!possible && known != null && Homologs.areApart(homologs)) {
        possible = known.contains(Homologs.of(Homologs.all(homologs)));
      }
      left.put(group, possible ? Set.of(homologs) : Set.of());
    }
    return new PossibleGenotypes(genome, stated.ploidy(), left);
  }

  /**
   * Those that are as stated at the loci that the stated genotype is of: of linked ones with how
   * they lie together. It may be of fewer loci, of more, or of others.
   */
  public PossibleGenotypes agreeing(Genotype stated) {
    Map<Integer, Set<Long>> left = new TreeMap<>(groups);
    for (int group = 0; group < genome.groups().size(); group++) {
      LinkageGroup linked = genome.groups().get(group);
      StatedPhase phase = StatedPhase.of(linked, stated);
      Set<Long> known = groups.get(group);
      if (phase.isSilent()) {
        continue;
      }
      if (known == null) {
        boolean fits =
            linked.loci().get(0).isCytoplasmic() || stated.ploidy() == ploidy || ploidy == 0;
        if (phase.isWhole() && fits) {
          left.put(group, Set.of(phase.whole()));
        }
        continue;
      }
      Set<Long> possible = new LinkedHashSet<>();
      for (long homologs : known) {
        if (phase.fits(homologs)) {
          boolean parted =
              phase.isWhole()
                  && Homologs.areApart(phase.whole())
                  && Homologs.count(phase.whole()) == Homologs.count(homologs);
          possible.add(parted ? phase.whole() : homologs);
        }
      }
      left.put(group, possible);
    }
    return new PossibleGenotypes(genome, ploidy, left);
  }

  private interface Test {
    boolean test(Outcome outcome);
  }

  private PossibleGenotypes kept(TraitModel model, Test test) {
    Tables tables = Tables.parted(genome, Set.of(model)).get(0);
    for (int group : tables.groups()) {
      if (!groups.containsKey(group)) {
        return this; // nothing can be ruled out of what may be anything
      }
    }
    Map<Integer, Set<Long>> left = new TreeMap<>(groups);
    for (int group : tables.groups()) {
      Set<BigInteger> others = new HashSet<>(Set.of(tables.open()));
      for (int other : tables.groups()) {
        if (other != group) {
          Set<BigInteger> next = new HashSet<>();
          for (long homologs : groups.getOrDefault(other, Set.of())) {
            BigInteger open = tables.open(other, homologs);
            others.forEach(before -> next.add(before.and(open)));
          }
          others = next;
        }
      }
      Set<Long> possible = new LinkedHashSet<>();
      for (long homologs : groups.getOrDefault(group, Set.of())) {
        BigInteger open = tables.open(group, homologs);
        boolean fits = false;
        for (BigInteger other : others) {
          BigInteger rows = other.and(open);
          fits |= tables.covers(0, rows) && test.test(tables.outcome(0, rows));
        }
        if (fits) {
          possible.add(homologs);
        }
      }
      left.put(group, possible);
    }
    return new PossibleGenotypes(genome, ploidy, left);
  }

  /** How many chromosome sets such a plant has; 0 if it may have more or fewer. */
  public int ploidy() {
    return ploidy;
  }

  /** Whether no genotype is left: what was said of the plant contradicts itself. */
  public boolean isEmpty() {
    return groups.values().stream().anyMatch(Set::isEmpty);
  }

  /** The genotype, if only one is left. */
  public Optional<Genotype> single() {
    return single(false);
  }

  /** The same of a pollen parent, whose cytoplasm is of no account: any will do for it. */
  public Optional<Genotype> singleAsPollen() {
    return single(true);
  }

  private Optional<Genotype> single(boolean asPollen) {
    long[] homologs = new long[genome.groups().size()];
    for (int group = 0; group < homologs.length; group++) {
      Set<Long> possible = groups.get(group);
      if (asPollen && genome.groups().get(group).loci().get(0).isCytoplasmic()) {
        homologs[group] = Homologs.of(0);
      } else if (ploidy == 0 || possible == null || possible.size() != 1) {
        return Optional.empty();
      } else {
        homologs[group] = possible.iterator().next();
      }
    }
    return Optional.of(new Genotype(genome, ploidy, homologs));
  }

  /**
   * What is possible in each linkage group, in a grower's spelling; a group of which nothing is
   * known is left out.
   *
   * @param most how many of one group are written out before "…" takes the place of the others
   */
  public List<String> texts(int most) {
    List<String> texts = new ArrayList<>();
    groups.forEach(
        (group, possible) -> {
          List<String> some =
              new ArrayList<>(
                  possible.stream()
                      .limit(most)
                      .map(one -> Genotype.text(genome.groups().get(group), one))
                      .toList());
          if (possible.size() > most) {
            some.add("…");
          }
          texts.add(String.join(" or ", some));
        });
    return List.copyOf(texts);
  }
}

package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What two plants throw when one is pollinated by the other.
 *
 * <p>Loci on different chromosomes assort independently; linked ones recombine without
 * interference. Chances are exact: whole numbers over a common denominator, whatever the number of
 * loci. Cost: in each linkage group the number of different gametes of both parents multiplied, and
 * over the groups the number of kinds that the tables tell apart.
 */
public final class Cross {

  private final Genome genome;
  private final Parent seed;
  private final Parent pollen;
  private final List<TraitModel> background;
  private final int ploidy;
  private final Seedlings seedlings;

  private Cross(Genome genome, Parent seed, Parent pollen, List<TraitModel> background) {
    this.genome = genome;
    this.seed = seed;
    this.pollen = pollen;
    this.background = List.copyOf(background);
    this.ploidy = sets(seed) + sets(pollen);
    if (ploidy < 2 || ploidy > Homologs.MOST) {
      throw new IllegalArgumentException(
          "the seedlings would have "
              + ploidy
              + " chromosome sets; odds are reckoned for seedlings of 2, 3 and 4");
    }
    Map<Integer, Masses<Long>> groups = new TreeMap<>();
    for (int group = 0; group < genome.groups().size(); group++) {
      groups.put(group, Gametes.joined(eggs(group), grains(group)));
    }
    this.seedlings = new Seedlings(genome, ploidy, groups);
  }

  /**
   * A cross.
   *
   * @throws IllegalArgumentException if a parent is of another genome, cannot form gametes as
   *     stated, the seedlings would not have 2, 3 or 4 chromosome sets, or what would have to be
   *     reckoned with is not (linkage through polyploids, an S locus with unknown plants or
   *     polyploids)
   */
  public static Cross of(Genome genome, Parent seed, Parent pollen) {
    requireGenome(genome, seed);
    requireGenome(genome, pollen);
    return new Cross(genome, seed, pollen, List.of());
  }

  /** A cross of two diploids of known genotype. */
  public static Cross of(Genotype seed, Genotype pollen) {
    return of(seed.genome(), Parent.of(seed), Parent.of(pollen));
  }

  /** A diploid's selfing. */
  public static Cross selfing(Genotype plant) {
    return of(plant, plant);
  }

  /**
   * The same with plants dying as this table says, though nobody asks what else it says: seedlings
   * that are lost change the odds of all that is linked to the locus they die of.
   */
  public Cross withLosses(TraitModel model) {
    List<TraitModel> all = new ArrayList<>(background);
    all.add(model);
    return new Cross(genome, seed, pollen, all);
  }

  private static void requireGenome(Genome genome, Parent parent) {
    if (parent instanceof Parent.Plant plant && plant.genotype().genome() != genome) {
      throw new IllegalArgumentException(
          "the genotype "
              + plant.genotype().text()
              + " was read for other genes; read it for these");
    }
  }

  private static int sets(Parent parent) {
    if (parent instanceof Parent.Plant plant) {
      Meiosis meiosis = plant.meiosis();
      if (meiosis instanceof Meiosis.Unreduced) {
        return 2;
      }
      if (meiosis instanceof Meiosis.OfTriploid triploid) {
        return triploid.sets();
      }
      return plant.genotype().ploidy() / 2;
    }
    return 1;
  }

  private Masses<Long> eggs(int group) {
    return Gametes.of(genome, group, seed, false);
  }

  private Masses<Long> grains(int group) {
    Masses<Long> grains = Gametes.of(genome, group, pollen, true);
    if (genome.hasSLocusIn(group)) {
      if (!(seed instanceof Parent.Plant style) || !(pollen instanceof Parent.Plant)) {
        throw new IllegalArgumentException(
            "which pollen is refused depends on the S alleles of both parents; name both, or leave"
                + " the S locus out");
      }
      return Gametes.styled(
          genome, group, grains, style.genotype().homologs(group), style.genotype().ploidy());
    }
    return grains;
  }

  /** The loci it is reckoned over. */
  public Genome genome() {
    return genome;
  }

  /** The seed parent. */
  public Parent seed() {
    return seed;
  }

  /** The pollen parent. */
  public Parent pollen() {
    return pollen;
  }

  /** How many chromosome sets the seedlings have: 2, 3 or 4. */
  public int ploidy() {
    return ploidy;
  }

  Seedlings seedlings() {
    return seedlings;
  }

  Set<TraitModel> background() {
    return new LinkedHashSet<>(background);
  }

  /**
   * What the seedlings show, of one trait or of several together.
   *
   * @throws IllegalArgumentException if a table does not cover the seedlings, no seedling lives, a
   *     trait is named twice, or more kinds would have to be told apart than can be
   */
  public Odds odds(TraitModel... models) {
    return odds(List.of(models));
  }

  /** As {@link #odds(TraitModel...)}. */
  public Odds odds(List<TraitModel> models) {
    return Segregation.of(genome, seedlings, models, background());
  }

  /**
   * The chance that a seedling is as wished, of those that live; 0 to 1.
   *
   * @throws IllegalArgumentException as {@link #odds(TraitModel...)}
   */
  public Fraction chance(Wish wish) {
    wish.models().forEach(model -> model.requireComplete(ploidy));
    return seedlings.chance(wish, background());
  }

  /**
   * A genotype and how likely a seed has it.
   *
   * @param genotype the genotype
   * @param chance above 0, at most 1
   */
  public record GenotypeChance(Genotype genotype, Fraction chance) {}

  /**
   * All genotypes among the seeds, before any die, at all loci.
   *
   * @throws IllegalArgumentException if there are more than can be listed
   */
  public List<GenotypeChance> genotypes() {
    List<Integer> all = new ArrayList<>();
    for (int group = 0; group < genome.groups().size(); group++) {
      all.add(group);
    }
    Masses<List<Long>> plants = seedlings.plants(all);
    List<GenotypeChance> genotypes = new ArrayList<>();
    for (List<Long> plant : plants.masses().keySet()) {
      genotypes.add(
          new GenotypeChance(
              new Genotype(genome, ploidy, plant.stream().mapToLong(Long::longValue).toArray()),
              plants.share(plant)));
    }
    return genotypes;
  }

  /**
   * A gamete and how likely it is.
   *
   * @param text the alleles it carries, linkage groups parted by a space
   * @param chance above 0, at most 1
   */
  public record GameteChance(String text, Fraction chance) {}

  /**
   * The gametes of the seed parent, those of different linkage groups combined.
   *
   * @throws IllegalArgumentException if there are more than can be listed
   */
  public List<GameteChance> eggs() {
    return gametes(false);
  }

  /**
   * The gametes of the pollen parent that take part: what a style refuses counts as little as comes
   * through.
   *
   * @throws IllegalArgumentException if there are more than can be listed
   */
  public List<GameteChance> pollenGrains() {
    return gametes(true);
  }

  private List<GameteChance> gametes(boolean ofPollen) {
    List<GameteChance> chances = new ArrayList<>();
    Masses<List<Long>> combined = combined(ofPollen);
    for (List<Long> gamete : combined.masses().keySet()) {
      chances.add(new GameteChance(text(gamete), combined.share(gamete)));
    }
    return chances;
  }

  Masses<List<Long>> combined(boolean ofPollen) {
    Map<Integer, Masses<Long>> groups = new TreeMap<>();
    List<Integer> all = new ArrayList<>();
    for (int group = 0; group < genome.groups().size(); group++) {
      groups.put(group, ofPollen ? grains(group) : eggs(group));
      all.add(group);
    }
    return new Seedlings(genome, ploidy, groups).plants(all);
  }

  String text(List<Long> gamete) {
    List<String> parts = new ArrayList<>();
    for (int group = 0; group < gamete.size(); group++) {
      if (Homologs.count(gamete.get(group)) > 0) {
        parts.add(Genotype.text(genome.groups().get(group), gamete.get(group)));
      }
    }
    return String.join(" ", parts);
  }
}

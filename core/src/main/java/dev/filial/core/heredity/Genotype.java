package dev.filial.core.heredity;

import dev.filial.core.heredity.Genome.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a plant carries at all loci of a genome: of each linkage group as many haplotypes as the
 * plant has chromosome sets, of the cytoplasm one.
 */
public final class Genotype {

  private final Genome genome;
  private final int ploidy;
  private final long[] homologs;

  Genotype(Genome genome, int ploidy, long[] homologs) {
    this.genome = genome;
    this.ploidy = ploidy;
    this.homologs = homologs.clone();
  }

  /** The loci it is about. */
  public Genome genome() {
    return genome;
  }

  /** How many chromosome sets the plant has: 2, 3 or 4. */
  public int ploidy() {
    return ploidy;
  }

  /**
   * The alleles at a locus, the most dominant first; one of a locus in the cytoplasm.
   *
   * @throws IllegalArgumentException if the locus is not of this genome
   */
  public List<String> alleles(Locus locus) {
    Place place = genome.place(locus);
    List<String> alleles = new ArrayList<>();
    for (int index : alleles(genome.groups().get(place.group()), homologs[place.group()], place)) {
      alleles.add(locus.alleles().get(index));
    }
    return List.copyOf(alleles);
  }

  static int[] alleles(LinkageGroup group, long homologs, Place place) {
    int[] alleles = new int[Homologs.count(homologs)];
    for (int i = 0; i < alleles.length; i++) {
      alleles[i] = group.allele(Homologs.at(homologs, i), place.place());
    }
    Arrays.sort(alleles);
    return alleles;
  }

  /** Whether all alleles at the locus are the same. */
  public boolean isHomozygous(Locus locus) {
    return Set.copyOf(alleles(locus)).size() == 1;
  }

  /** Whether its two subgenomes are known not to pair with each other. */
  public boolean isDisomic() {
    for (int g = 0; g < homologs.length; g++) {
      if (Homologs.areApart(homologs[g])) {
        return true;
      }
    }
    return false;
  }

  /**
   * The genotype with every chromosome twice, as after colchicine: a diploid becomes a tetraploid.
   *
   * @throws IllegalArgumentException if that has more than four sets
   */
  public Genotype doubled() {
    long[] twice = homologs.clone();
    for (int g = 0; g < twice.length; g++) {
      if (!isCytoplasm(g)) {
        twice[g] = Homologs.join(homologs[g], homologs[g]);
      }
    }
    return new Genotype(genome, 2 * ploidy, twice);
  }

  /**
   * The ways in which a tetraploid's alleles can lie in two subgenomes that do not pair with each
   * other; itself if that is stated already of all of them, or if it is no tetraploid.
   *
   * <p>Which subgenome is written first is of no account for what the plant throws when it is
   * crossed or selfed. Of two such plants that are crossed it is, once their seedlings are selfed:
   * {@code AA|aa} by {@code aa|AA} gives {@code Aa|Aa}, while {@code AA|aa} by its like breeds
   * true. Only one of the two ways of writing is given here.
   */
  public List<Genotype> disomicArrangements() {
    if (ploidy != 4) {
      return List.of(this);
    }
    Set<Genotype> found = new LinkedHashSet<>();
    arrange(0, homologs.clone(), found);
    return List.copyOf(found);
  }

  private void arrange(int g, long[] soFar, Set<Genotype> found) {
    if (g == homologs.length) {
      found.add(new Genotype(genome, ploidy, soFar));
      return;
    }
    if (isCytoplasm(g) || Homologs.areApart(homologs[g])) {
      arrange(g + 1, soFar, found);
      return;
    }
    int[] all = Homologs.all(homologs[g]);
    for (int partner = 1; partner < 4; partner++) {
      int[] rest = new int[2];
      int n = 0;
      for (int i = 1; i < 4; i++) {
        if (i != partner) {
          rest[n++] = all[i];
        }
      }
      long[] next = soFar.clone();
      next[g] = subgenomes(all[0], all[partner], rest[0], rest[1]);
      arrange(g + 1, next, found);
    }
  }

  /** Which subgenome is called the first is of no account, so the lower one is. */
  private static long subgenomes(int a, int b, int c, int d) {
    long one = Homologs.of(a, b);
    long other = Homologs.of(c, d);
    return one <= other ? Homologs.apart(a, b, c, d) : Homologs.apart(c, d, a, b);
  }

  /** Whether its subgenomes do not pair and each has every chromosome twice, as after doubling. */
  public boolean pairsAlike() {
    for (int g = 0; g < homologs.length; g++) {
      int[] all = Homologs.all(homologs[g]);
      if (!isCytoplasm(g)
          && (!Homologs.areApart(homologs[g]) || all[0] != all[1] || all[2] != all[3])) {
        return false;
      }
    }
    return true;
  }

  long homologs(int group) {
    return homologs[group];
  }

  boolean isCytoplasm(int group) {
    return genome.groups().get(group).loci().get(0).isCytoplasmic();
  }

  /** As it can be read again: {@code Aa Bb}, {@code AB/ab}, {@code AA|aa}. */
  public String text() {
    List<String> parts = new ArrayList<>();
    for (int g = 0; g < homologs.length; g++) {
      parts.add(text(genome.groups().get(g), homologs[g]));
    }
    return String.join(" ", parts);
  }

  static String text(LinkageGroup group, long homologs) {
    int[] all = Homologs.all(homologs);
    List<String> haplotypes = new ArrayList<>();
    for (int haplotype : all) {
      haplotypes.add(group.text(haplotype));
    }
    boolean single = group.loci().size() == 1;
    boolean runTogether = single && haplotypes.stream().allMatch(symbol -> symbol.length() == 1);
    String between = runTogether ? "" : "/";
    if (Homologs.areApart(homologs) && all.length > 1) {
      int half = all.length / 2;
      return String.join(between, haplotypes.subList(0, half))
          + "|"
          + String.join(between, haplotypes.subList(half, all.length));
    }
    return String.join(between, haplotypes);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Genotype genotype
        && genome == genotype.genome
        && Arrays.equals(homologs, genotype.homologs);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(homologs);
  }

  @Override
  public String toString() {
    return text();
  }
}

package dev.filial.core.heredity;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Tables that have linkage groups in common, and so must be read together; tables that have none
 * are independent of each other, and their chances multiply.
 *
 * <p>Which rows of all the tables a plant can still fit is a set of bits. What each linkage group
 * leaves open is worked out by itself, and the sets of several groups are intersected: genotypes
 * that the tables cannot tell apart are never multiplied out.
 */
final class Tables {

  private final Genome genome;
  private final List<TraitModel> models;
  private final List<Integer> offsets = new ArrayList<>();
  private final List<Integer> groups;
  private final int rows;

  private Tables(Genome genome, List<TraitModel> models, Set<Integer> groups) {
    this.genome = genome;
    this.models = List.copyOf(models);
    this.groups = List.copyOf(groups);
    int from = 0;
    for (TraitModel model : models) {
      offsets.add(from);
      from += model.rows().size();
    }
    this.rows = from;
  }

  /** The tables in lots that have no linkage group in common. */
  static List<Tables> parted(Genome genome, Set<TraitModel> models) {
    List<Set<TraitModel>> lots = new ArrayList<>();
    List<Set<Integer>> groupsOf = new ArrayList<>();
    for (TraitModel model : models) {
      Set<TraitModel> together = new LinkedHashSet<>();
      Set<Integer> groups = new TreeSet<>();
      for (Locus locus : model.loci()) {
        groups.add(genome.place(locus).group());
      }
      for (int i = lots.size() - 1; i >= 0; i--) {
        if (groupsOf.get(i).stream().anyMatch(groups::contains)) {
          Set<TraitModel> earlier = lots.remove(i);
          earlier.addAll(together);
          together = earlier;
          groups.addAll(groupsOf.remove(i));
        }
      }
      together.add(model);
      lots.add(together);
      groupsOf.add(groups);
    }
    List<Tables> tables = new ArrayList<>();
    for (int i = 0; i < lots.size(); i++) {
      tables.add(new Tables(genome, List.copyOf(lots.get(i)), groupsOf.get(i)));
    }
    return tables;
  }

  /** These tables in one lot, whether they have a linkage group in common or not. */
  static Tables together(Genome genome, List<TraitModel> models) {
    Set<Integer> groups = new TreeSet<>();
    for (TraitModel model : models) {
      for (Locus locus : model.loci()) {
        groups.add(genome.place(locus).group());
      }
    }
    return new Tables(genome, models, groups);
  }

  List<TraitModel> models() {
    return models;
  }

  /** The numbers of the linkage groups they depend on, rising. */
  List<Integer> groups() {
    return groups;
  }

  /** The rows that nothing has ruled out yet. */
  BigInteger open() {
    return BigInteger.ONE.shiftLeft(rows).subtract(BigInteger.ONE);
  }

  /** The rows that these homologs leave open. */
  BigInteger open(int group, long homologs) {
    LinkageGroup linked = genome.groups().get(group);
    BigInteger open = BigInteger.ZERO;
    int[][] alleles = new int[linked.loci().size()][];
    for (int m = 0; m < models.size(); m++) {
      List<TraitModel.Row> table = models.get(m).rows();
      for (int row = 0; row < table.size(); row++) {
        if (fits(table.get(row), linked, group, homologs, alleles)) {
          open = open.setBit(offsets.get(m) + row);
        }
      }
    }
    return open;
  }

  private boolean fits(
      TraitModel.Row row, LinkageGroup linked, int group, long homologs, int[][] alleles) {
    for (Pattern pattern : row.patterns()) {
      Genome.Place place = genome.place(pattern.locus());
      if (place.group() == group) {
        if (alleles[place.place()] == null) {
          alleles[place.place()] = Genotype.alleles(linked, homologs, place);
        }
        if (!pattern.matches(alleles[place.place()])) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether the table of that number says anything of such a plant. */
  boolean covers(int model, BigInteger open) {
    int row = open.shiftRight(offsets.get(model)).getLowestSetBit();
    return row >= 0 && row < models.get(model).rows().size();
  }

  /** What the table of that number says of a plant that left these rows open. */
  Outcome outcome(int model, BigInteger open) {
    int from = offsets.get(model);
    int row = open.shiftRight(from).getLowestSetBit();
    List<TraitModel.Row> table = models.get(model).rows();
    if (row < 0 || row >= table.size()) {
      throw new IllegalArgumentException(
          "the table of "
              + models.get(model).trait()
              + " does not say what some of these seedlings show; add a row, or * for all that"
              + " are left");
    }
    return table.get(row).outcome();
  }
}

package dev.filial.core.heredity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a genotype that was stated of some loci says of one linkage group of others: of the loci
 * that both have, which alleles there are and how they lie together.
 *
 * <p>A genotype restricted to some of its loci keeps their phase, and of another group it says
 * nothing. Loci are matched by their names.
 */
final class StatedPhase {

  private final LinkageGroup group;
  private final List<Part> parts;

  /**
   * What one group of the stated genotype has in common with this one.
   *
   * @param common the loci in common, as a group
   * @param places where they stand in this group
   * @param homologs what was stated of them
   */
  private record Part(LinkageGroup common, List<Integer> places, long homologs) {}

  private StatedPhase(LinkageGroup group, List<Part> parts) {
    this.group = group;
    this.parts = parts;
  }

  /** Of that group. */
  static StatedPhase of(LinkageGroup group, Genotype stated) {
    Map<Integer, List<Locus>> common = new LinkedHashMap<>();
    Map<String, Genome.Place> there = new LinkedHashMap<>();
    for (Locus locus : stated.genome().loci()) {
      there.put(locus.name(), stated.genome().place(locus));
    }
    for (Locus locus : group.loci()) {
      Genome.Place place = there.get(locus.name());
      if (place != null) {
        common.computeIfAbsent(place.group(), any -> new ArrayList<>()).add(locus);
      }
    }
    List<Part> parts = new ArrayList<>();
    common.forEach(
        (its, loci) -> {
          LinkageGroup kept = group.only(loci);
          List<Integer> places = loci.stream().map(group.loci()::indexOf).toList();
          List<Integer> stand =
              loci.stream()
                  .map(locus -> there.get(locus.name()))
                  .map(place -> place == null ? 0 : place.place())
                  .toList();
          LinkageGroup whole = stated.genome().groups().get(its);
          parts.add(new Part(kept, places, only(kept, whole, stand, stated.homologs(its))));
        });
    return new StatedPhase(group, List.copyOf(parts));
  }

  /** Homologs with just the loci of those places. */
  private static long only(
      LinkageGroup kept, LinkageGroup whole, List<Integer> places, long homologs) {
    int[] codes = new int[Homologs.count(homologs)];
    for (int copy = 0; copy < codes.length; copy++) {
      int[] alleles = new int[places.size()];
      for (int i = 0; i < alleles.length; i++) {
        alleles[i] = whole.allele(Homologs.at(homologs, copy), places.get(i));
      }
      codes[copy] = kept.haplotype(alleles);
    }
    return Homologs.areApart(homologs) ? Homologs.apart(codes) : Homologs.of(codes);
  }

  /** Whether nothing was stated of this group. */
  boolean isSilent() {
    return parts.isEmpty();
  }

  /** Whether all of this group was stated, with how it lies together. */
  boolean isWhole() {
    return parts.size() == 1 && parts.get(0).common().loci().size() == group.loci().size();
  }

  /** What was stated, where that is all of this group. */
  long whole() {
    return parts.get(0).homologs();
  }

  /**
   * Whether these homologs of the group are as stated. Subgenomes that only one of the two keeps
   * apart are no difference. Of a plant with more or fewer chromosome sets than were written two
   * alleles stand for any number of sets, as in a {@link Pattern}.
   */
  boolean fits(long homologs) {
    for (Part part : parts) {
      long here = only(part.common(), group, part.places(), homologs);
      boolean alike =
          Homologs.count(here) == Homologs.count(part.homologs())
              ? areAlike(here, part.homologs())
              : fitsByAlleles(part, here);
      if (!alike) {
        return false;
      }
    }
    return true;
  }

  private static boolean areAlike(long one, long other) {
    return one == other
        || (Homologs.areApart(one) != Homologs.areApart(other)
            && Homologs.of(Homologs.all(one)) == Homologs.of(Homologs.all(other)));
  }

  private static boolean fitsByAlleles(Part part, long here) {
    for (int i = 0; i < part.common().loci().size(); i++) {
      Locus locus = part.common().loci().get(i);
      Genome.Place place = new Genome.Place(0, i);
      List<String> written = new ArrayList<>();
      for (int index : Genotype.alleles(part.common(), part.homologs(), place)) {
        written.add(locus.alleles().get(index));
      }
      Pattern pattern = new Pattern(locus, written, false);
      if (!pattern.matches(Genotype.alleles(part.common(), here, place))) {
        return false;
      }
    }
    return true;
  }
}

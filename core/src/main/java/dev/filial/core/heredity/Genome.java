package dev.filial.core.heredity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The loci that are reckoned with, in their linkage groups, and what keeps their gametes from
 * segregating evenly.
 */
public final class Genome {

  private final List<LinkageGroup> groups;
  private final List<Distortion> distortions;
  private final Optional<SelfIncompatibility> incompatibility;
  private final Map<String, Place> places;
  private final Symbols symbols;

  /**
   * Where a locus stands.
   *
   * @param group the number of its group
   * @param place its place in that group
   */
  record Place(int group, int place) {}

  private Genome(
      List<LinkageGroup> groups,
      List<Distortion> distortions,
      Optional<SelfIncompatibility> incompatibility) {
    this.groups = List.copyOf(groups);
    this.distortions = List.copyOf(distortions);
    this.incompatibility = incompatibility;
    this.places = new HashMap<>();
    for (int g = 0; g < groups.size(); g++) {
      List<Locus> loci = groups.get(g).loci();
      for (int i = 0; i < loci.size(); i++) {
        if (places.put(loci.get(i).name(), new Place(g, i)) != null) {
          throw new IllegalArgumentException(
              "the gene " + loci.get(i).name() + " stands in two places; leave one out");
        }
      }
    }
    this.symbols = new Symbols(loci());
  }

  /**
   * The genome of these groups.
   *
   * @throws IllegalArgumentException if there is none, a locus stands in it twice, or two loci have
   *     an allele of the same symbol
   */
  public static Genome of(List<LinkageGroup> groups) {
    if (groups.isEmpty()) {
      throw new IllegalArgumentException("there is no gene to reckon with; name one");
    }
    return new Genome(groups, List.of(), Optional.empty());
  }

  /** As {@link #of(List)}. */
  public static Genome of(LinkageGroup... groups) {
    return of(List.of(groups));
  }

  /** Of loci none of which are linked. */
  public static Genome unlinked(Locus... loci) {
    List<LinkageGroup> groups = new ArrayList<>();
    for (Locus locus : loci) {
      groups.add(LinkageGroup.of(locus));
    }
    return of(groups);
  }

  /**
   * The same with gametes that are favoured or held back.
   *
   * @throws IllegalArgumentException if its locus is not of this genome
   */
  public Genome withDistortion(Distortion distortion) {
    requirePlace(distortion.locus());
    List<Distortion> all = new ArrayList<>(distortions);
    all.add(distortion);
    return new Genome(groups, all, incompatibility);
  }

  /**
   * The same with pollen that is refused.
   *
   * @throws IllegalArgumentException if its locus is not of this genome
   */
  public Genome withSelfIncompatibility(SelfIncompatibility refusing) {
    requirePlace(refusing.locus());
    return new Genome(groups, distortions, Optional.of(refusing));
  }

  /** The groups in order. */
  public List<LinkageGroup> groups() {
    return groups;
  }

  /** What favours some gametes. */
  public List<Distortion> distortions() {
    return distortions;
  }

  /** What refuses some pollen, if anything. */
  public Optional<SelfIncompatibility> selfIncompatibility() {
    return incompatibility;
  }

  /** All loci, group by group. */
  public List<Locus> loci() {
    List<Locus> loci = new ArrayList<>();
    groups.forEach(group -> loci.addAll(group.loci()));
    return List.copyOf(loci);
  }

  /**
   * The locus of that name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Locus locus(String name) {
    Place place = places.get(name);
    if (place == null) {
      throw new IllegalArgumentException(
          "there is no gene "
              + name
              + "; there are "
              + String.join(", ", loci().stream().map(Locus::name).toList()));
    }
    return groups.get(place.group()).loci().get(place.place());
  }

  /**
   * Reads a genotype of all loci.
   *
   * <p>{@code Aa Bb} or {@code A/a B/b} of loci that are not linked; {@code AB/ab} (coupling) or
   * {@code Ab/aB} (repulsion) of linked ones, a dot between alleles of several characters: {@code
   * S1.b/S2.B}. A tetraploid has four alleles, {@code AAaa}; {@code AA|aa} if its two subgenomes do
   * not pair with each other. The cytoplasm is one allele alone.
   *
   * @throws IllegalArgumentException if the text is no genotype of these loci; the message names
   *     what is missing or wrong
   */
  public Genotype genotype(String text) {
    return GenotypeReader.read(this, text);
  }

  /** Whether all recombination was stated and none worked out of map distances. */
  public boolean isExact() {
    return groups.stream().allMatch(LinkageGroup::exact);
  }

  boolean hasSLocusIn(int group) {
    return incompatibility.isPresent() && place(incompatibility.get().locus()).group() == group;
  }

  Symbols symbols() {
    return symbols;
  }

  Place place(Locus locus) {
    return requirePlace(locus);
  }

  private Place requirePlace(Locus locus) {
    Place place = places.get(locus.name());
    if (place == null || !groups.get(place.group()).loci().get(place.place()).equals(locus)) {
      throw new IllegalArgumentException(
          "the gene " + locus.name() + " is not among those reckoned with; add it to the genome");
    }
    return place;
  }
}

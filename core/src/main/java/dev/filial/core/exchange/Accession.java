package dev.filial.core.exchange;

import dev.filial.core.name.TaxonName;
import dev.filial.core.register.PartialDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A plant or a seed lot as it is handed on to others. All codes carry the grower's mark.
 *
 * @param code its code
 * @param otherCodes codes of records that were found to be the same plant
 * @param kind what it is
 * @param named what it is called
 * @param arrival where and when it came from
 * @param behind who is behind it
 * @param state what became of it
 * @param status what kind of material it is
 * @param doubts what is doubtful about it, in plain words and without names of people; empty when
 *     nothing is
 */
public record Accession(
    String code,
    List<String> otherCodes,
    Kind kind,
    Named named,
    Arrival arrival,
    Behind behind,
    State state,
    Status status,
    List<String> doubts) {

  /** Copies the lists. */
  public Accession {
    otherCodes = List.copyOf(otherCodes);
    doubts = List.copyOf(doubts);
  }

  /** What is handed on. */
  public enum Kind {
    /** A plant that was acquired or found. */
    PLANT("plant"),
    /** An offset, cutting or graft of another plant. */
    OFFSET("offset"),
    /** A numbered seedling. */
    SEEDLING("seedling"),
    /** A seed lot. */
    SEED_LOT("seed lot");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** What a grower calls it. */
    public String word() {
      return word;
    }
  }

  /** What kind of material it is, in breeders' terms. */
  public enum Status {
    /** Collected in the wild, or raised from seed that was, by its field number. */
    WILD,
    /** Bred here within one taxon. */
    BRED,
    /** A first cross, or a plant that came as a hybrid. */
    HYBRID,
    /** A later generation of a cross, in which plants differ. */
    SEGREGATING,
    /** A seedling that was marked to be kept, or an offset of a seedling. */
    SELECTED,
    /** A named cultivar. */
    CULTIVAR,
    /** Raised here, of parents that are not both known. */
    UNCERTAIN,
    /** Nobody knows. */
    UNKNOWN
  }

  /**
   * What it is called.
   *
   * @param taxon its taxon under the accepted name, without cf. or aff.; null for a hybrid of
   *     several taxa and where none is known
   * @param doubt cf. or aff. with the epithet it stands before; null where nothing is doubted
   * @param cultivar its cultivar epithet without quotes, or null
   * @param formula the taxon, or the hybrid formula with the seed parent's taxa first; empty where
   *     no taxon is known
   * @param own its own names
   */
  public record Named(
      @Nullable TaxonName taxon,
      @Nullable String doubt,
      @Nullable String cultivar,
      String formula,
      List<String> own) {
    /** Copies the list. */
    public Named {
      own = List.copyOf(own);
    }
  }

  /**
   * Where and when it came from.
   *
   * @param day when it came, was harvested, numbered or taken off; null when not known
   * @param donor who gave it; null when not known or not to be told
   * @param donorCode the donor's own code, or null
   * @param fieldNumber the collector's field number, or null
   * @param locality where it was collected; null when not known or not to be told
   */
  public record Arrival(
      @Nullable PartialDate day,
      @Nullable String donor,
      @Nullable String donorCode,
      @Nullable String fieldNumber,
      @Nullable String locality) {}

  /**
   * Who is behind it.
   *
   * @param raised whether it comes of a cross that was recorded here
   * @param generation its generation in short, as {@code F2}; empty where there is none
   * @param seedParents the plants that may have borne the seed, mostly one
   * @param pollenParents the plants that may have given the pollen
   * @param sameAs the plants whose genotype it repeats or may repeat: of an offset, of a plant
   *     found without its tag
   * @param shares the expected share of each taxon, the largest first
   * @param cytoplasm whose cytoplasm it has; empty when not known
   * @param pedigree its pedigree in notation; empty where there is none to be written
   */
  public record Behind(
      boolean raised,
      String generation,
      List<String> seedParents,
      List<String> pollenParents,
      List<String> sameAs,
      List<Share> shares,
      String cytoplasm,
      String pedigree) {

    /** Nothing is known, or nothing can be computed. */
    public static final Behind UNKNOWN =
        new Behind(false, "", List.of(), List.of(), List.of(), List.of(), "", "");

    /** Copies the lists. */
    public Behind {
      seedParents = List.copyOf(seedParents);
      pollenParents = List.copyOf(pollenParents);
      sameAs = List.copyOf(sameAs);
      shares = List.copyOf(shares);
    }
  }

  /**
   * The share of one taxon.
   *
   * @param taxon its name; {@code unknown} for what nobody knows
   * @param share its expected share of the chromosome sets, above 0 and at most 1
   */
  public record Share(String taxon, double share) {}

  /**
   * What became of it.
   *
   * @param here whether it is still here
   * @param words in a grower's words, as {@code alive}
   * @param until the day it left or died, or null
   * @param count how many seeds there are, of a lot; empty otherwise
   */
  public record State(boolean here, String words, @Nullable PartialDate until, String count) {}
}

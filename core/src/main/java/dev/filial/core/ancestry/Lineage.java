package dev.filial.core.ancestry;

import dev.filial.core.ancestry.GenerationClass.Backcross;
import dev.filial.core.ancestry.GenerationClass.Complex;
import dev.filial.core.ancestry.GenerationClass.Filial;
import dev.filial.core.ancestry.GenerationClass.Pure;
import dev.filial.core.ancestry.GenerationClass.Unclassified;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.Standing;
import dev.filial.core.pedigree.StatedGeneration;
import java.util.Collections;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A plant's generation class with what its offspring's class will need to know.
 *
 * @param generation the class
 * @param genet the genotype, by the index of the plant that is not a ramet or copy of another
 * @param seedGenet the seed parent's genotype, or unknown
 * @param pollenGenet the pollen parent's genotype, or unknown
 * @param firstPlant for an F1, the genotype of its parent of the first source, or unknown; for a
 *     backcross, the recurrent plant last used
 * @param secondPlant for an F1, the genotype of its parent of the second source, or unknown
 * @param sources every source in it
 * @param least the fewest generations back to a pure plant
 * @param most the most
 */
record Lineage(
    GenerationClass generation,
    int genet,
    int seedGenet,
    int pollenGenet,
    int firstPlant,
    int secondPlant,
    SortedSet<String> sources,
    int least,
    int most) {

  private static final int UNKNOWN = Pedigree.UNKNOWN;

  /** The class with all that it says; on the way down a complex one is kept without its sources. */
  GenerationClass settled() {
    return generation instanceof Complex complex
        ? new Complex(complex.words(), sources, least, most)
        : generation;
  }

  /** A plant to which no class can be given. */
  static Lineage unclassified(String reason, int plant) {
    return new Lineage(
        new Unclassified(reason),
        plant,
        UNKNOWN,
        UNKNOWN,
        UNKNOWN,
        UNKNOWN,
        Collections.emptySortedSet(),
        0,
        0);
  }

  /** An acquired plant. */
  static Lineage founder(Founder founder, int plant, String code, Level level) {
    return switch (level) {
      case TAXON -> ofTaxon(founder, plant, code);
      case CULTIVAR -> ofSource(cultivar(founder), plant, code + " has no cultivar name");
      case FIELD_NUMBER ->
          founder.standing() == Standing.PURE
              ? ofSource(fieldNumber(founder), plant, code + " has no field number")
              : unclassified(code + " is not stated to be pure", plant);
      case PLANT -> ofSource(code, plant, "");
    };
  }

  /** With its genus: two genera may each have a cultivar of that name. */
  private static @Nullable String cultivar(Founder founder) {
    String quoted = founder.cultivar() == null ? null : "'" + founder.cultivar() + "'";
    if (quoted == null || founder.makeup().shares().size() != 1) {
      return quoted;
    }
    String taxon = founder.makeup().shares().firstKey();
    int space = taxon.indexOf(' ');
    return (space < 0 ? taxon : taxon.substring(0, space)) + " " + quoted;
  }

  /** With its taxon: under one number several may have been collected. */
  private static @Nullable String fieldNumber(Founder founder) {
    return founder.fieldNumber() == null
        ? null
        : founder.makeup().shares().firstKey() + " " + founder.fieldNumber();
  }

  private static Lineage ofTaxon(Founder founder, int plant, String code) {
    if (founder.standing() == Standing.PURE) {
      return ofSource(founder.makeup().shares().firstKey(), plant, "");
    }
    if (founder.standing() == Standing.UNKNOWN) {
      return unclassified("nobody knows what " + code + " is", plant);
    }
    if (founder.stated().isEmpty()) {
      return unclassified(code + " is a hybrid whose generation was not stated", plant);
    }
    StatedGeneration stated = founder.stated().get();
    SortedSet<String> sources = new TreeSet<>(Set.of(stated.first(), stated.second()));
    if (stated instanceof StatedGeneration.Filial f) {
      return acquired(filial(f), plant, sources, f.generation(), f.generation());
    }
    StatedGeneration.Backcross bc = (StatedGeneration.Backcross) stated;
    int most = bc.generation() + bc.filial();
    return acquired(backcross(bc), plant, sources, bc.filial(), most);
  }

  private static GenerationClass filial(StatedGeneration.Filial stated) {
    boolean first = stated.generation() == 1;
    return new Filial(
        stated.generation(),
        stated.first(),
        stated.second(),
        first ? null : Breeding.NOT_KNOWN,
        first ? Set.of() : Set.of(Breeding.NOT_KNOWN));
  }

  private static GenerationClass backcross(StatedGeneration.Backcross stated) {
    boolean plain = stated.filial() == 1;
    return new Backcross(
        stated.generation(),
        stated.first(),
        stated.second(),
        Recurrent.NOT_KNOWN,
        stated.filial(),
        plain ? null : Breeding.NOT_KNOWN,
        plain ? Set.of() : Set.of(Breeding.NOT_KNOWN));
  }

  private static Lineage ofSource(@Nullable String source, int plant, String otherwise) {
    if (source == null) {
      return unclassified(otherwise, plant);
    }
    return acquired(new Pure(source, false), plant, new TreeSet<>(Set.of(source)), 0, 0);
  }

  private static Lineage acquired(
      GenerationClass generation, int plant, SortedSet<String> sources, int least, int most) {
    return new Lineage(generation, plant, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, sources, least, most);
  }
}

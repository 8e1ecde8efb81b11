package dev.filial.core.pedigree;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Plants and their parents as immutable parallel arrays, parents before offspring.
 *
 * <p>A plant is known by its code or by its index, 0 to {@code size() - 1}. Indices follow the
 * levels: founders are level 0, any other plant stands one level above the highest of its parents,
 * so plants of one level never are each other's parents and a bulk computation may take a level at
 * a time in any order, in parallel. Only plants that are no plain crosses of equal gametes take
 * more than a few numbers.
 *
 * <p>Building takes time and memory linear in plants and parents. Safe to share between threads.
 */
public final class Pedigree {

  /** The index that stands for a parent nobody knows. */
  public static final int UNKNOWN = -1;

  private final String[] codes;
  private final CodeIndex index;
  private final byte[] kind;
  private final int[] first;
  private final int[] second;
  private final short[] ploidy;
  private final int[] levelStart;
  private final Founder[] founders;
  private final CaseTable table;
  private final boolean unknown;
  private final NavigableSet<String> taxa;

  private Pedigree(Assembly assembly) {
    codes = assembly.codes;
    index = assembly.index;
    kind = assembly.kind;
    first = assembly.first;
    second = assembly.second;
    ploidy = assembly.ploidy;
    levelStart = assembly.levelStart;
    founders = assembly.founders.toArray(new Founder[0]);
    table = assembly.table;
    unknown = assembly.unknown;
    taxa = Collections.unmodifiableNavigableSet(new TreeSet<>(assembly.taxa));
  }

  /**
   * The pedigree of the records, whose order does not matter.
   *
   * @throws PedigreeException if two plants have one code, a parent is not among the records, a
   *     plant is among its own ancestors (the shortest such loop is named), a parent of odd ploidy
   *     gave a gamete whose sets are not stated, or a gamete brought more sets than its parent has
   */
  public static Pedigree of(Collection<PlantRecord> records) {
    PlantRecord[] array = records.toArray(new PlantRecord[0]);
    return new Pedigree(new Assembly(Draft.of(array), Assembly.fromRecords(array)));
  }

  /**
   * The pedigree of diploid plants of plain crosses, straight from columns, in any order.
   *
   * @param codes the plants' codes
   * @param seed the code of each plant's seed parent; null if unknown, or if the plant is a founder
   * @param pollen the code of each plant's pollen parent; null if unknown, or if it is a founder
   * @param taxa the taxon of each founder, a plant without either parent; null if unknown; not
   *     looked at for other plants
   * @throws PedigreeException as {@link #of} does
   * @throws IllegalArgumentException if the columns differ in length
   */
  public static Pedigree ofParents(
      String[] codes, @Nullable String[] seed, @Nullable String[] pollen, @Nullable String[] taxa) {
    if (seed.length != codes.length
        || pollen.length != codes.length
        || taxa.length != codes.length) {
      throw new IllegalArgumentException(
          "the columns differ in length: codes %d, seed %d, pollen %d, taxa %d"
              .formatted(codes.length, seed.length, pollen.length, taxa.length));
    }
    Draft draft = Draft.ofParents(codes.clone(), seed, pollen);
    return new Pedigree(new Assembly(draft, Assembly.fromTaxa(taxa)));
  }

  /** How many plants there are. */
  public int size() {
    return codes.length;
  }

  /** Whether a plant of this code is here. */
  public boolean contains(String code) {
    return index.find(code) >= 0;
  }

  /**
   * The index of the plant of this code.
   *
   * @throws PedigreeException if there is none
   */
  public int indexOf(String code) {
    int found = index.find(code);
    if (found < 0) {
      throw new PedigreeException(
          "no plant of the code "
              + code
              + " is in this pedigree of "
              + size()
              + "; check the code");
    }
    return found;
  }

  /** The code of a plant. */
  public String code(int plant) {
    return codes[plant];
  }

  /** The chromosome sets of a plant, or 0 if its cases differ in that. */
  public int ploidy(int plant) {
    return Math.max(0, ploidy[plant]);
  }

  /** The level of a plant: 0 for founders, else one above the highest of its parents. */
  public int level(int plant) {
    int at = Arrays.binarySearch(levelStart, plant);
    if (at < 0) {
      return -at - 2;
    }
    // Levels are never empty, so a start found is the start of that very level.
    return at;
  }

  /** How many levels there are. */
  public int levels() {
    return levelStart.length - 1;
  }

  /** The index of the first plant of a level; of level {@link #levels()}, the size. */
  public int levelStart(int level) {
    return levelStart[level];
  }

  /** Whether the plant is a founder: it has no recorded parent and is no ramet. */
  public boolean isFounder(int plant) {
    return kind[plant] == Kind.FOUNDER;
  }

  /** Whether the plant is an offset, cutting or scion of another. */
  public boolean isRamet(int plant) {
    return kind[plant] == Kind.RAMET;
  }

  /** Whether the plant is a ramet whose chromosomes were doubled. */
  public boolean isDoubled(int plant) {
    return kind[plant] == Kind.RAMET && second[plant] == 1;
  }

  /**
   * Whether the plant comes of one certain cross to which both parents, known or not, gave as many
   * sets. Its pedigree is then {@link #seedParent} and {@link #pollenParent} and nothing else.
   */
  public boolean isPlainCross(int plant) {
    return kind[plant] >= Kind.SIMPLE;
  }

  /** What is stated of a founder; null for any other plant. */
  public @Nullable Founder founder(int plant) {
    return isFounder(plant) ? founders[first[plant]] : null;
  }

  /** The plant a ramet was taken from; {@link #UNKNOWN} for a plant that is no ramet. */
  public int rametOf(int plant) {
    return isRamet(plant) ? first[plant] : UNKNOWN;
  }

  /**
   * The seed parent in every case of the plant; {@link #UNKNOWN} if nobody knows, if the cases
   * differ, or if it was not raised from a cross. A copy has no parents of its own here.
   */
  public int seedParent(int plant) {
    return isPlainCross(plant) ? first[plant] : parentInAllCases(plant, true);
  }

  /** The pollen parent in every case of the plant, as {@link #seedParent}. */
  public int pollenParent(int plant) {
    return isPlainCross(plant) ? second[plant] : parentInAllCases(plant, false);
  }

  private int parentInAllCases(int plant, boolean seed) {
    if (kind[plant] != Kind.CASES) {
      return UNKNOWN;
    }
    int found = UNKNOWN;
    int row = first[plant];
    for (int k = 0; k < table.count(row); k++) {
      if (!(table.descent(row, k) instanceof Descent.Sexual cross)) {
        return UNKNOWN;
      }
      int parent = seed ? cross.seed() : cross.pollen();
      if (k > 0 && parent != found) {
        return UNKNOWN;
      }
      found = parent;
    }
    return found;
  }

  /** In how many ways a seedling may have come about; 0 for founders and ramets. */
  public int caseCount(int plant) {
    return switch (kind[plant]) {
      case Kind.FOUNDER, Kind.RAMET -> 0;
      case Kind.CASES -> table.count(first[plant]);
      default -> 1;
    };
  }

  /** The ways a seedling may have come about, as recorded; empty for founders and ramets. */
  public List<Case> cases(int plant) {
    return switch (kind[plant]) {
      case Kind.FOUNDER, Kind.RAMET -> List.of();
      case Kind.CASES -> table.cases(first[plant]);
      default -> {
        Gamete seed = gamete(first[plant]);
        Gamete pollen = gamete(second[plant]);
        yield List.of(new Case.Sexual(Fraction.ONE, Kind.route(kind[plant]), seed, pollen));
      }
    };
  }

  /**
   * The ways a seedling may have come about, with parents by index and the sets each gamete
   * brought; in the order of {@link #cases}; empty for founders and ramets.
   */
  public List<Descent> descents(int plant) {
    return switch (kind[plant]) {
      case Kind.FOUNDER, Kind.RAMET -> List.of();
      case Kind.CASES -> table.descents(first[plant]);
      default -> {
        int sets = ploidy[plant] / 2;
        yield List.of(
            new Descent.Sexual(
                Fraction.ONE, Kind.route(kind[plant]), first[plant], sets, second[plant], sets));
      }
    };
  }

  private Gamete gamete(int parent) {
    return parent < 0 ? Gamete.unknown() : Gamete.of(codes[parent]);
  }

  /** The record of a plant: building from the records of all plants gives this pedigree again. */
  public PlantRecord plantRecord(int plant) {
    Origin origin =
        switch (kind[plant]) {
          case Kind.FOUNDER -> founders[first[plant]];
          case Kind.RAMET -> new Ramet(codes[first[plant]], second[plant] == 1);
          default -> new Seedling(cases(plant));
        };
    return new PlantRecord(codes[plant], origin);
  }

  /**
   * The plant whose genotype this one repeats: through ramets, doubled ones too (each allele
   * twice), and seedlings that certainly are a copy, such as apomicts. The plant itself if it
   * repeats none.
   */
  public int genet(int plant) {
    int genet = plant;
    while (true) {
      if (kind[genet] == Kind.RAMET) {
        genet = first[genet];
      } else if (kind[genet] == Kind.CASES
          && table.count(first[genet]) == 1
          && table.descent(first[genet], 0) instanceof Descent.Copy copy) {
        genet = copy.of();
      } else {
        return genet;
      }
    }
  }

  /**
   * The parents a plant has in any of its cases, or the plant it is a copy of; each once, sorted.
   */
  public int[] parents(int plant) {
    return switch (kind[plant]) {
      case Kind.FOUNDER -> new int[0];
      case Kind.RAMET -> new int[] {first[plant]};
      case Kind.CASES -> {
        BitSet found = new BitSet();
        int row = first[plant];
        for (int k = 0; k < table.count(row); k++) {
          if (table.descent(row, k) instanceof Descent.Sexual cross) {
            setKnown(found, cross.seed());
            setKnown(found, cross.pollen());
          } else if (table.descent(row, k) instanceof Descent.Copy copy) {
            found.set(copy.of());
          }
        }
        yield found.stream().toArray();
      }
      default ->
          Arrays.stream(new int[] {first[plant], second[plant]})
              .filter(parent -> parent >= 0)
              .distinct()
              .sorted()
              .toArray();
    };
  }

  private static void setKnown(BitSet set, int plant) {
    if (plant >= 0) {
      set.set(plant);
    }
  }

  /** The plant and all plants behind it in any of its cases, by index. */
  public BitSet ancestors(int plant) {
    BitSet found = new BitSet(plant + 1);
    found.set(plant);
    // Parents have lower indices than their offspring: one pass downwards meets each plant once.
    for (int i = plant; i >= 0; i = found.previousSetBit(i - 1)) {
      if (isPlainCross(i)) {
        setKnown(found, first[i]);
        setKnown(found, second[i]);
      } else {
        for (int parent : parents(i)) {
          found.set(parent);
        }
      }
    }
    return found;
  }

  /**
   * The pedigree of one plant: it and all plants behind it.
   *
   * @throws PedigreeException if there is no plant of this code
   */
  public Pedigree ancestorsOf(String code) {
    List<PlantRecord> records = new ArrayList<>();
    ancestors(indexOf(code)).stream().forEach(i -> records.add(plantRecord(i)));
    return of(records);
  }

  /** Whether any plant has an unknown parent, or a founder an unknown share. */
  public boolean hasUnknown() {
    return unknown;
  }

  /** The taxa that are stated for any founder, sorted by name. */
  public NavigableSet<String> taxa() {
    return taxa;
  }
}

package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is true now of one coded thing.
 *
 * @param code its code
 * @param kind what sort of thing it is
 * @param entry the number of the entry that introduced it
 * @param struck whether that entry was struck; the code stays taken for good
 * @param since the day of that entry's statement, or null
 * @param until the day it left or died, or null
 * @param fate what became of it
 * @param count how many seeds or seedlings there are now; null for a single plant or a cross, and
 *     for a sowing not yet counted
 * @param determination what it was said to be, of acquired plants and seed
 * @param fieldNumber the collector's field number, or null
 * @param names its own names
 * @param place where it stands, or null
 * @param descent how it came about; empty for what was acquired, and for seedlings, groups, lots
 *     and sowings, which come of the whole code they stand under
 * @param sameAs the record it was joined with, or null
 * @param neverHeld whether the plant never stood here
 * @param unprotected whether it is a hand cross on unprotected flowers with no share of selfs and
 *     strays stated
 * @param guess whose guess the introducing entry is, or null when it is none
 */
public record Item(
    Code code,
    Kind kind,
    long entry,
    boolean struck,
    @Nullable PartialDate since,
    @Nullable PartialDate until,
    Fate fate,
    @Nullable Count count,
    Determination determination,
    @Nullable String fieldNumber,
    List<String> names,
    @Nullable String place,
    List<Descent> descent,
    @Nullable Code sameAs,
    boolean neverHeld,
    boolean unprotected,
    @Nullable String guess) {

  /** In order of entry, and within one entry of code. */
  public static final Comparator<Item> IN_ORDER =
      (one, other) ->
          one.entry == other.entry
              ? one.code.compareTo(other.code)
              : Long.compare(one.entry, other.entry);

  /** What sort of thing a code stands for. */
  public enum Kind {
    /** A plant with a code of its own: acquired, propagated, found. */
    PLANT("plant"),
    /** A cross. */
    CROSS("cross"),
    /** An accession of seed. */
    SEED("packet of seed"),
    /** Seed of several lots put together. */
    MIXTURE("mixed packet"),
    /** A numbered seedling. */
    SEEDLING("seedling"),
    /** A pot or tray of unnumbered seedlings. */
    GROUP("pot"),
    /** A seed lot. */
    LOT("seed lot"),
    /** A sowing. */
    SOWING("sowing");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** What a grower calls it. */
    public String word() {
      return word;
    }

    /** Whether this is one genetic individual. */
    public boolean isPlant() {
      return this == PLANT || this == SEEDLING;
    }

    /** Whether seedlings can be raised under this code. */
    public boolean isFamily() {
      return this == CROSS || this == SEED || this == MIXTURE;
    }
  }

  /** Copies the lists. */
  public Item {
    names = List.copyOf(names);
    descent = List.copyOf(descent);
  }

  /** A thing of which nothing else was recorded. */
  public static Item plain(
      Code code, Kind kind, long entry, @Nullable PartialDate since, List<Descent> descent) {
    return new Item(
        code,
        kind,
        entry,
        false,
        since,
        null,
        Fate.ALIVE,
        null,
        Determination.UNKNOWN,
        null,
        List.of(),
        null,
        descent,
        null,
        false,
        false,
        null);
  }

  /** The same with one more way in which it may have come about. */
  public Item withFurtherDescent(Descent further) {
    List<Descent> all = new ArrayList<>(descent);
    all.add(further);
    return new Item(
        code,
        kind,
        entry,
        struck,
        since,
        until,
        fate,
        count,
        determination,
        fieldNumber,
        names,
        place,
        all,
        sameAs,
        neverHeld,
        unprotected,
        guess);
  }

  /** The same with the introducing entry struck. */
  Item asStruck() {
    return new Item(
        code,
        kind,
        entry,
        true,
        since,
        until,
        fate,
        count,
        Determination.UNKNOWN,
        null,
        List.of(),
        null,
        List.of(),
        null,
        neverHeld,
        false,
        null);
  }
}

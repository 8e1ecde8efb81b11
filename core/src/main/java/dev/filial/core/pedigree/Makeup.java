package dev.filial.core.pedigree;

import dev.filial.core.number.Fraction;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The stated make-up of an acquired plant: which share of its genome is of which taxon. What the
 * shares leave of the whole is unknown.
 *
 * @param shares taxon name to its share, above 0 and at most 1; sorted by name, unmodifiable
 */
public record Makeup(SortedMap<String, Fraction> shares) {

  private static final Makeup UNKNOWN = new Makeup(Collections.emptySortedMap());

  /**
   * Copies and checks the shares; a share of zero is left out.
   *
   * @throws PedigreeException if a share is negative or all together exceed 1
   */
  public Makeup {
    Fraction sum = Fraction.ZERO;
    TreeMap<String, Fraction> copy = new TreeMap<>();
    for (Map.Entry<String, Fraction> entry : shares.entrySet()) {
      Fraction share = entry.getValue();
      if (share.signum() < 0) {
        throw new PedigreeException(
            "a share cannot be negative: " + entry.getKey() + " " + share + "; state 0 or more");
      }
      if (entry.getKey().isBlank()) {
        throw new PedigreeException(
            "a share of " + share + " has no taxon; name it or leave it out");
      }
      if (share.signum() > 0) {
        copy.put(entry.getKey(), share);
        sum = sum.plus(share);
      }
    }
    if (sum.compareTo(Fraction.ONE) > 0) {
      throw new PedigreeException(
          "the shares " + copy + " sum to " + sum + ", more than 1; lower one of them");
    }
    shares = Collections.unmodifiableSortedMap(copy);
  }

  /** All of one taxon. */
  public static Makeup pure(String taxon) {
    return new Makeup(new TreeMap<>(Map.of(taxon, Fraction.ONE)));
  }

  /** Nothing is known. */
  public static Makeup unknown() {
    return UNKNOWN;
  }

  /**
   * The given shares; the remainder is unknown.
   *
   * @throws PedigreeException if a share is negative or all together exceed 1
   */
  public static Makeup of(Map<String, Fraction> shares) {
    return new Makeup(new TreeMap<>(shares));
  }

  /** The share that is not stated: 1 less the sum of the shares. */
  public Fraction unknownShare() {
    Fraction rest = Fraction.ONE;
    for (Fraction share : shares.values()) {
      rest = rest.minus(share);
    }
    return rest;
  }
}

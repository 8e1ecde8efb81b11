package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Makeup;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Expected shares of a plant's chromosome sets by taxon. They count chromosome sets, not DNA.
 *
 * @param taxa taxon name to its share, above 0; sorted by name, unmodifiable
 * @param unknown the share of which nobody knows the taxon; with the taxa it sums to exactly 1
 */
public record Shares(SortedMap<String, Fraction> taxa, Fraction unknown) {

  /** All unknown. */
  public static final Shares UNKNOWN = new Shares(Collections.emptySortedMap(), Fraction.ONE);

  /**
   * Copies and checks the shares.
   *
   * @throws IllegalArgumentException if a share is negative or they do not sum to exactly 1
   */
  public Shares {
    TreeMap<String, Fraction> copy = new TreeMap<>();
    Fraction sum = unknown;
    boolean negative = unknown.signum() < 0;
    for (Map.Entry<String, Fraction> entry : taxa.entrySet()) {
      negative |= entry.getValue().signum() < 0;
      if (!entry.getValue().isZero()) {
        copy.put(entry.getKey(), entry.getValue());
        sum = sum.plus(entry.getValue());
      }
    }
    if (negative || !sum.isOne()) {
      throw new IllegalArgumentException(
          "shares must be 0 or more and sum to 1: " + taxa + ", unknown " + unknown);
    }
    taxa = Collections.unmodifiableSortedMap(copy);
  }

  /** The shares a founder's stated make-up says. */
  static Shares of(Makeup makeup) {
    return new Shares(makeup.shares(), makeup.unknownShare());
  }

  /** The share of a taxon, 0 if it is not in the plant. */
  public Fraction of(String taxon) {
    return taxa.getOrDefault(taxon, Fraction.ZERO);
  }

  /** Percentages a person reads, as {@code E. agavoides 75 %, E. laui 25 %}. */
  public String text() {
    StringBuilder text = new StringBuilder();
    taxa.entrySet().stream()
        .sorted(Map.Entry.<String, Fraction>comparingByValue().reversed())
        .forEach(e -> append(text, e.getKey(), e.getValue()));
    if (!unknown.isZero()) {
      append(text, "unknown", unknown);
    }
    return text.toString();
  }

  private static void append(StringBuilder text, String name, Fraction share) {
    if (!text.isEmpty()) {
      text.append(", ");
    }
    text.append(name).append(' ').append(share.toPercent(2));
  }
}

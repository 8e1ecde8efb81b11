package dev.filial.core.answer;

import org.jspecify.annotations.Nullable;

/**
 * How long something takes, or may be left alone, and where that is known from.
 *
 * @param days how long, in days
 * @param whence where it is known from
 * @param taxon the taxon it is known of, or null where it is of all
 * @param seen from how many of the register's own cases it was worked out; 0 where it was not
 */
public record IntervalDays(int days, Whence whence, @Nullable String taxon, int seen) {

  /** Where a length is known from. */
  public enum Whence {
    /** Somebody said so in the register. */
    STATED,
    /** The register's own dates show it. */
    LEARNED,
    /** What is usual where nobody said and too little is known. Common practice, no source. */
    COMMON_PRACTICE
  }

  /** As {@code 21 days (common practice)} or {@code 9 days (from 12 of Echeveria laui)}. */
  public String text() {
    String of = taxon == null ? "" : " of " + taxon;
    return DiaryTelling.days(days)
        + switch (whence) {
          case STATED -> taxon == null ? " (as stated)" : " (as stated" + of + ")";
          case LEARNED -> " (from " + seen + " here" + of + ")";
          case COMMON_PRACTICE -> " (common practice)";
        };
  }
}

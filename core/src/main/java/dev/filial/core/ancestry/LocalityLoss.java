package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.PedigreeGraph.Role;
import dev.filial.core.pedigree.Route;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The plant at which a line stopped being true to a field number, and what brought that about.
 *
 * @param plant the plant's code; its parents on the line are still true, or do not come of the
 *     number at all
 * @param verdict what it is since then: not certain, or not true
 * @param causes what came in or may have come in, at least one, the seed parent's side first
 */
public record LocalityLoss(String plant, LocalityVerdict verdict, List<Cause> causes) {

  /** Copies the list. */
  public LocalityLoss {
    causes = List.copyOf(causes);
  }

  /** Of what sort a cause is. */
  public enum Why {
    /** A founder of another field number. */
    OTHER_NUMBER,
    /** A founder of which no field number is known. */
    NO_NUMBER,
    /** A plant nobody knows. */
    UNKNOWN_PLANT,
    /** The caller said that the plant's origin is open to doubt. */
    OPEN_TO_DOUBT
  }

  /**
   * One thing that came in or may have come in.
   *
   * @param why of what sort it is
   * @param route how the plant came about where it came in; null for a plant that came of no cross
   * @param share how likely that way is, above 0 and at most 1
   * @param role what the parent is to the plant; null where the plant itself is in doubt
   * @param parent the parent by which it came in; null where nobody knows it
   * @param founder the founder behind that parent, or the parent itself; null where nobody knows
   */
  public record Cause(
      Why why,
      @Nullable Route route,
      Fraction share,
      @Nullable Role role,
      @Nullable String parent,
      @Nullable String founder) {}
}

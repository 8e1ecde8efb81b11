package dev.filial.core.answer;

import java.util.List;

/**
 * Which records cannot be true together, and which are hardly likely.
 *
 * @param traits the traits whose records were looked at
 * @param looked how many observations, tallies and statements were weighed
 * @param contradictions smallest sets of entries that cannot all be true; empty if none
 * @param unlikely entries that had a small chance, given all others; empty if there are
 *     contradictions
 * @param below the chance below which an entry is listed
 * @param notes what was taken for granted, a sentence each
 */
public record Mistakes(
    List<String> traits,
    int looked,
    List<Contradiction> contradictions,
    List<Unlikely> unlikely,
    double below,
    List<String> notes) {

  /**
   * Entries of which one at least is wrong.
   *
   * @param entries the entries, in order
   * @param smallest whether no smaller set of entries contradicts itself
   * @param mends what would put it right, the likeliest first
   */
  public record Contradiction(List<Said> entries, boolean smallest, List<Mend> mends) {}

  /**
   * A mistake that would explain it.
   *
   * @param entry the entry that would be wrong
   * @param words what would have happened
   * @param chance how likely it is against the other mends, all of them alike beforehand
   */
  public record Mend(long entry, String words, double chance) {}

  /**
   * An entry that is hardly likely.
   *
   * @param said the entry
   * @param chance how likely it, or what is as unlikely, was by everything else
   */
  public record Unlikely(Said said, double chance) {}

  /** Copies the lists. */
  public Mistakes {
    traits = List.copyOf(traits);
    contradictions = List.copyOf(contradictions);
    unlikely = List.copyOf(unlikely);
    notes = List.copyOf(notes);
  }
}

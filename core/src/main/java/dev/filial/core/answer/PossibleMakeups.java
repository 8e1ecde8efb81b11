package dev.filial.core.answer;

import java.util.List;

/**
 * Which make-up a plant most likely has, of those proposed.
 *
 * @param plant its code
 * @param traits the traits it was judged by
 * @param seen how many observations of the plant itself there are
 * @param makeups the proposals, the likeliest first
 * @param why the entries that moved the chance of the likeliest; empty if not asked
 * @param notes what was taken for granted, a sentence each
 */
public record PossibleMakeups(
    String plant,
    List<String> traits,
    int seen,
    List<Proposal> makeups,
    List<Influence> why,
    List<String> notes) {

  /**
   * One of them.
   *
   * @param makeup as {@code F1 of Echeveria alba and Echeveria laui}
   * @param before its chance before anything was seen: all alike
   * @param after its chance by what was seen
   */
  public record Proposal(String makeup, double before, double after) {}

  /** Copies the lists. */
  public PossibleMakeups {
    traits = List.copyOf(traits);
    makeups = List.copyOf(makeups);
    why = List.copyOf(why);
    notes = List.copyOf(notes);
  }
}

package dev.filial.core.answer;

import java.util.List;

/**
 * Who pollinated, or which of several plants one is.
 *
 * @param code the seedling, cross or plant asked about
 * @param wholeFruit whether one plant is taken to have pollinated all of its seeds
 * @param seen how many observations and tallies were weighed
 * @param candidates who it may have been, the likeliest first
 * @param why the entries that moved the chance of the likeliest; empty if not asked
 * @param notes what was taken for granted, a sentence each
 */
public record Pollinators(
    String code,
    boolean wholeFruit,
    int seen,
    List<Candidate> candidates,
    List<Influence> why,
    List<String> notes) {

  /**
   * One of them.
   *
   * @param who the plant, or {@code somebody else}
   * @param itself whether the plant asked about is this one, and no seedling of its pollen
   * @param route by what way, as {@code open pollination}
   * @param before its chance by what was recorded, before anything was seen
   * @param after its chance by everything that was seen
   * @param error the standard error of that where it was sampled, else 0
   */
  public record Candidate(
      String who, boolean itself, String route, double before, double after, double error) {}

  /** Copies the lists. */
  public Pollinators {
    candidates = List.copyOf(candidates);
    why = List.copyOf(why);
    notes = List.copyOf(notes);
  }
}

package dev.filial.core.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a planned cross will throw, its parents being what everything that was seen makes likely.
 *
 * @param seed the seed parent
 * @param pollen the pollen parent
 * @param ways the answer under each assumption; usually one
 * @param why the entries that moved the chance of the first trait's last state
 * @param notes what was taken for granted, a sentence each
 */
public record LikelyCross(
    String seed, String pollen, List<Way> ways, List<Influence> why, List<String> notes) {

  /**
   * Under one assumption.
   *
   * @param assuming what is assumed; null if nothing has to be
   * @param parents what both may carry together, the likeliest first
   * @param traits what seedlings will show
   * @param exact whether the odds are exact and not sampled
   */
  public record Way(
      @Nullable String assuming, List<Pair> parents, List<OfTrait> traits, boolean exact) {}

  /**
   * What both carry.
   *
   * @param chance how likely, 0 to 1
   */
  public record Pair(String seed, String pollen, double chance) {}

  /** A trait and how likely a seedling shows each of its states. */
  public record OfTrait(String trait, List<LikelyGenes.State> shows) {}
}

package dev.filial.core.answer;

import dev.filial.core.heredity.Checkerboard;
import dev.filial.core.heredity.Odds;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a cross will throw.
 *
 * @param seed the seed parent as it was asked for
 * @param pollen the pollen parent as it was asked for
 * @param traits the traits
 * @param scenarios the answer, once for each assumption that has to be made; usually one
 * @param method how it was reckoned, a sentence each
 * @param notes doubts it leans on, a sentence each
 */
public record CrossOdds(
    String seed,
    String pollen,
    List<String> traits,
    List<Scenario> scenarios,
    List<String> method,
    List<String> notes) {

  /**
   * What comes of the cross under one assumption.
   *
   * @param assuming what is assumed of how tetraploids form their gametes; null if nothing has to
   *     be
   * @param seedGenes what the seed parent carries; null if only its taxon is known
   * @param pollenGenes what the pollen parent carries; null if only its taxon is known, empty if
   *     there are several
   * @param classes what may come up, with its chance
   * @param ratio the same in whole numbers, as 9:3:3:1; null where it has none
   * @param lost the share of seedlings that die before they can be looked at
   * @param exact whether the chances are exact
   * @param hope the wanted seedling; null if none was asked for
   * @param checkerboard the gametes and what comes of them; null if not asked for
   */
  public record Scenario(
      @Nullable String assuming,
      @Nullable String seedGenes,
      @Nullable String pollenGenes,
      List<Odds.Share> classes,
      @Nullable String ratio,
      Fraction lost,
      boolean exact,
      @Nullable Hope hope,
      @Nullable Checkerboard checkerboard) {}

  /** The same with a further note, behind the others. */
  CrossOdds noting(String note) {
    List<String> more = new ArrayList<>(notes);
    more.add(note);
    return new CrossOdds(seed, pollen, traits, scenarios, method, List.copyOf(more));
  }
}

package dev.filial.core.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * One calendar year of a register, or what in it has no year.
 *
 * @param year the year; null for what nobody dated, and for all years together
 * @param figures the sums that have anything in them
 * @param losses what plants and seedlings died of, by cause in order of the alphabet, those of
 *     which nobody wrote it last
 * @param guesses how many of the entries in these sums are marked as somebody's guess
 */
public record Season(
    @Nullable Integer year, Map<SeasonFigure, SeasonSum> figures, List<Loss> losses, long guesses) {

  /**
   * What died of one cause.
   *
   * @param cause the cause as it was written; null where none was
   * @param plants how many plants and seedlings
   */
  public record Loss(@Nullable String cause, SeasonSum plants) {}

  /** Keeps the sums in their own order. */
  public Season {
    Map<SeasonFigure, SeasonSum> ordered = new EnumMap<>(SeasonFigure.class);
    figures.forEach(
        (figure, sum) -> {
          if (!sum.hasNothing()) {
            ordered.put(figure, sum);
          }
        });
    figures = Collections.unmodifiableMap(ordered);
    losses = List.copyOf(losses);
  }

  /** One sum; {@link SeasonSum#NONE} if there is nothing in it. */
  public SeasonSum of(SeasonFigure figure) {
    return figures.getOrDefault(figure, SeasonSum.NONE);
  }

  /** Crosses by hand of which nobody knows yet, or wrote, whether anything set. */
  public long crossesNotKnown() {
    return of(SeasonFigure.CROSSES).counted()
        - of(SeasonFigure.CROSSES_SET).counted()
        - of(SeasonFigure.CROSSES_FAILED).counted();
  }

  /** Sowings that are in no percentage, since seeds or seedlings were not counted exactly. */
  public long sowingsNotCounted() {
    return of(SeasonFigure.SOWINGS).counted() - of(SeasonFigure.SOWINGS_COUNTED).counted();
  }

  /** Whether all that is in it was counted. */
  public boolean isExact() {
    return figures.values().stream().allMatch(SeasonSum::isExact);
  }

  /** Both together, of no year. */
  Season plus(Season other) {
    Map<SeasonFigure, SeasonSum> sums = new EnumMap<>(SeasonFigure.class);
    figures.forEach(sums::put);
    other.figures.forEach((figure, sum) -> sums.merge(figure, sum, SeasonSum::plus));
    Map<String, SeasonSum> causes = new TreeMap<>();
    for (List<Loss> part : List.of(losses, other.losses)) {
      part.forEach(
          loss ->
              causes.merge(
                  loss.cause() == null ? "" : loss.cause(), loss.plants(), SeasonSum::plus));
    }
    return new Season(null, sums, losses(causes), guesses + other.guesses);
  }

  /** Losses by their cause, the empty one for none. */
  static List<Loss> losses(Map<String, SeasonSum> causes) {
    List<Loss> losses = new ArrayList<>();
    causes.forEach(
        (cause, plants) -> {
          if (!cause.isEmpty() && !plants.hasNothing()) {
            losses.add(new Loss(cause, plants));
          }
        });
    SeasonSum unsaid = causes.getOrDefault("", SeasonSum.NONE);
    if (!unsaid.hasNothing()) {
      losses.add(new Loss(null, unsaid));
    }
    return losses;
  }
}

package dev.filial.core.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A season in words. What was guessed and what has no number is said apart in every line. */
public final class SeasonTelling {

  private SeasonTelling() {}

  /**
   * One line.
   *
   * @param what what it is about
   * @param text what is to be said
   */
  public record Line(String what, String text) {}

  /** As {@code 180}, or {@code 180 counted, about 90 guessed, 2 without a number}. */
  public static String sum(SeasonSum sum) {
    if (sum.isExact()) {
      return Long.toString(sum.counted());
    }
    List<String> parts = new ArrayList<>();
    if (sum.counted() > 0) {
      parts.add(sum.counted() + " counted");
    }
    parts.addAll(more(sum));
    return String.join(", ", parts);
  }

  private static List<String> more(SeasonSum sum) {
    List<String> parts = new ArrayList<>();
    if (sum.guesses() > 0) {
      parts.add("about " + sum.guessed() + " guessed");
    }
    if (sum.withoutNumber() > 0) {
      parts.add(sum.withoutNumber() + " without a number");
    }
    return parts;
  }

  /** For a narrow column: what was counted, with a plus sign where there was more. */
  public static String brief(SeasonSum sum) {
    return sum.counted() + (sum.isExact() ? "" : "+");
  }

  /** How much came up, for a narrow column; empty where no sowing was counted. */
  public static String briefUp(Season season) {
    return season.of(SeasonFigure.SOWINGS_COUNTED).hasNothing()
        ? ""
        : season.of(SeasonFigure.CAME_UP).counted()
            + " of "
            + season.of(SeasonFigure.SOWN_COUNTED).counted()
            + (season.sowingsNotCounted() == 0 ? "" : "+");
  }

  /** The season in full, a line for everything of which there is something. */
  public static List<Line> lines(Season season) {
    List<Line> lines = new ArrayList<>();
    add(lines, season, SeasonFigure.PLANTS, "plants that came", "");
    add(lines, season, SeasonFigure.OFFSETS, "offsets taken", "");
    add(lines, season, SeasonFigure.PACKETS, "packets of seed", seeds(season));
    crosses(lines, season);
    add(lines, season, SeasonFigure.OPEN, "open pollinations", "");
    add(lines, season, SeasonFigure.FLOWERS, "flowers pollinated", "");
    add(lines, season, SeasonFigure.SET, "flowers that set", "");
    add(lines, season, SeasonFigure.FAILED, "flowers that failed", "");
    add(lines, season, SeasonFigure.DROPPED, "dropped unripe", "");
    add(lines, season, SeasonFigure.EATEN, "eaten", "");
    add(lines, season, SeasonFigure.HARVESTS, "harvests", "");
    add(lines, season, SeasonFigure.FRUIT, "fruit harvested", "");
    add(lines, season, SeasonFigure.SEED, "seed harvested", "");
    add(lines, season, SeasonFigure.SOWINGS, "sowings", "");
    add(lines, season, SeasonFigure.SOWN, "seed sown", "");
    cameUp(lines, season);
    add(lines, season, SeasonFigure.NUMBERED, "seedlings numbered", "");
    add(lines, season, SeasonFigure.FIRST_FLOWERS, "flowered first", "");
    add(lines, season, SeasonFigure.DIED, "deaths written down", causes(season));
    add(lines, season, SeasonFigure.DISCARDED, "thrown out", "");
    add(lines, season, SeasonFigure.GIVEN, "plants given away", "");
    add(lines, season, SeasonFigure.SEED_LOST, "seed lost", "");
    add(lines, season, SeasonFigure.SEED_GIVEN, "seed given away", "");
    add(lines, season, SeasonFigure.TREATMENTS, "treatments", "");
    if (season.guesses() > 0) {
      lines.add(
          new Line(
              "guesses",
              season.guesses()
                  + (season.guesses() == 1 ? " entry" : " entries")
                  + " among these marked as a guess"));
    }
    return List.copyOf(lines);
  }

  private static void add(
      List<Line> lines, Season season, SeasonFigure figure, String what, String more) {
    SeasonSum sum = season.of(figure);
    if (!sum.hasNothing()) {
      lines.add(new Line(what, sum(sum) + more));
    }
  }

  private static String seeds(Season season) {
    SeasonSum seeds = season.of(SeasonFigure.PACKET_SEED);
    return seeds.hasNothing() ? "" : "; seeds in them: " + sum(seeds);
  }

  private static void crosses(List<Line> lines, Season season) {
    add(
        lines,
        season,
        SeasonFigure.CROSSES,
        "crosses by hand",
        ": "
            + season.of(SeasonFigure.CROSSES_SET).counted()
            + " set, "
            + season.of(SeasonFigure.CROSSES_FAILED).counted()
            + " failed, "
            + season.crossesNotKnown()
            + " not known");
  }

  private static void cameUp(List<Line> lines, Season season) {
    long left = season.sowingsNotCounted();
    String not = left + (left == 1 ? " sowing" : " sowings") + " left out, not counted exactly";
    if (!season.of(SeasonFigure.SOWINGS_COUNTED).hasNothing()) {
      lines.add(
          new Line(
              "of that came up",
              season.of(SeasonFigure.CAME_UP).counted()
                  + " of "
                  + season.of(SeasonFigure.SOWN_COUNTED).counted()
                  + (left == 0 ? "" : "; " + not)));
    } else if (left > 0) {
      lines.add(new Line("of that came up", not));
    }
  }

  private static String causes(Season season) {
    return season.losses().stream().allMatch(loss -> loss.cause() == null)
        ? ""
        : season.losses().stream()
            .map(
                loss ->
                    (loss.cause() == null ? "of what, nobody wrote" : loss.cause())
                        + " "
                        + sum(loss.plants()))
            .collect(Collectors.joining("; ", " (", ")"));
  }

  /**
   * What is in no sum of a season, in one sentence; empty if all was counted. What is in no sum of
   * germination is told by the sowings that were not counted.
   */
  public static Optional<String> leftOut(Season season) {
    List<String> parts = new ArrayList<>();
    season
        .figures()
        .forEach(
            (figure, sum) -> {
              if (!sum.isExact()) {
                parts.add(name(figure) + " (" + String.join(", ", more(sum)) + ")");
              }
            });
    if (season.sowingsNotCounted() > 0) {
      long left = season.sowingsNotCounted();
      parts.add(
          "came up (" + left + (left == 1 ? " sowing" : " sowings") + " not counted exactly)");
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of("In no sum, since nobody counted: " + String.join("; ", parts) + ".");
  }

  private static String name(SeasonFigure figure) {
    return switch (figure) {
      case PACKET_SEED -> "seed that came";
      case FLOWERS -> "flowers pollinated";
      case SET -> "flowers that set";
      case FAILED -> "flowers that failed";
      case DROPPED -> "fruit dropped unripe";
      case EATEN -> "eaten";
      case FRUIT -> "fruit harvested";
      case SEED -> "seed harvested";
      case SOWN -> "seed sown";
      case DIED -> "deaths written down";
      case DISCARDED -> "thrown out";
      case GIVEN -> "plants given away";
      case SEED_LOST -> "seed lost";
      case SEED_GIVEN -> "seed given away";
      default -> figure.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }
}

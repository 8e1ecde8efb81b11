package dev.filial.cli;

import dev.filial.cli.command.CompareCommand;
import dev.filial.cli.command.GerminationCommand;
import dev.filial.cli.command.GrowthCommand;
import dev.filial.cli.command.MeansCommand;
import dev.filial.cli.command.RankCommand;
import dev.filial.cli.command.SeasonsCommand;
import dev.filial.cli.command.SurvivalCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** What counts, scores and measurements come to. */
final class MeasureVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("germination", "Say how much seed came up and how long it took"),
        verb("compare", "Say whether seed came up better one way than another"),
        verb("survival", "Say how many of those that came up live on, week by week"),
        verb("rank", "Rank seedlings by a score or a size"),
        verb("growth", "Say how a score or a size of each plant went over time"),
        verb("means", "Say what families are on the average, beside their parents"),
        verb("seasons", "Say what came, was crossed, sown and lost, year by year"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.SEASON, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "germination" -> new GerminationCommand(words);
      case "compare" -> new CompareCommand(words);
      case "survival" -> new SurvivalCommand(words);
      case "rank" -> new RankCommand(words);
      case "growth" -> new GrowthCommand(words);
      case "means" -> new MeansCommand(words);
      case "seasons" -> new SeasonsCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

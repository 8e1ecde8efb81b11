package dev.filial.cli;

import dev.filial.cli.command.AttachedCommand;
import dev.filial.cli.command.CarriesCommand;
import dev.filial.cli.command.CompatibleCommand;
import dev.filial.cli.command.FitCommand;
import dev.filial.cli.command.ForecastCommand;
import dev.filial.cli.command.GenesCommand;
import dev.filial.cli.command.HowmanyCommand;
import dev.filial.cli.command.LinkageCommand;
import dev.filial.cli.command.MakeupCommand;
import dev.filial.cli.command.MistakesCommand;
import dev.filial.cli.command.NextCommand;
import dev.filial.cli.command.OddsCommand;
import dev.filial.cli.command.PollinatorCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** What a cross will throw, and whether it did. */
final class ExpectVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("odds", "Say what a cross will throw, and how many seeds to sow for it"),
        verb("next", "Say which plants to cross next for a seedling you want"),
        verb("howmany", "Say how many seeds to sow for what comes up so often"),
        verb("fit", "Say whether what came up fits what was expected"),
        verb("genes", "List the genes, how traits hang on them, and what species carry"),
        verb("linkage", "Say how closely two genes are linked, by the counts of a family"),
        verb("attached", "Say how much of a donor still hangs on around a gene after backcrosses"),
        verb("forecast", "Say what a cross may bring where no gene is known"),
        verb("compatible", "Say which plants can set seed on which"),
        verb("carries", "Say what a plant most likely carries, by everything that was seen"),
        verb("pollinator", "Say whose pollen it was, by what the seedlings show"),
        verb("makeup", "Say what an unlabelled plant most likely is"),
        verb("mistakes", "Find the record that must be wrong"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.EXPECT, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "odds" -> new OddsCommand(words);
      case "next" -> new NextCommand(words);
      case "howmany" -> new HowmanyCommand(words);
      case "fit" -> new FitCommand(words);
      case "genes" -> new GenesCommand(words);
      case "linkage" -> new LinkageCommand(words);
      case "attached" -> new AttachedCommand(words);
      case "forecast" -> new ForecastCommand(words);
      case "compatible" -> new CompatibleCommand(words);
      case "carries" -> new CarriesCommand(words);
      case "pollinator" -> new PollinatorCommand(words);
      case "makeup" -> new MakeupCommand(words);
      case "mistakes" -> new MistakesCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

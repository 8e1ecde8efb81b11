package dev.filial.cli;

import dev.filial.cli.command.CountCommand;
import dev.filial.cli.command.HarvestCommand;
import dev.filial.cli.command.MixCommand;
import dev.filial.cli.command.NumberCommand;
import dev.filial.cli.command.PotCommand;
import dev.filial.cli.command.SowCommand;
import dev.filial.cli.command.SplitCommand;
import dev.filial.cli.command.TallyCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Sowings, pots and seedlings. */
final class SeedlingVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("harvest", "Write down the seed that a cross gave"),
        verb("split", "Put part of a seed lot in a packet of its own"),
        verb("mix", "Put the seed of several lots in one packet"),
        verb("sow", "Sow seed of a lot, into pots or as one sowing"),
        verb("count", "Count the seedlings that came up or are alive"),
        verb("pot", "Put seedlings without numbers in a pot of their own"),
        verb("number", "Prick seedlings out and give them numbers"),
        verb("tally", "Say how many seedlings of a pot showed which state"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.SEED, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "harvest" -> new HarvestCommand(words);
      case "split" -> new SplitCommand(words);
      case "mix" -> new MixCommand(words);
      case "sow" -> new SowCommand(words);
      case "count" -> new CountCommand(words);
      case "pot" -> new PotCommand(words);
      case "number" -> new NumberCommand(words);
      case "tally" -> new TallyCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

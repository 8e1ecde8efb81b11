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
import java.util.function.Function;

/** Sowings, pots and seedlings. */
final class SeedlingVerbs {

  private SeedlingVerbs() {}

  static List<Verb> list() {
    return List.of(
        verb("harvest", "Write down the seed that a cross gave", HarvestCommand::new),
        verb("split", "Put part of a seed lot in a packet of its own", SplitCommand::new),
        verb("mix", "Put the seed of several lots in one packet", MixCommand::new),
        verb("sow", "Sow seed of a lot, into pots or as one sowing", SowCommand::new),
        verb("count", "Count the seedlings that came up or are alive", CountCommand::new),
        verb("pot", "Put seedlings without numbers in a pot of their own", PotCommand::new),
        verb("number", "Prick seedlings out and give them numbers", NumberCommand::new),
        verb("tally", "Say how many seedlings of a pot showed which state", TallyCommand::new));
  }

  private static Verb verb(String name, String summary, Function<Words, BenchCommand> command) {
    return new Verb(name, Heading.RECORD, summary, command);
  }
}

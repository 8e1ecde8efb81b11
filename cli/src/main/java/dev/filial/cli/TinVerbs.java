package dev.filial.cli;

import dev.filial.cli.command.EmptyCommand;
import dev.filial.cli.command.KeepSeedCommand;
import dev.filial.cli.command.OfferCommand;
import dev.filial.cli.command.PromiseCommand;
import dev.filial.cli.command.TinCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** The seed tin. */
final class TinVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("clean", Heading.SEED, "Say that seed was cleaned, counted, weighed"),
        verb("store", Heading.SEED, "Say where and how seed is kept, and what is left"),
        verb("empty", Heading.SEED, "Say that no seed of a lot is left"),
        verb("promise", Heading.SEED, "Promise seed or plants to somebody, or take it back"),
        verb("tin", Heading.SEASON, "Say what seed is left, how old, promised to whom"),
        verb("offer", Heading.SEASON, "List seed for a club, with all that is doubtful"));
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "clean" -> KeepSeedCommand.clean(words);
      case "store" -> KeepSeedCommand.store(words);
      case "empty" -> new EmptyCommand(words);
      case "promise" -> new PromiseCommand(words);
      case "tin" -> new TinCommand(words);
      case "offer" -> new OfferCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

package dev.filial.cli;

import dev.filial.cli.command.BridgeCommand;
import dev.filial.cli.command.FlowerCommand;
import dev.filial.cli.command.FloweringCommand;
import dev.filial.cli.command.PairsCommand;
import dev.filial.cli.command.PollenBoxCommand;
import dev.filial.cli.command.PollenCommand;
import dev.filial.cli.command.SetsCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Flowers, pollen and what set on what. */
final class FlowerVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("flower", Heading.RECORD, "Say that plants are in flower, or over"),
        verb("pollen", Heading.RECORD, "Say that pollen was gathered, dried, frozen or used up"),
        verb("flowering", Heading.SEASON, "Say what is in flower, and since when"),
        verb("pollenbox", Heading.SEASON, "Say what pollen is kept, how and how old"),
        verb("pairs", Heading.SEASON, "Say which plants flower together"),
        verb("bridge", Heading.SEASON, "Say which stored pollen can be had for a seed parent"),
        verb("sets", Heading.SEASON, "Say what has set on what, and which way round"));
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "flower" -> new FlowerCommand(words);
      case "pollen" -> new PollenCommand(words);
      case "flowering" -> new FloweringCommand(words);
      case "pollenbox" -> new PollenBoxCommand(words);
      case "pairs" -> new PairsCommand(words);
      case "bridge" -> new BridgeCommand(words);
      case "sets" -> new SetsCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

package dev.filial.cli;

import dev.filial.cli.command.CrossCommand;
import dev.filial.cli.command.FateCommand;
import dev.filial.cli.command.FoundCommand;
import dev.filial.cli.command.FruitCommand;
import dev.filial.cli.command.GiveCommand;
import dev.filial.cli.command.MoveCommand;
import dev.filial.cli.command.NameCommand;
import dev.filial.cli.command.NoteCommand;
import dev.filial.cli.command.ObserveCommand;
import dev.filial.cli.command.OffsetCommand;
import dev.filial.cli.command.PlantCommand;
import dev.filial.cli.command.PopulationCommand;
import dev.filial.cli.command.SeedCommand;
import dev.filial.cli.command.TaxonCommand;
import dev.filial.cli.command.TraitCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Plants, crosses and their seed. */
final class PlantVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("plant", "Enter a plant that was bought, given or collected"),
        verb("seed", "Enter a packet of seed that was bought or swapped"),
        verb("taxon", "Say what is known of a species or a named hybrid"),
        verb("population", "Say which field numbers are of one population"),
        verb("cross", "Enter a pollination"),
        verb("fruit", "Say how many flowers of a cross set or failed"),
        verb("offset", "Enter an offset, a cutting or a graft of a plant"),
        verb("found", "Enter a plant that lost its tag"),
        verb("name", "Give a plant a further name"),
        verb("note", "Write a remark about anything"),
        verb("move", "Say where plants, pots or packets stand now"),
        verb("died", "Say that plants died"),
        verb("give", "Say that plants or seed left, and to whom"),
        verb("keep", "Mark plants as worth keeping"),
        verb("discard", "Say that plants or seed were thrown out"),
        verb("trait", "Declare what plants are looked at for"),
        verb("observe", "Say what one plant showed"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.RECORD, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "plant" -> new PlantCommand(words);
      case "seed" -> new SeedCommand(words);
      case "taxon" -> new TaxonCommand(words);
      case "population" -> new PopulationCommand(words);
      case "cross" -> new CrossCommand(words);
      case "fruit" -> new FruitCommand(words);
      case "offset" -> new OffsetCommand(words);
      case "found" -> new FoundCommand(words);
      case "name" -> new NameCommand(words);
      case "note" -> new NoteCommand(words);
      case "move" -> new MoveCommand(words);
      case "died" -> FateCommand.died(words);
      case "give" -> new GiveCommand(words);
      case "keep" -> FateCommand.keep(words);
      case "discard" -> FateCommand.discard(words);
      case "trait" -> new TraitCommand(words);
      case "observe" -> new ObserveCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

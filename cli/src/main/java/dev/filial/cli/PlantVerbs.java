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
import dev.filial.cli.command.SeedCommand;
import dev.filial.cli.command.TaxonCommand;
import dev.filial.cli.command.TraitCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;
import java.util.function.Function;

/** Plants, crosses and their seed. */
final class PlantVerbs {

  private PlantVerbs() {}

  static List<Verb> list() {
    return List.of(
        verb("plant", "Enter a plant that was bought, given or collected", PlantCommand::new),
        verb("seed", "Enter a packet of seed that was bought or swapped", SeedCommand::new),
        verb("taxon", "Say what is known of a species or a named hybrid", TaxonCommand::new),
        verb("cross", "Enter a pollination", CrossCommand::new),
        verb("fruit", "Say how many flowers of a cross set or failed", FruitCommand::new),
        verb("offset", "Enter an offset, a cutting or a graft of a plant", OffsetCommand::new),
        verb("found", "Enter a plant that lost its tag", FoundCommand::new),
        verb("name", "Give a plant a further name", NameCommand::new),
        verb("note", "Write a remark about anything", NoteCommand::new),
        verb("move", "Say where plants, pots or packets stand now", MoveCommand::new),
        verb("died", "Say that plants died", FateCommand::died),
        verb("give", "Say that plants or seed left, and to whom", GiveCommand::new),
        verb("keep", "Mark plants as worth keeping", FateCommand::keep),
        verb("discard", "Say that plants or seed were thrown out", FateCommand::discard),
        verb("trait", "Declare what plants are looked at for", TraitCommand::new),
        verb("observe", "Say what one plant showed", ObserveCommand::new));
  }

  private static Verb verb(String name, String summary, Function<Words, BenchCommand> command) {
    return new Verb(name, Heading.RECORD, summary, command);
  }
}

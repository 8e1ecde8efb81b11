package dev.filial.cli;

import dev.filial.cli.command.AgainCommand;
import dev.filial.cli.command.BatchCommand;
import dev.filial.cli.command.FillCommand;
import dev.filial.cli.command.PhotoCommand;
import dev.filial.cli.command.PhotosCommand;
import dev.filial.cli.command.SheetCommand;
import dev.filial.cli.command.SitCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Many entries at once, and the pictures beside them. */
final class EntryVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("batch", Heading.MANY, "Write many entries at once, one a line, all or none"),
        verb("again", Heading.MANY, "Make the last entry once more, with changes"),
        verb("sit", Heading.MANY, "Stay at the prompt: forms, and completion with the Tab key"),
        verb("fill", Heading.MANY, "Type in a bench sheet, box by box in its order"),
        verb("photo", Heading.CARE, "Attach pictures by where they lie"),
        verb("sheet", Heading.PAPER, "Print a bench sheet to pencil on"),
        verb("photos", Heading.SEASON, "List the pictures, and say which are missing or changed"));
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "batch" -> new BatchCommand(words, Verbs.table());
      case "again" -> new AgainCommand(words);
      case "sheet" -> new SheetCommand(words);
      case "fill" -> new FillCommand(words, Verbs.table());
      case "sit" -> new SitCommand(words, Verbs.table());
      case "photo" -> new PhotoCommand(words);
      case "photos" -> new PhotosCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

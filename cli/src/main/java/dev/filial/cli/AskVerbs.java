package dev.filial.cli;

import dev.filial.cli.command.AncestryCommand;
import dev.filial.cli.command.FindCommand;
import dev.filial.cli.command.FormulaCommand;
import dev.filial.cli.command.FoundersCommand;
import dev.filial.cli.command.HangsCommand;
import dev.filial.cli.command.ListCommand;
import dev.filial.cli.command.LocalityCommand;
import dev.filial.cli.command.NotationCommand;
import dev.filial.cli.command.RelatedCommand;
import dev.filial.cli.command.ShowCommand;
import dev.filial.cli.command.TagCommand;
import dev.filial.cli.command.TreeCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Questions, and the text of tags. */
final class AskVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("show", Heading.ASK, "Show all that is known of a plant, a cross, a lot or a pot"),
        verb(
            "ancestry", Heading.ASK, "Say who is in a plant: shares, generation, seed-parent line"),
        verb("tree", Heading.ASK, "Draw a plant's parents and theirs"),
        verb("notation", Heading.ASK, "Write a plant's pedigree on one line, or explain one"),
        verb("formula", Heading.ASK, "Write a plant's hybrid formula"),
        verb("related", Heading.ASK, "Say how closely plants are related, and how inbred they are"),
        verb("founders", Heading.ASK, "Say which founders stand behind plants, and by how much"),
        verb(
            "locality",
            Heading.ASK,
            "Say which plants are true to a field number, and since when others are not"),
        verb("list", Heading.ASK, "List what there is"),
        verb("find", Heading.ASK, "Find what a smudged tag or half a name may be"),
        verb(
            "hangs", Heading.ASK, "List what is touched if an entry was wrong: descendants, gifts"),
        verb("tag", Heading.PAPER, "Say what to write on a tag or a packet"));
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "show" -> new ShowCommand(words);
      case "ancestry" -> new AncestryCommand(words);
      case "tree" -> new TreeCommand(words);
      case "notation" -> new NotationCommand(words);
      case "formula" -> new FormulaCommand(words);
      case "related" -> new RelatedCommand(words);
      case "founders" -> new FoundersCommand(words);
      case "locality" -> new LocalityCommand(words);
      case "list" -> new ListCommand(words);
      case "find" -> new FindCommand(words);
      case "hangs" -> new HangsCommand(words);
      case "tag" -> new TagCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

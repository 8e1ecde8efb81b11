package dev.filial.cli;

import dev.filial.cli.command.AncestryCommand;
import dev.filial.cli.command.FindCommand;
import dev.filial.cli.command.FormulaCommand;
import dev.filial.cli.command.HangsCommand;
import dev.filial.cli.command.ListCommand;
import dev.filial.cli.command.NotationCommand;
import dev.filial.cli.command.ShowCommand;
import dev.filial.cli.command.TagCommand;
import dev.filial.cli.command.TreeCommand;
import java.util.List;

/** Questions, and the text of tags. */
final class AskVerbs {

  private AskVerbs() {}

  static List<Verb> list() {
    return List.of(
        new Verb(
            "show",
            Heading.ASK,
            "Show all that is known of a plant, a cross, a lot or a pot",
            ShowCommand::new),
        new Verb(
            "ancestry",
            Heading.ASK,
            "Say who is in a plant: shares, generation, seed-parent line",
            AncestryCommand::new),
        new Verb("tree", Heading.ASK, "Draw a plant's parents and theirs", TreeCommand::new),
        new Verb(
            "notation",
            Heading.ASK,
            "Write a plant's pedigree on one line, or explain one",
            NotationCommand::new),
        new Verb("formula", Heading.ASK, "Write a plant's hybrid formula", FormulaCommand::new),
        new Verb("list", Heading.ASK, "List what there is", ListCommand::new),
        new Verb(
            "find",
            Heading.ASK,
            "Find what a smudged tag or half a name may be",
            FindCommand::new),
        new Verb(
            "hangs",
            Heading.ASK,
            "List what is touched if an entry was wrong: descendants, gifts",
            HangsCommand::new),
        new Verb("tag", Heading.PAPER, "Say what to write on a tag or a packet", TagCommand::new));
  }
}

package dev.filial.cli;

import dev.filial.cli.command.AmendCommand;
import dev.filial.cli.command.GuessCommand;
import dev.filial.cli.command.HistoryCommand;
import dev.filial.cli.command.JoinCommand;
import dev.filial.cli.command.PartCommand;
import dev.filial.cli.command.RenameCommand;
import dev.filial.cli.command.StrikeCommand;
import dev.filial.cli.command.UndoCommand;
import java.util.List;

/** Putting right. */
final class CorrectVerbs {

  private CorrectVerbs() {}

  static List<Verb> list() {
    return List.of(
        new Verb("undo", Heading.CORRECT, "Strike the last entry", UndoCommand::new),
        new Verb(
            "strike",
            Heading.CORRECT,
            "Strike an entry that should not have been made",
            StrikeCommand::new),
        new Verb("amend", Heading.CORRECT, "Put right what an entry says", AmendCommand::new),
        new Verb(
            "history",
            Heading.CORRECT,
            "Show what was written, and what became of it",
            HistoryCommand::new),
        new Verb(
            "rename", Heading.CORRECT, "Let one taxon name be read as another", RenameCommand::new),
        new Verb("join", Heading.CORRECT, "Join two records that are one plant", JoinCommand::new),
        new Verb("part", Heading.CORRECT, "Part a record that is two plants", PartCommand::new),
        new Verb("guess", Heading.CORRECT, "Mark an entry as a guess", GuessCommand::new));
  }
}

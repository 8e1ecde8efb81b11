package dev.filial.cli;

import dev.filial.cli.command.AmendCommand;
import dev.filial.cli.command.GuessCommand;
import dev.filial.cli.command.HistoryCommand;
import dev.filial.cli.command.JoinCommand;
import dev.filial.cli.command.PartCommand;
import dev.filial.cli.command.RenameCommand;
import dev.filial.cli.command.StrikeCommand;
import dev.filial.cli.command.UndoCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Putting right. */
final class CorrectVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("undo", "Strike the last entry"),
        verb("strike", "Strike an entry that should not have been made"),
        verb("amend", "Put right what an entry says"),
        verb("history", "Show what was written, and what became of it"),
        verb("rename", "Let one taxon name be read as another"),
        verb("join", "Join two records that are one plant"),
        verb("part", "Part a record that is two plants"),
        verb("guess", "Mark an entry as a guess"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.CORRECT, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "undo" -> new UndoCommand(words);
      case "strike" -> new StrikeCommand(words);
      case "amend" -> new AmendCommand(words);
      case "history" -> new HistoryCommand(words);
      case "rename" -> new RenameCommand(words);
      case "join" -> new JoinCommand(words);
      case "part" -> new PartCommand(words);
      case "guess" -> new GuessCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

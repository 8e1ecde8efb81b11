package dev.filial.cli;

import dev.filial.cli.command.CompletionCommand;
import dev.filial.cli.command.VersionCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** The program itself. */
final class ProgramVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("help", "Show what there is, or how one verb is used"),
        verb("completion", "Print a script that lets the Tab key complete verbs and options"),
        verb("version", "Show the versions of Filial, Java and SQLite"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.PROGRAM, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "help" -> new HelpCommand(words, Verbs.all());
      case "completion" -> new CompletionCommand(words, () -> Verbs.all().words());
      case "version" -> new VersionCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

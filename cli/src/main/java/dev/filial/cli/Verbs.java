package dev.filial.cli;

import dev.filial.cli.command.CompletionCommand;
import dev.filial.cli.command.VersionCommand;
import java.util.List;

/** The table of verbs: the one place where a verb is named. */
final class Verbs {

  private Verbs() {}

  /** Every verb, each group in the order in which help lists it. */
  static List<Verb> all() {
    return List.of(
        new Verb(
            "help",
            Heading.PROGRAM,
            "Show what there is, or how one verb is used",
            () -> new HelpCommand(all())),
        new Verb(
            "completion",
            Heading.PROGRAM,
            "Print a script that lets the Tab key complete verbs and options",
            () -> new CompletionCommand(() -> CommandLines.of(all()))),
        new Verb(
            "version",
            Heading.PROGRAM,
            "Show the versions of Filial, Java and SQLite",
            VersionCommand::new));
  }
}

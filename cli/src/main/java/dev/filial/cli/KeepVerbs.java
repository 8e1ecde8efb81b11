package dev.filial.cli;

import dev.filial.cli.command.ImportCommand;
import dev.filial.cli.command.SalvageCommand;
import dev.filial.cli.command.VerifyCommand;
import java.util.List;

/** Keeping and exchanging. */
final class KeepVerbs {

  private KeepVerbs() {}

  static List<Verb> list() {
    return List.of(
        new Verb(
            "verify",
            Heading.KEEP,
            "Read the whole register over again and say whether it is sound",
            VerifyCommand::new),
        new Verb(
            "salvage",
            Heading.KEEP,
            "Save what can be read of a damaged register",
            SalvageCommand::new),
        new Verb(
            "import",
            Heading.KEEP,
            "Take in a pedigree in notation, or saved entries",
            ImportCommand::new));
  }
}

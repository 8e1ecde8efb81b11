package dev.filial.cli;

import dev.filial.cli.command.ExportCommand;
import dev.filial.cli.command.ImportCommand;
import dev.filial.cli.command.SalvageCommand;
import dev.filial.cli.command.VerifyCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Keeping and exchanging. */
final class KeepVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("verify", "Read the whole register over again and say whether it is sound"),
        verb("salvage", "Save what can be read of a damaged register"),
        verb("import", "Take in a pedigree in notation, or saved entries"),
        verb("export", "Hand plants, crosses, the pedigree or the whole book to others"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.KEEP, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "verify" -> new VerifyCommand(words);
      case "salvage" -> new SalvageCommand(words);
      case "import" -> new ImportCommand(words);
      case "export" -> new ExportCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

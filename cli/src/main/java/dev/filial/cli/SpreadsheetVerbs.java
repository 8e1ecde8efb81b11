package dev.filial.cli;

import dev.filial.cli.command.SheetCommand;
import java.util.List;

/** Tables that a grower already keeps in a spreadsheet. */
final class SpreadsheetVerbs {

  private SpreadsheetVerbs() {}

  static List<Verb> list() {
    return List.of(
        new Verb(
            "sheet",
            Heading.KEEP,
            "Take in a table that you keep in a spreadsheet (CSV)",
            SheetCommand::new));
  }
}

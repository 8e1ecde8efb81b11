package dev.filial.cli;

import dev.filial.cli.command.SpreadsheetCommand;
import java.util.List;

/** Tables that a grower already keeps in a spreadsheet. */
final class SpreadsheetVerbs {

  private SpreadsheetVerbs() {}

  static List<Verb> list() {
    return List.of(
        new Verb(
            "table",
            Heading.KEEP,
            "Take in a table that you keep in a spreadsheet (CSV)",
            SpreadsheetCommand::new));
  }
}

package dev.filial.cli;

import dev.filial.cli.command.SpreadsheetCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Tables that a grower already keeps in a spreadsheet. */
final class SpreadsheetVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("table", Heading.KEEP, "Take in a table that you keep in a spreadsheet (CSV)"));
  }

  @Override
  BenchCommand command(String name, Words words) {
    return new SpreadsheetCommand(words);
  }
}

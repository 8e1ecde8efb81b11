package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.screen.Screen;
import dev.filial.core.spreadsheet.MappingGuess;
import dev.filial.core.spreadsheet.MappingText;
import dev.filial.core.spreadsheet.Sheet;
import java.nio.file.Path;
import java.util.List;

/**
 * A mapping that was proposed and written to a file.
 *
 * @param table the table
 * @param form how it is written
 * @param mapping the file with the proposal
 * @param lines what it says
 * @param notes what the grower should look at
 */
record SpreadsheetProposed(
    Path table, String form, Path mapping, List<String> lines, List<String> notes)
    implements Answer {

  static SpreadsheetProposed of(
      Path table, Sheet sheet, Path into, MappingGuess.Proposal proposal) {
    return new SpreadsheetProposed(
        table,
        sheet.form().inWords(),
        into,
        MappingText.write(proposal.mapping()).lines().toList(),
        proposal.notes());
  }

  @Override
  public void show(Screen screen) {
    screen.say(table.getFileName() + " is " + form + ". Proposed, in " + mapping + ":");
    lines.forEach(line -> screen.indented(1, line));
    notes.forEach(note -> screen.say("Look here: " + note + "."));
    screen.next(
        "look it over in any editor, then try it: filial table "
            + CommandLine.quoted(table.toString())
            + " --columns "
            + CommandLine.quoted(mapping.toString()));
  }
}

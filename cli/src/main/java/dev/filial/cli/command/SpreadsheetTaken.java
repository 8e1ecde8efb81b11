package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.Status;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.spreadsheet.Mapping;
import dev.filial.core.spreadsheet.MappingGuess;
import dev.filial.core.spreadsheet.MappingText;
import dev.filial.core.spreadsheet.Sheet;
import dev.filial.core.spreadsheet.SheetImport;
import dev.filial.core.spreadsheet.SheetImport.Complaint;
import dev.filial.core.spreadsheet.SheetImport.Sample;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What came of a table, or would.
 *
 * @param table the table
 * @param form how it is written
 * @param written whether the register has the rows now
 * @param rows how many rows there are, without blank ones
 * @param taken how many were taken, or would be
 * @param refused how many were not
 * @param blank how many rows were blank
 * @param first the number of the first entry; 0 when there is none
 * @param last the number of the last one
 * @param complaints the first of what is wrong
 * @param warned how many warnings there are
 * @param noted the first warnings, with their lines
 * @param samples the first entries
 * @param unmapped columns of which nothing was read
 * @param guessed the mapping, line by line, where it was guessed and not named
 * @param rejects the file of the rows that were not taken, or null
 * @param next what to type next
 */
record SpreadsheetTaken(
    Path table,
    String form,
    boolean written,
    long rows,
    long taken,
    long refused,
    long blank,
    long first,
    long last,
    List<Complaint> complaints,
    long warned,
    List<Complaint> noted,
    List<Sample> samples,
    List<String> unmapped,
    List<String> guessed,
    @Nullable Path rejects,
    String next)
    implements Answer {

  static SpreadsheetTaken of(
      Path table,
      Sheet sheet,
      Mapping mapping,
      MappingGuess.@Nullable Proposal proposal,
      Optional<Path> columns,
      Optional<Path> rejects,
      SheetImport.Outcome outcome) {
    List<String> guessed = new ArrayList<>();
    if (proposal != null) {
      guessed.addAll(MappingText.write(mapping).lines().toList());
    }
    boolean kept = outcome.written() && outcome.refused() > 0;
    return new SpreadsheetTaken(
        table,
        sheet.form().inWords(),
        outcome.written(),
        outcome.rows(),
        outcome.taken(),
        outcome.refused(),
        outcome.blank(),
        outcome.first(),
        outcome.last(),
        outcome.complaints(),
        outcome.warned(),
        outcome.warnings(),
        outcome.samples(),
        outcome.unmapped(),
        guessed,
        kept ? rejects.orElse(null) : null,
        next(table, columns, rejects, outcome));
  }

  private static String next(
      Path table, Optional<Path> columns, Optional<Path> rejects, SheetImport.Outcome outcome) {
    String command = "filial table " + CommandLine.quoted(table.toString());
    String mapped =
        columns.map(path -> " --columns " + CommandLine.quoted(path.toString())).orElse("");
    if (columns.isEmpty()) {
      return "have the guess written to a file and look it over: " + command + " --guess MAPPING";
    }
    if (outcome.written()) {
      return outcome.refused() == 0
          ? "see what is there: filial list"
          : "mend the rows in "
              + rejects.orElseThrow()
              + ", then take them in: filial table "
              + CommandLine.quoted(rejects.orElseThrow().toString())
              + mapped
              + " --apply";
    }
    if (outcome.rows() == 0) {
      return "save the table again, with its rows: " + table;
    }
    if (outcome.refused() == 0) {
      return "copy the register, then: " + command + mapped + " --apply";
    }
    return "mend these rows and try again; or take the good ones alone: "
        + command
        + mapped
        + " --apply --good-rows REJECTS.csv";
  }

  @Override
  public void show(Screen screen) {
    screen.say(table.getFileName() + " is " + form + ".");
    if (!guessed.isEmpty()) {
      screen.say("The columns, as guessed:");
      guessed.forEach(line -> screen.indented(1, line));
    }
    screen.say(summary());
    samples.forEach(sample -> screen.indented(1, "line " + sample.line() + ": " + sample.text()));
    if (!unmapped.isEmpty()) {
      screen.say(
          "Not read, because the mapping names no use for it: "
              + String.join(", ", unmapped)
              + ". Add keep = HEADER for the remark, or ignore = HEADER.");
    }
    if (!complaints.isEmpty()) {
      screen.say(refused == complaints.size() ? "Refused:" : "Refused, the first of them:");
      Table list = new Table().numbers("line").column("column").column("why");
      complaints.forEach(one -> list.row(one.line(), one.column(), one.why()));
      screen.table(list);
    }
    if (rejects != null) {
      screen.say("The rows refused stand in " + rejects + ", each with its reason.");
    }
    screen.next(next);
  }

  private String summary() {
    String entries =
        first == 0
            ? "no entry"
            : first == last ? "entry " + first : "entries " + number(first) + " to " + number(last);
    String all = number(rows) + (rows == 1 ? " row" : " rows");
    String without = blank == 0 ? "" : " (and " + number(blank) + " blank)";
    if (written) {
      return all + without + ": " + number(taken) + " taken in, as " + entries + ".";
    }
    if (rows == 0) {
      return "There is no row in it" + without + ", and nothing was written.";
    }
    return all
        + without
        + ": "
        + (refused == 0
            ? "all are good and would be " + entries + "."
            : number(taken) + " good, " + number(refused) + " refused.")
        + " Nothing was written.";
  }

  private static String number(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }

  @Override
  public List<String> warnings() {
    List<String> all = new ArrayList<>();
    noted.forEach(one -> all.add("line " + one.line() + ": " + one.why()));
    if (warned > noted.size()) {
      all.add("and " + number(warned - noted.size()) + " more such notes");
    }
    return List.copyOf(all);
  }

  /** No, where rows are refused and nothing was written for it. */
  @Override
  public Status status() {
    return refused > 0 && !written ? Status.REFUSED : Status.DONE;
  }
}

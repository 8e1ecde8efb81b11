package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.LineSource;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.VerbTable;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.SheetQuestion.Sheet;
import java.io.PrintWriter;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial fill}. */
public final class FillCommand implements BenchCommand {

  private final VerbTable verbs;
  private final SheetOptions options;
  private final Supplier<Optional<LocalDate>> date;
  private final OpenRegister register;

  /** Declares its words; {@code verbs} write what was filled in. */
  public FillCommand(Words words, VerbTable verbs) {
    this.verbs = verbs;
    options = new SheetOptions(words);
    date = words.option("--date", "DATE", "The day on the sheet; otherwise asked.", Reading.DAY);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Asks for what is pencilled on a bench sheet, row by row in its order. Enter leaves a"
                + " box empty; < goes back a row, . leaves the rest out, ! gives up. Then all of it"
                + " is shown and written at once, or nothing. It wants a terminal; without one,"
                + " the same can be written as a batch.")
        .example("filial fill shelf --kind pots --upto 259 --date \"13 jun\"");
  }

  @Override
  public Answer run(Bench bench) {
    Sheet sheet = register.read(bench, options::in);
    if (sheet.rows().isEmpty()) {
      return Answer.of(
          sheet, screen -> screen.say("There is nothing to fill in. What there is: filial list"));
    }
    if (!bench.asker().canAsk()) {
      throw Trouble.usage(
          "fill asks row by row, and nobody can be asked here",
          "Write the entries into a file, and take that in with: filial batch FILE");
    }
    FillForm form = new FillForm(bench);
    LocalDate day = date.get().orElseGet(form::day);
    List<String> lines = form.lines(sheet.rows());
    if (lines.isEmpty()) {
      return Answer.of(sheet, screen -> screen.say("No box was filled in; nothing was written."));
    }
    return written(lines, day, form, bench);
  }

  private Answer written(List<String> lines, LocalDate day, FillForm form, Bench bench) {
    List<String> now = lines;
    while (true) {
      if (!form.confirmed(now, day)) {
        throw Trouble.refused("nothing was written, as you wished", "It still stands above.");
      }
      String text = String.join("\n", now) + "\n";
      Bench on =
          new Bench(
              bench.terminal(),
              bench.env(),
              bench.clock(),
              bench.folder(),
              bench.registers(),
              Optional.of(day));
      Batch.Outcome outcome =
          register.share(
              bench,
              shared -> Batch.run(new LineSource(new StringReader(text)), verbs, shared, on),
              Batch.Outcome::isGood);
      if (outcome.isGood()) {
        return new BatchCommand.Taken(false, outcome);
      }
      PrintWriter err = bench.terminal().err();
      err.print("Nothing is written yet:\n");
      outcome.complaints().forEach(complaint -> err.print(complaint.text() + "\n"));
      now = form.mended(now, outcome.complaints());
    }
  }
}

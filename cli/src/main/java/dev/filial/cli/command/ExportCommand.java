package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.Chosen;
import dev.filial.core.answer.Finding;
import dev.filial.core.register.RegisterView;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial export}. */
public final class ExportCommand implements BenchCommand {

  private final Words words;
  private final Supplier<ExportForm> form;
  private final Supplier<List<String>> codes;
  private final Supplier<Optional<Path>> file;
  private final Supplier<Optional<Integer>> year;
  private final BooleanSupplier all;
  private final BooleanSupplier localities;
  private final BooleanSupplier people;
  private final Supplier<Optional<String>> institute;
  private final OpenRegister register;

  /** Declares its words. */
  public ExportCommand(Words words) {
    this.words = words;
    form =
        words.argument(
            "FORM",
            "plants or crosses, a table with a row each; passport, for a genebank (MCPD);"
                + " occurrences, for a collections portal (Darwin Core); graphml or dot, the"
                + " pedigree for other programs; entries, the whole book for filial import.",
            Reading.oneOf(ExportForm.class));
    codes =
        words.arguments(
            "CODE",
            "Only these plants, lots or crosses, and the seedlings of a cross; of graphml and dot"
                + " all that stands behind them. Otherwise all that is here.",
            false,
            Reading.THING);
    file =
        words.option(
            "--to", "FILE", "Write it into a new file; otherwise it is printed.", Reading.FILE);
    year =
        words.option(
            "--year", "YEAR", "Only codes of this year, as 2024 or 24.", Reading.WHOLE_NUMBER);
    all = words.flag("--all", "Also what died, left or was used up.");
    localities =
        words.flag(
            "--localities",
            "Tell where plants were collected. Left out otherwise, for thieves read tables too.");
    people = words.flag("--people", "Tell who gave plants, and who bred them.");
    institute =
        words.option(
            "--institute",
            "CODE",
            "The code of the institute that has them, as DEU999: of passport and occurrences.",
            ExportCommand::institute);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Every code carries the grower's mark, the donor's own code stays beside ours, and what"
                + " is guessed or doubtful is said. Tables are comma-separated values in UTF-8.")
        .example("filial export plants --year 2024")
        .example("filial export dot 24-010-1")
        .example("filial export passport --institute DEU999 --to passport.csv");
  }

  private static String institute(String text, Bench bench) {
    if (!text.matches("[A-Z]{3}\\d{1,5}")) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" is no institute's code; it is a country's three letters and a number,"
              + " as DEU999");
    }
    return text;
  }

  /**
   * What was handed on.
   *
   * @param form in which form
   * @param file where it was written
   * @param rows how many rows, plants or entries
   * @param of what these are, in the plural
   * @param next what comes next with it
   * @param notes what was left out, and what to mind
   */
  record Written(String form, String file, long rows, String of, String next, List<String> notes)
      implements Answer {
    @Override
    public void show(Screen screen) {
      screen.say("Wrote " + rows + " " + of + " into " + file + ".").next(next);
    }

    @Override
    public List<String> warnings() {
      return notes;
    }
  }

  /**
   * What was handed on, to be printed.
   *
   * @param text all of it
   * @param notes what was left out, and what to mind
   */
  record Printed(String text, List<String> notes) implements Answer {
    @Override
    public void show(Screen screen) {
      screen.raw(text);
    }

    @Override
    public List<String> warnings() {
      return notes;
    }
  }

  @Override
  public Answer run(Bench bench) {
    requireFitting();
    if (file.get().isEmpty()) {
      StringWriter text = new StringWriter();
      List<String> notes = written(text, bench).notes();
      return new Printed(text.toString(), notes);
    }
    Path to = file.get().get();
    List<ExportForm.Told> told = new ArrayList<>(1);
    NewFile.write(
        to,
        out -> {
          try {
            told.add(written(out, bench));
          } catch (UncheckedIOException e) {
            throw e.getCause();
          }
        });
    String typed = NewFile.asTyped(to, bench);
    return new Written(
        form.get().word(),
        typed,
        told.get(0).rows(),
        told.get(0).of(),
        form.get().next(typed),
        told.get(0).notes());
  }

  private ExportForm.Told written(Writer out, Bench bench) {
    return register.read(
        bench,
        view -> {
          try {
            return form.get().write(view, asked(view), out);
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }

  private ExportForm.Asked asked(RegisterView view) {
    Finding finding = Finding.in(view);
    return new ExportForm.Asked(
        Chosen.here()
            .withOnly(codes.get().stream().map(typed -> finding.one(typed).code()).toList())
            .withYear(year.get().orElse(null))
            .withGone(all.getAsBoolean()),
        localities.getAsBoolean(),
        people.getAsBoolean(),
        institute.get());
  }

  /** An option that the form has no use for was meant for another form. */
  private void requireFitting() {
    if (words.json() && file.get().isEmpty()) {
      throw Trouble.usage(
          "--json answers what was written where, and without --to the document itself is printed",
          "Add --to FILE, or leave out --json.");
    }
    ExportForm chosen = form.get();
    if (chosen == ExportForm.ENTRIES
        && (!codes.get().isEmpty() || year.get().isPresent() || all.getAsBoolean())) {
      throw Trouble.usage(
          "entries are the whole book, each leaning on those before it",
          "Leave out codes, --year and --all; for some plants: filial export plants CODE");
    }
    if (!chosen.tellsOrigin() && (localities.getAsBoolean() || people.getAsBoolean())) {
      throw Trouble.usage(
          "--localities and --people are of plants, passport and occurrences",
          chosen == ExportForm.ENTRIES
              ? "Leave them out: the whole book tells both anyway."
              : "Leave them out: " + chosen.word() + " tells neither.");
    }
    if (!chosen.namesInstitute() && institute.get().isPresent()) {
      throw Trouble.usage(
          "--institute is of passport and occurrences",
          "Leave it out: " + chosen.word() + " has no place for it.");
    }
  }
}

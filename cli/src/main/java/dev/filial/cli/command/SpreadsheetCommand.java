package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.ProgressLine;
import dev.filial.core.spreadsheet.Mapping;
import dev.filial.core.spreadsheet.MappingGuess;
import dev.filial.core.spreadsheet.MappingText;
import dev.filial.core.spreadsheet.RowKind;
import dev.filial.core.spreadsheet.Sheet;
import dev.filial.core.spreadsheet.SheetImport;
import dev.filial.core.store.RegisterStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial table}. */
public final class SpreadsheetCommand implements BenchCommand {

  /** The words for kinds of rows. */
  private static final Reading<RowKind> ROWS = Reading.oneOf(RowKind.class);

  private final Supplier<Path> file;
  private final Supplier<Optional<Path>> guess;
  private final Supplier<Optional<RowKind>> rows;
  private final Supplier<Optional<Path>> columns;
  private final BooleanSupplier apply;
  private final Supplier<Optional<Path>> goodRows;
  private final Supplier<Optional<Integer>> most;
  private final OpenRegister register;

  /** Declares its words. */
  public SpreadsheetCommand(Words words) {
    file = words.argument("TABLE", "The table, saved as CSV by the spreadsheet.", Reading.FILE);
    guess =
        words.option(
            "--guess",
            "MAPPING",
            "Write a proposal of which column is what to this new file, for you to look over.",
            Reading.FILE);
    rows =
        words.option(
            "--rows", "KIND", "What a row is, where the guess is wrong: plants, crosses ...", ROWS);
    columns =
        words.option(
            "--columns", "MAPPING", "The file that says which column is what.", Reading.FILE);
    apply =
        words.flag(
            "--apply",
            "Write the rows into the register: all of them or, if one is refused, none. Without it"
                + " everything is tried and nothing written.");
    goodRows =
        words.option(
            "--good-rows",
            "REJECTS",
            "With --apply: write the rows that are good, and the others to this new file, each with"
                + " its reason.",
            Reading.FILE);
    most =
        words.option(
            "--list",
            "COUNT",
            "How many refused rows to list; otherwise 20.",
            Reading.WHOLE_NUMBER);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Takes in a table you keep in a spreadsheet: plants, seed, crosses, sowings, counts or"
                + " measurements, one a row. Have the columns guessed, look the guess over, try it,"
                + " then apply it. Keep a copy of the register first: one entry is undone at a time.")
        .example("filial table plants.csv --guess my-plants.columns")
        .example("filial table plants.csv --columns my.columns")
        .example("filial table plants.csv --columns my.columns --apply --good-rows rest.csv");
  }

  @Override
  public Answer run(Bench bench) {
    check();
    requireNoFolder(file.get(), bench);
    columns.get().ifPresent(mapping -> requireNoFolder(mapping, bench));
    try {
      Sheet sheet = Sheet.of(file.get());
      return guess.get().isPresent()
          ? propose(sheet, guess.get().get(), bench)
          : take(sheet, bench);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void requireNoFolder(Path file, Bench bench) {
    if (Files.isDirectory(file)) {
      throw Trouble.file(shown(file, bench) + " is a folder", "Name a file in it.");
    }
  }

  private void check() {
    if (goodRows.get().isPresent() && !apply.getAsBoolean()) {
      throw Trouble.usage(
          "--good-rows goes with --apply, and without it nothing is written",
          "Add --apply, or leave --good-rows out.");
    }
    if (apply.getAsBoolean() && columns.get().isEmpty()) {
      throw Trouble.usage(
          "--apply needs a mapping that you have looked over",
          "Have one proposed with --guess MAPPING, then name it with --columns.");
    }
    if (guess.get().isPresent() && (columns.get().isPresent() || apply.getAsBoolean())) {
      throw Trouble.usage(
          "--guess proposes a mapping and does nothing else", "Leave out --columns and --apply.");
    }
    if (rows.get().isPresent() && columns.get().isPresent()) {
      throw Trouble.usage(
          "the mapping says already what a row is", "Leave out --rows, or change the mapping.");
    }
  }

  private Answer propose(Sheet sheet, Path into, Bench bench) throws IOException {
    MappingGuess.Proposal proposal = guessed(sheet, bench);
    NewFile.write(into, proposal.text(sheet));
    return SpreadsheetProposed.of(shown(sheet.file(), bench), sheet, shown(into, bench), proposal);
  }

  private MappingGuess.Proposal guessed(Sheet sheet, Bench bench) {
    return register.read(
        bench,
        view -> {
          try {
            return MappingGuess.of(sheet, rows.get(), view);
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }

  private Answer take(Sheet sheet, Bench bench) throws IOException {
    Mapping mapping;
    MappingGuess.@Nullable Proposal proposal = null;
    if (columns.get().isPresent()) {
      mapping = MappingText.read(text(columns.get().get()));
    } else {
      proposal = guessed(sheet, bench);
      mapping = proposal.mapping();
    }
    ProgressLine line = new ProgressLine(bench.terminal());
    SheetImport work =
        SheetImport.of(sheet, mapping, bench.today())
            .withListed(most.get().orElse(20))
            .withProgress((count, share) -> line.at(count, "rows", share));
    try {
      SheetImport.Outcome outcome =
          register.storeToWrite(bench, (store, by) -> run(work, store, by, bench));
      return SpreadsheetTaken.of(
          shown(sheet.file(), bench),
          sheet,
          mapping,
          proposal,
          columns.get().map(path -> shown(path, bench)),
          goodRows.get().map(path -> shown(path, bench)),
          outcome);
    } finally {
      line.clear();
    }
  }

  private SheetImport.Outcome run(SheetImport work, RegisterStore store, String by, Bench bench) {
    try {
      if (!apply.getAsBoolean()) {
        return work.tryOut(store, by, bench.clock().instant());
      }
      return goodRows.get().isPresent()
          ? work.applyGood(store, goodRows.get().get(), by, bench.clock().instant())
          : work.applyAll(store, by, bench.clock().instant());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** As it is typed here: a file under the current folder without that folder's name. */
  private static Path shown(Path file, Bench bench) {
    return Path.of(NewFile.asTyped(file, bench));
  }

  private static String text(Path mapping) throws IOException {
    try {
      return Files.readString(mapping);
    } catch (CharacterCodingException e) {
      throw Trouble.refused(
          mapping + " is no text in UTF-8", "Save it again as plain text in UTF-8.");
    }
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.exchange.EntryLines;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.register.Entry;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.store.Recovery;
import dev.filial.core.store.Reentry;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A new register made of a file of entries. */
record EntryImport(OpenRegister register, Optional<GrowersMark> mark, Optional<String> grower) {

  /**
   * What was made.
   *
   * @param register the new register's file
   * @param exact whether every entry is as it was
   * @param taken how many entries of the old book it has
   * @param leftOut those it does not have, and why
   */
  record Made(Path register, boolean exact, long taken, List<Reentry.LeftOut> leftOut)
      implements Answer {
    @Override
    public void show(Screen screen) {
      String entries = taken == 1 ? "1 entry" : taken + " entries";
      screen.say(
          "Made the register "
              + register
              + (exact
                  ? " of " + entries + ", each exactly as it was."
                  : " of the "
                      + entries
                      + " that still hold; they have new numbers, and the writers and times they"
                      + " had."));
      if (!leftOut.isEmpty()) {
        screen.say("Left out, by their old numbers:");
        Table table = new Table().numbers("entry").column("why");
        leftOut.forEach(one -> table.row(one.entry(), one.why()));
        screen.table(table);
      }
      screen.next(
          "see that all is well: filial verify --register "
              + CommandLine.quoted(register.toString()));
    }
  }

  Answer run(Path file, Bench bench) {
    if (!Files.exists(file)) {
      throw Trouble.file(
          "there is no file " + file,
          "Name one that was saved, or write --notation for a pedigree.");
    }
    Path made = register.file(bench);
    if (Files.exists(made)) {
      throw Trouble.file(
          made + " is there already, and entries are imported into a new register",
          "Name a new one: --register FILE");
    }
    List<Entry> entries = read(file);
    RegisterOpened opening =
        entries.isEmpty() || Recovery.isOpened(entries) ? null : opening(bench);
    Recovery.Outcome outcome = Recovery.into(made, entries, opening, bench.clock().instant());
    return new Made(made, outcome.exact(), outcome.taken(), outcome.leftOut());
  }

  private static List<Entry> read(Path file) {
    try (BufferedReader in = Files.newBufferedReader(file)) {
      return EntryLines.read(in);
    } catch (IllegalArgumentException e) {
      throw Trouble.refused(
          file + " is no file of entries: " + e.getMessage(),
          "Such a file is written by filial salvage.");
    } catch (UncheckedIOException e) {
      throw unreadable(file, e.getCause());
    } catch (IOException e) {
      throw unreadable(file, e);
    }
  }

  private static RuntimeException unreadable(Path file, @Nullable IOException cause) {
    if (cause instanceof CharacterCodingException) {
      return Trouble.refused(
          file + " is no file of entries: it is not text in UTF-8",
          "Such a file is written by filial salvage.");
    }
    return new UncheckedIOException(cause == null ? new IOException(file.toString()) : cause);
  }

  private RegisterOpened opening(Bench bench) {
    Optional<GrowersMark> letters =
        mark.or(
            () -> bench.asker().ask("Whose register was it? The mark", null).map(GrowersMark::new));
    Optional<String> name =
        letters.isEmpty()
            ? Optional.empty()
            : grower.or(() -> bench.asker().ask("The grower's name", null));
    if (name.isEmpty()) {
      throw Trouble.refused(
          "entry 1, which says whose register it was, is lost",
          "Add --mark and --grower, as in: --mark KB --grower \"Klara Beispiel\"");
    }
    return new RegisterOpened(letters.orElseThrow().letters(), name.get(), null);
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.exchange.EntryLines;
import dev.filial.core.store.Salvage;
import dev.filial.core.store.SqliteSalvage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** {@code filial salvage}. */
public final class SalvageCommand implements BenchCommand {

  private final Supplier<Path> file;
  private final OpenRegister register;

  /** Declares its words. */
  public SalvageCommand(Words words) {
    file = words.argument("FILE", "The file to write, which is not there yet.", Reading.FILE);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Writes every entry that can still be read of a damaged register to a file, one a line,"
                + " and says what was lost. The register itself is only read. filial import makes a"
                + " new register of the file.")
        .example("filial salvage rescued.jsonl");
  }

  /**
   * What was saved.
   *
   * @param file where it was written
   * @param entries how many entries
   * @param lost which were not found
   * @param altered which were found and are not as they were written
   * @param unchecked which could not be checked, the entry before them being lost
   */
  record Saved(
      Path file, int entries, List<Salvage.Range> lost, List<Long> altered, List<Long> unchecked)
      implements Answer {

    @Override
    public void show(Screen screen) {
      boolean whole = lost.isEmpty() && altered.isEmpty();
      screen.say(
          "Wrote "
              + (entries == 1 ? "1 entry" : entries + " entries")
              + " to "
              + file
              + (whole ? "; each is as it was written and none is missing before the last." : "."));
      if (!lost.isEmpty()) {
        screen.field(
            "lost", String.join(", ", lost.stream().map(Salvage.Range::toString).toList()));
      }
      numbers(screen, "not as written", altered);
      numbers(screen, "cannot be checked", unchecked);
      screen.next(
          "make a new register of them: filial import "
              + CommandLine.quoted(file.toString())
              + " --register NEW");
    }

    private static void numbers(Screen screen, String what, List<Long> numbers) {
      if (!numbers.isEmpty()) {
        List<String> texts = new ArrayList<>();
        numbers.forEach(number -> texts.add(Long.toString(number)));
        screen.field(what, "entry " + String.join(", ", texts));
      }
    }
  }

  @Override
  public Answer run(Bench bench) {
    Path from = register.existingFile(bench);
    NewFile.require(file.get());
    Salvage salvage = SqliteSalvage.read(from);
    if (salvage.entries().isEmpty()) {
      throw Trouble.file(
          "not one entry can be read of " + from + ", and nothing was written",
          "See whether it is a register at all, or take your last copy.");
    }
    NewFile.write(file.get(), out -> EntryLines.write(salvage.entries(), out));
    return new Saved(
        file.get(),
        salvage.entries().size(),
        salvage.lost(),
        salvage.altered(),
        salvage.unchecked());
  }
}

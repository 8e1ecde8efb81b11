package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.name.Notation;
import dev.filial.core.name.NotationException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial import}. */
public final class ImportCommand implements BenchCommand {

  private final Supplier<Optional<Path>> file;
  private final Supplier<Optional<Notation>> notation;
  private final Supplier<List<SourceMeant>> meant;
  private final Supplier<Optional<GrowersMark>> mark;
  private final Supplier<Optional<String>> grower;
  private final OpenRegister register;

  /** Declares its words. */
  public ImportCommand(Words words) {
    file =
        words.optionalArgument(
            "FILE",
            "Entries as filial salvage writes them; a new register is made of them, under the name"
                + " that --register gives.",
            Reading.FILE);
    notation =
        words.option(
            "--notation",
            "TEXT",
            "A pedigree as breeders write it, A/B//C, the seed parent on the left; without FILE and"
                + " this you are asked for it, so that no shell touches it.",
            (text, bench) -> Notation.parse(text));
    meant =
        words.repeatedOption(
            "--let",
            "NAME=PLANT",
            "Which plant of yours a name in the notation is; otherwise the one with that name of its"
                + " own, or else a new plant held elsewhere.",
            SourceMeant.READING);
    mark =
        words.option(
            "--mark",
            "MARK",
            "The grower's mark, where the entry that says it is lost.",
            (text, bench) -> new GrowersMark(text));
    grower =
        words.option(
            "--grower",
            "NAME",
            "The grower, where the entry that says it is lost.",
            RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Writes a pedigree in notation into the register, each cross with one numbered seedling;"
                + " or makes a new register of entries that were saved from another.")
        .example("filial import --notation \"Amber/Coral//Dusk\" --let Dusk=22-001");
  }

  @Override
  public Answer run(Bench bench) {
    if (file.get().isPresent()) {
      if (notation.get().isPresent() || !meant.get().isEmpty()) {
        throw Trouble.usage(
            "a file of entries and a pedigree are imported one at a time",
            "Leave out " + (notation.get().isPresent() ? "--notation." : "--let."));
      }
      return new EntryImport(register, mark.get(), grower.get()).run(file.get().get(), bench);
    }
    Notation pedigree = notation.get().orElseGet(() -> asked(bench));
    return register.write(
        bench, writing -> NotationImport.into(writing, pedigree, meant.get(), bench));
  }

  private static Notation asked(Bench bench) {
    String text =
        bench
            .asker()
            .ask("The pedigree, as in A/B//C?", null)
            .orElseThrow(
                () ->
                    Trouble.usage(
                        "there is nothing to import",
                        "Name a file, or write --notation \"A/B//C\"."));
    try {
      return Notation.parse(text);
    } catch (NotationException e) {
      throw Trouble.usage(String.valueOf(e.getMessage()), "");
    }
  }
}

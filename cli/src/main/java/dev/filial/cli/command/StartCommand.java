package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.RegisterOption;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.store.SqliteStore;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial start}. */
public final class StartCommand implements BenchCommand {

  private final Supplier<String> mark;
  private final Supplier<Optional<String>> grower;
  private final RegisterOption file;

  /** Declares its words. */
  public StartCommand(Words words) {
    mark =
        words.argument(
            "MARK",
            "Your mark: two to four letters that stand before a code when a plant leaves the"
                + " house.");
    grower = words.option("--grower", "NAME", "Your name; otherwise you are asked for it.");
    file = new RegisterOption(words);
    words
        .describe("The register is one file, filial.register in this folder if none is named.")
        .example("filial start KB --grower \"Klara Beispiel\"");
  }

  /**
   * A register that was made.
   *
   * @param register its file
   * @param mark the grower's mark
   * @param grower the grower
   */
  record Started(Path register, String mark, String grower) implements Answer {
    @Override
    public void show(Screen screen) {
      screen
          .say("Made the register " + register + " of " + grower + ", mark " + mark + ".")
          .next("enter your first plant: filial plant \"Echeveria laui\"");
    }
  }

  @Override
  public Answer run(Bench bench) {
    GrowersMark given = new GrowersMark(mark.get());
    String name =
        grower
            .get()
            .or(
                () ->
                    bench.asker().canAsk()
                        ? bench.asker().ask("Your name?", null)
                        : Optional.empty())
            .filter(text -> !text.isBlank())
            .orElseThrow(
                () ->
                    Trouble.usage(
                        "a register belongs to somebody", "Add --grower with your name."));
    Path path = file.file(bench);
    RegisterOpened opening = new RegisterOpened(given.letters(), name.strip(), null);
    SqliteStore.create(path, opening, bench.clock().instant()).close();
    return new Started(path, given.letters(), name.strip());
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.page.IndexPage;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.ListQuestion;
import dev.filial.core.register.RegisterOpened;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial index}. */
public final class IndexCommand implements BenchCommand {

  private final BooleanSupplier all;
  private final Supplier<Optional<Path>> file;
  private final OpenRegister register;

  /** Declares its words. */
  public IndexCommand(Words words) {
    all = words.flag("--all", "Also what has died, left or was used up, and what was never here.");
    file =
        words.option(
            "--to",
            "FILE",
            "The file to write, which is not there yet; otherwise register.html.",
            Reading.FILE);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Writes one page that lists what there is, to look at in a browser: a field to search"
                + " in, and columns that sort when their heading is pressed.")
        .example("filial index")
        .example("filial index --all --to everything.html");
  }

  /**
   * What was written.
   *
   * @param file where
   * @param things how many things it lists
   */
  record Written(String file, int things) implements Answer {
    @Override
    public void show(Screen screen) {
      screen.say("Wrote a list of " + things + " into " + file + ".");
    }
  }

  private record Listed(List<ListQuestion.Line> lines, String grower, long entries) {}

  @Override
  public Answer run(Bench bench) {
    Listed listed =
        register.read(
            bench,
            view ->
                new Listed(
                    ListQuestion.of(view).withGone(all.getAsBoolean()).ask(),
                    view.opening().map(RegisterOpened::grower).orElse("an unnamed grower"),
                    view.size()));
    Path to = file.get().orElseGet(() -> bench.folder().resolve("register.html"));
    NewFile.write(to, IndexPage.of(listed.lines(), listed.grower(), listed.entries()));
    return new Written(NewFile.asTyped(to, bench), listed.lines().size());
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.page.IndexPage;
import dev.filial.cli.page.PageLinks;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.ListQuestion;
import dev.filial.core.answer.ParentNames;
import dev.filial.core.answer.SeasonsQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterView;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
            "Writes one page of the whole register, to look at in a browser: how many there are of"
                + " each kind, and all of them in a list, to narrow by words, by kind and by state"
                + " and to sort by the heading of any column.")
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
      screen
          .say(
              "Wrote a list of "
                  + things
                  + (things == 1 ? " plant, cross, lot or pot" : " plants, crosses, lots and pots")
                  + " into "
                  + file
                  + ".")
          .next("look at it in a browser; with a page of each thing: filial pages FOLDER");
    }
  }

  @Override
  public Answer run(Bench bench) {
    IndexPage.Content content =
        register.read(bench, view -> content(view, all.getAsBoolean(), PageLinks.NONE));
    Path to = file.get().orElseGet(() -> bench.folder().resolve("register.html"));
    NewFile.write(to, IndexPage.of(content));
    return new Written(NewFile.asTyped(to, bench), content.lines().size());
  }

  /** What the page tells, with what is gone or without. */
  static IndexPage.Content content(RegisterView view, boolean gone, PageLinks links) {
    ListQuestion question = ListQuestion.of(view);
    List<ListQuestion.Line> everything = question.withGone(true).ask();
    List<ListQuestion.Line> lines = gone ? everything : question.ask();
    ParentNames names = ParentNames.in(view);
    Map<Code, List<String>> parents = new HashMap<>();
    lines.forEach(line -> parents.put(line.code(), names.of(line.code())));
    return new IndexPage.Content(
        lines,
        parents,
        everything,
        SeasonsQuestion.of(view),
        view.opening().map(RegisterOpened::grower).orElse("an unnamed grower"),
        view.size(),
        links);
  }
}

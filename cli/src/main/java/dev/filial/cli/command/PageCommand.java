package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.page.PageLinks;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.Finding;
import dev.filial.core.name.Code;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial page}. */
public final class PageCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<Optional<Path>> file;
  private final OpenRegister register;
  private final PhotosOnPage photos;

  /** Declares its words. */
  public PageCommand(Words words) {
    plant =
        words.argument(
            "PLANT",
            "A code or a name; a seed lot, a sowing or a pot stands for the cross or packet it is"
                + " of.",
            Reading.THING);
    file =
        words.option(
            "--to",
            "FILE",
            "The file to write, which is not there yet; otherwise the code with .html.",
            Reading.FILE);
    register = OpenRegister.toRead(words);
    photos = new PhotosOnPage(words, register);
    words
        .describe(
            "Writes one page to look at in a browser, or to print: what the plant is, who is in it"
                + " and between what shares, its pedigree drawn, what was recorded of it, and what"
                + " came of it. Of a cross or a packet of seed it is the page of the family: also"
                + " what it may throw and how many to sow, how it came up, and whether what was"
                + " counted fits. The page is one file and needs no network.")
        .example("filial page Rosa")
        .example("filial page 24-007-1 --to seedling.html")
        .example("filial page Rosa --photos small")
        .example("filial page 26-013 --to cross.html");
  }

  /**
   * What was written.
   *
   * @param code the plant, or the cross or packet
   * @param file where
   * @param plants how many plants stand in the drawing on it
   * @param entries how many entries it tells
   * @param notes doubts it leans on
   */
  record Written(Code code, String file, int plants, int entries, List<String> notes)
      implements Answer {
    @Override
    public void show(Screen screen) {
      screen.say("Wrote the page of " + code.text() + " into " + file + ".");
      notes.forEach(note -> screen.field("note", note));
    }
  }

  /** A page, and where it goes. */
  private record Made(Path to, MadePage page) {}

  @Override
  public Answer run(Bench bench) {
    Made made =
        register.read(
            bench,
            view -> {
              Code code = MadePage.codeOf(view, Finding.in(view).one(plant.get()).code());
              Path to =
                  file.get()
                      .orElseGet(() -> bench.folder().resolve(DrawCommand.fileName(code, ".html")));
              NewFile.require(to);
              return new Made(to, MadePage.of(view, code, PageLinks.NONE, photos.on(to, bench)));
            });
    NewFile.write(made.to(), made.page().text());
    return new Written(
        made.page().code(),
        NewFile.asTyped(made.to(), bench),
        made.page().plants(),
        made.page().entries(),
        made.page().notes());
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.page.BenchSheetPage;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.SheetQuestion.Row;
import dev.filial.core.answer.SheetQuestion.Sheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial sheet}. */
public final class SheetCommand implements BenchCommand {

  private final SheetOptions options;
  private final Supplier<Optional<Path>> file;
  private final OpenRegister register;

  /** Declares its words. */
  public SheetCommand(Words words) {
    options = new SheetOptions(words);
    file =
        words.option(
            "--to",
            "FILE",
            "Write it into a new file instead, as a page that any browser prints on A4 or Letter.",
            Reading.FILE);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Plain text for A4 upright, with boxes for a pencil: what came up, is alive, was lost;"
                + " what set or failed; what died. In the order of places, and in the same order"
                + " filial fill asks for it.")
        .example("filial sheet")
        .example("filial sheet shelf --kind pots")
        .example("filial sheet --to bench.html");
  }

  /**
   * A sheet.
   *
   * @param upTo the last entry that it knows of
   * @param rows its rows
   * @param filling how it is typed in
   * @param text the paper, a form feed between pages
   * @param file where it was written; null if it is shown
   */
  record Printed(long upTo, List<Row> rows, String filling, String text, @Nullable String file)
      implements Answer {
    @Override
    public void show(Screen screen) {
      if (rows.isEmpty()) {
        screen.say("There is nothing to look at. What there is: filial list");
      } else if (file == null) {
        screen.raw(text);
      } else {
        screen
            .say(
                "Wrote a bench sheet of "
                    + (rows.size() == 1 ? "1 row" : rows.size() + " rows")
                    + " into "
                    + file
                    + ".")
            .next("open it in a browser and print it; type it in with: " + filling);
      }
    }
  }

  @Override
  public Answer run(Bench bench) {
    Optional<Path> to = file.get();
    to.ifPresent(NewFile::require);
    Printed printed = register.read(bench, view -> printed(options.in(view), bench));
    if (to.isPresent() && !printed.rows().isEmpty()) {
      NewFile.write(to.get(), BenchSheetPage.of(printed.text()));
    }
    return printed;
  }

  private Printed printed(Sheet sheet, Bench bench) {
    String filling = options.filling(sheet);
    return new Printed(
        sheet.upTo(),
        sheet.rows(),
        filling,
        new SheetPaper("Bench sheet", bench.today(), filling).text(sheet.rows()),
        file.get().map(to -> NewFile.asTyped(to, bench)).orElse(null));
  }
}

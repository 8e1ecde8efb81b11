package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.SheetQuestion.Row;
import dev.filial.core.answer.SheetQuestion.Sheet;
import java.util.List;

/** {@code filial sheet}. */
public final class SheetCommand implements BenchCommand {

  private final SheetOptions options;
  private final OpenRegister register;

  /** Declares its words. */
  public SheetCommand(Words words) {
    options = new SheetOptions(words);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Plain text for A4 upright, with boxes for a pencil: what came up, is alive, was lost;"
                + " what set or failed; what died. In the order of places, and in the same order"
                + " filial fill asks for it.")
        .example("filial sheet")
        .example("filial sheet shelf --kind pots");
  }

  /**
   * A sheet.
   *
   * @param upTo the last entry that it knows of
   * @param rows its rows
   * @param filling how it is typed in
   * @param text the paper, a form feed between pages
   */
  record Printed(long upTo, List<Row> rows, String filling, String text) implements Answer {
    @Override
    public void show(Screen screen) {
      if (rows.isEmpty()) {
        screen.say("There is nothing to look at. What there is: filial list");
      } else {
        screen.raw(text);
      }
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(
        bench,
        view -> {
          Sheet sheet = options.in(view);
          String filling = options.filling(sheet);
          String text = new SheetPaper("Bench sheet", bench.today(), filling).text(sheet.rows());
          return new Printed(sheet.upTo(), sheet.rows(), filling, text);
        });
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.PollenQuestion;
import dev.filial.core.answer.PollenQuestion.Line;
import java.util.List;
import java.util.function.BooleanSupplier;

/** {@code filial pollenbox}. */
public final class PollenBoxCommand implements BenchCommand {

  private final BooleanSupplier all;
  private final OpenRegister register;

  /** Declares its words. */
  public PollenBoxCommand(Words words) {
    all = words.flag("--all", "Also what was used up or thrown out.");
    register = OpenRegister.toRead(words);
    words.example("filial pollenbox").example("filial pollenbox --all");
  }

  /**
   * The answer.
   *
   * @param pollen the papers, by plant and day
   */
  record Box(List<Line> pollen) implements Answer {
    @Override
    public void show(Screen screen) {
      if (pollen.isEmpty()) {
        screen.say("No pollen is kept.");
        screen.next("when some is gathered: filial pollen PLANT gathered");
        return;
      }
      screen.table(table());
      PollenTold.keeps(pollen).forEach(note -> screen.field("note", note));
      screen.next("what it can bridge: filial bridge SEED_PARENT");
    }

    private Table table() {
      Table table =
          new Table()
              .column("plant")
              .column("what it is")
              .column("gathered")
              .column("age")
              .column("now")
              .column("place");
      for (Line line : pollen) {
        table.row(
            line.plant().text(),
            line.what() + (line.from() == null ? "" : ", from " + line.from()),
            line.gathered() == null ? "?" : line.gathered(),
            PollenTold.age(line),
            PollenTold.state(line),
            line.place() == null ? "" : line.place());
      }
      return table;
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(
        bench,
        view -> new Box(PollenQuestion.of(view, bench.today()).withGone(all.getAsBoolean()).ask()));
  }
}

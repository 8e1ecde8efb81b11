package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.BloomSpan;
import dev.filial.core.answer.BridgeQuestion;
import dev.filial.core.answer.BridgeQuestion.Bridge;
import dev.filial.core.answer.BridgeQuestion.Line;
import dev.filial.core.answer.Finding;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial bridge}. */
public final class BridgeCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<Optional<LocalDate>> day;
  private final BooleanSupplier clones;
  private final OpenRegister register;

  /** Declares its words. */
  public BridgeCommand(Words words) {
    plant =
        words.argument(
            "SEED_PARENT", "The plant that is to bear, a code or a name.", Reading.THING);
    day =
        words.option("--on", "DAY", "The day you mean to pollinate; otherwise today.", Reading.DAY);
    clones = words.flag("--clones", "Also pollen of the plant itself and its offsets.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says which stored pollen brings a plant that is out of flower to a seed parent: first"
                + " what cannot be had fresh that day, the young before the old.")
        .example("filial bridge 22-001")
        .example("filial bridge 24-007-1 --on \"1 mar 2027\"");
  }

  /**
   * The answer.
   *
   * @param bridge the pollen, and when the seed parent flowers
   */
  record Told(Bridge bridge) implements Answer {
    @Override
    public Object json() {
      return bridge;
    }

    @Override
    public void show(Screen screen) {
      screen.say(
          bridge.seedParent().text()
              + " ("
              + bridge.what()
              + ") "
              + (bridge.inFlower() ? "is in flower on " : "is not known to be in flower on ")
              + bridge.day()
              + ".");
      if (!bridge.inFlower()) {
        flowerings(screen);
      }
      if (bridge.lines().isEmpty()) {
        screen.say("No pollen is kept for it.");
      } else {
        screen.table(table());
        PollenTold.keeps(bridge.lines().stream().map(Line::pollen).toList())
            .forEach(note -> screen.field("note", note));
      }
      if (bridge.leftOut() > 0) {
        screen.field(
            "note",
            bridge.leftOut()
                + " of its own clone left out; with --clones that pollen is listed too");
      }
      screen.next(
          "when you use it: filial cross "
              + CommandLine.quoted(bridge.seedParent().text())
              + " POLLEN_PARENT --stored-pollen");
    }

    private void flowerings(Screen screen) {
      List<BloomSpan> spans = bridge.flowerings();
      if (spans.isEmpty()) {
        screen.field("flowered", "nobody wrote when");
      }
      for (BloomSpan span : spans) {
        screen.field(
            "flowered", span.since() + " to " + (span.seenOver() ? "" : "~") + span.last());
      }
    }

    private Table table() {
      Table table =
          new Table()
              .column("pollen of")
              .column("gathered")
              .column("age")
              .column("now")
              .column("fresh")
              .column("so far");
      for (Line line : bridge.lines()) {
        table.row(
            line.pollen().plant().text() + " " + line.pollen().what(),
            line.pollen().gathered() == null ? "?" : line.pollen().gathered(),
            PollenTold.age(line.pollen()),
            PollenTold.state(line.pollen()),
            line.inFlower() ? "in flower" : "no",
            SetsTold.brief(line.tries()));
      }
      return table;
    }
  }

  @Override
  public Answer run(Bench bench) {
    LocalDate asked = day.get().orElse(bench.today());
    return register.read(
        bench,
        view ->
            new Told(
                BridgeQuestion.of(view, asked)
                    .withOneClone(clones.getAsBoolean())
                    .ask(Finding.in(view).one(plant.get()).code())));
  }
}

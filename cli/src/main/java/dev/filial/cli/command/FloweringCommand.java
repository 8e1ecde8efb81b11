package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.FloweringQuestion;
import dev.filial.core.answer.FloweringQuestion.Flowering;
import dev.filial.core.answer.FloweringQuestion.Line;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial flowering}. */
public final class FloweringCommand implements BenchCommand {

  private final Supplier<Optional<LocalDate>> day;
  private final OpenRegister register;

  /** Declares its words. */
  public FloweringCommand(Words words) {
    day = words.option("--on", "DAY", "On which day; otherwise today.", Reading.DAY);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "A plant counts as in flower from the day it was first seen so until it is said to be"
                + " over, or for as long as its kind usually flowers after it was last seen open.")
        .example("filial flowering")
        .example("filial flowering --on \"14 may 2026\"");
  }

  /**
   * The answer.
   *
   * @param flowering what is in flower
   */
  record Told(Flowering flowering) implements Answer {
    @Override
    public Object json() {
      return flowering;
    }

    @Override
    public void show(Screen screen) {
      if (flowering.open().isEmpty()) {
        screen.say("Nothing was seen in flower that would be so still on " + flowering.day() + ".");
      } else {
        screen.say("In flower on " + flowering.day() + ":");
        screen.table(table(flowering.open()));
      }
      if (!flowering.perhaps().isEmpty()) {
        screen.say("Perhaps still, for nobody looked again:");
        screen.table(table(flowering.perhaps()));
      }
      usual(screen);
      screen.next(
          flowering.open().size() > 1
              ? "which can be crossed: filial pairs"
              : "when one opens: filial flower PLANT");
    }

    private static Table table(List<Line> lines) {
      Table table = new Table().column("plant").column("what it is").column("since").column("to");
      for (Line line : lines) {
        table.row(
            line.plant().text(),
            what(line),
            line.since() + (line.firstTime() ? ", its first" : ""),
            (line.seenOver() ? "" : "~") + line.last());
      }
      return table;
    }

    private static String what(Line line) {
      StringBuilder what = new StringBuilder(line.what());
      line.names().forEach(name -> what.append(" \"").append(name).append('"'));
      return what.toString();
    }

    /** By how many days it was reckoned, where a day was. */
    private void usual(Screen screen) {
      List<Line> all = new ArrayList<>(flowering.open());
      all.addAll(flowering.perhaps());
      all.stream()
          .filter(line -> !line.seenOver())
          .map(line -> "~ is " + line.usual().text() + " after it was last seen open")
          .distinct()
          .forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    LocalDate asked = day.get().orElse(bench.today());
    return register.read(bench, view -> new Told(FloweringQuestion.of(view, asked).ask()));
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.TinQuestion;
import dev.filial.core.answer.TinQuestion.Line;
import dev.filial.core.register.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/** {@code filial tin}. */
public final class TinCommand implements BenchCommand {

  private final BooleanSupplier old;
  private final BooleanSupplier free;
  private final OpenRegister register;

  /** Declares its words. */
  public TinCommand(Words words) {
    old = words.flag("--old", "Only seed that counts as old, to sow or throw out.");
    free = words.flag("--free", "Only lots of which something is not promised.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Every seed lot of which something is left: how many and how that is known, how old,"
                + " where it is kept, promised to whom, and what is free beyond that.")
        .example("filial tin")
        .example("filial tin --free");
  }

  /**
   * The answer.
   *
   * @param lots the lots, in order of entry
   */
  record Tin(List<Line> lots) implements Answer {
    @Override
    public void show(Screen screen) {
      if (lots.isEmpty()) {
        screen.say("No such seed is in the tin.");
        screen.next("when some is harvested: filial harvest CROSS COUNT");
        return;
      }
      screen.table(table());
      lots.stream()
          .map(line -> "seed counts as old after " + line.keeps().text())
          .distinct()
          .forEach(note -> screen.field("note", note));
      screen.next("what a club may be offered: filial offer");
    }

    private Table table() {
      boolean promised = lots.stream().anyMatch(line -> !line.promises().isEmpty());
      Table table = new Table().column("lot").column("what it is").column("left");
      table.column("age").column("where");
      if (promised) {
        table.column("promised").numbers("free");
      }
      for (Line line : lots) {
        List<Object> cells =
            new ArrayList<>(
                List.of(line.lot().text(), line.what(), left(line), age(line), where(line)));
        if (promised) {
          cells.add(line.promises().stream().map(Tin::promise).collect(Collectors.joining(", ")));
          cells.add(line.free());
        }
        table.row(cells.toArray());
      }
      return table;
    }

    private static String age(Line line) {
      return Age.words(line.age())
          + (line.harvested() || line.age() == null ? "" : " here")
          + (line.old() ? ", old" : "");
    }

    /** What was worked out from a weight looks like a guess, and is a better one. */
    private static String left(Line line) {
      return line.left() + (line.sureness() == TinQuestion.Sureness.WEIGHED ? " by weight" : "");
    }

    private static String promise(TinQuestion.Promise promise) {
      return (promise.count().equals(Count.unknown()) ? "all" : promise.count())
          + " "
          + promise.to();
    }

    private static String where(Line line) {
      if (line.place() == null) {
        return line.keeping() == null ? "" : line.keeping();
      }
      return line.place() + (line.keeping() == null ? "" : ", " + line.keeping());
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(
        bench,
        view ->
            new Tin(
                TinQuestion.of(view, bench.today()).ask().stream()
                    .filter(line -> !old.getAsBoolean() || line.old())
                    .filter(line -> !free.getAsBoolean() || !line.free().equals(Count.of(0)))
                    .toList()));
  }
}

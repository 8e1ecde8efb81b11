package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.HangingQuestion;
import dev.filial.core.answer.HangingQuestion.Hanging;
import dev.filial.core.answer.HangingQuestion.Touched;
import dev.filial.core.answer.Said;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** {@code filial hangs}. */
public final class HangsCommand implements BenchCommand {

  private final Supplier<String> what;
  private final OpenRegister register;

  /** Declares its words. */
  public HangsCommand(Words words) {
    what =
        words.argument(
            "ENTRY",
            "The number of an entry; or a code or a name, for the entry that it began with.",
            Reading.THING);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "If the entry was wrong, everything listed is touched: what was raised from it, and what"
                + " left the house.")
        .example("filial hangs 22-001")
        .example("filial hangs 12");
  }

  /**
   * The answer.
   *
   * @param hanging what hangs on the entry
   */
  record Told(Hanging hanging) implements Answer {
    @Override
    public Object json() {
      return hanging;
    }

    @Override
    public void show(Screen screen) {
      Said said = hanging.entry();
      screen.say(
          "Entry " + said.entry() + (said.struck() ? " (struck)" : "") + ": " + said.text() + ".");
      if (hanging.things().isEmpty()) {
        screen.say("Nothing hangs on it.");
        return;
      }
      long plants = hanging.plants();
      long others = hanging.things().size() - plants;
      screen.say(
          "On it hang "
              + number(plants, "plant")
              + " and "
              + number(others, "other thing")
              + ", "
              + (hanging.entries().size() == 1 ? "1 entry" : hanging.entries().size() + " entries")
              + " about them, and "
              + number(hanging.gifts().size(), "gift")
              + ".");
      screen.table(touched());
      for (Said gift : hanging.gifts()) {
        screen.field(
            "left the house", gift.text() + (gift.date() == null ? "" : ", " + gift.date()));
      }
      screen.next("if it was wrong: filial amend " + said.entry() + " PROPERTY=VALUE --why WHY");
    }

    /** What is alike in all but its number stands on one line. */
    private Table touched() {
      Table table = new Table().column("code").column("kind").column("what it is").numbers("steps");
      Map<List<Object>, List<Code>> alike = new LinkedHashMap<>();
      for (Touched one : hanging.things()) {
        alike
            .computeIfAbsent(List.of(one.steps(), one.kind(), one.what()), any -> new ArrayList<>())
            .add(one.code());
      }
      alike.forEach(
          (what, codes) -> table.row(CodeList.text(codes), what.get(1), what.get(2), what.get(0)));
      return table;
    }

    private static String number(long count, String thing) {
      return (count == 0 ? "no" : Long.toString(count)) + " " + thing + (count == 1 ? "" : "s");
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, view -> new Told(hanging(view, what.get().strip())));
  }

  /** Digits alone are the number of an entry, or a code without hyphens where none has it. */
  private static Hanging hanging(RegisterView view, String typed) {
    HangingQuestion question = HangingQuestion.of(view);
    if (typed.matches("#\\d{1,9}")) {
      return question.onEntry(Long.parseLong(typed.substring(1)));
    }
    boolean isEntry =
        typed.matches("\\d{1,4}")
            || (typed.matches("\\d{1,9}") && Long.parseLong(typed) <= view.size());
    return isEntry
        ? question.onEntry(Long.parseLong(typed))
        : question.onCode(Finding.in(view).code(typed));
  }
}

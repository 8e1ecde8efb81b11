package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.WhereQuestion;
import dev.filial.core.answer.WhereQuestion.Line;
import dev.filial.core.answer.WhereQuestion.Report;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial where}. */
public final class WhereCommand implements BenchCommand {

  private final Supplier<List<String>> what;
  private final Supplier<Optional<String>> place;
  private final BooleanSupplier all;
  private final OpenRegister register;

  /** Declares its words. */
  public WhereCommand(Words words) {
    what =
        words.arguments(
            "WHAT",
            "A code or a name; or a place, for all that stands in it.",
            false,
            Reading.THING);
    place =
        words.option(
            "--in",
            "PLACE",
            "All that stands in this place, also where a plant is called so too.",
            RecordReadings.LINE);
    all = words.flag("--all", "Also what died, left or was used up.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says where something stands: the seed and seedlings of a cross, of the lot of one"
                + " fruit, of a sowing or a pot, wherever they were sown, potted and pricked out"
                + " to; or one plant; or all that is in a place and in the places within it.")
        .example("filial where \"26-006 H1\"")
        .example("filial where kitchen");
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    String typed = String.join(" ", what.get()).strip();
    WhereQuestion question = WhereQuestion.of(view).withGone(all.getAsBoolean());
    if (typed.isEmpty() == place.get().isEmpty()) {
      throw Trouble.usage("where is what?", "Name a thing or a place, or a place with --in PLACE.");
    }
    if (place.get().isPresent()) {
      return told(question.inPlace(place.get().get()), true);
    }
    Code code;
    try {
      code = Finding.in(view).one(typed).code();
    } catch (RegisterRefusal noThing) {
      return told(place(view, question, typed, noThing), true);
    }
    return told(question.ofThing(code), false);
  }

  /** What is no thing may be a place; if it is not that either, what it looks like was meant. */
  private static Report place(
      RegisterView view, WhereQuestion question, String typed, RegisterRefusal noThing) {
    try {
      return question.inPlace(typed);
    } catch (RegisterRefusal noPlace) {
      boolean named = !typed.isEmpty() && !view.named(typed, 1).isEmpty();
      throw named || (!typed.isEmpty() && Character.isDigit(typed.charAt(0))) ? noThing : noPlace;
    }
  }

  private static Answer told(Report report, boolean place) {
    return Answer.of(report, screen -> show(screen, report, place));
  }

  /** What stands beside each other and is the same takes one line. */
  private static void show(Screen screen, Report report, boolean place) {
    List<Line> lines = report.lines();
    String gone =
        report.gone() == 0
            ? ""
            : " "
                + report.gone()
                + (report.gone() == 1 ? " is here no longer." : " are here no longer.");
    if (lines.isEmpty()) {
      screen.say(
          (place ? "Nothing stands in " : "Nothing is left of ") + report.asked() + "." + gone);
      return;
    }
    screen.say(
        (place ? "In " : "Of ") + report.asked() + (place ? " stands:" : " there is:") + gone);
    Map<List<String>, List<Line>> alike = new LinkedHashMap<>();
    for (Line line : lines) {
      alike
          .computeIfAbsent(
              List.of(
                  line.kind(),
                  line.what(),
                  String.join(", ", line.places()),
                  line.fate(),
                  // Only what is not counted is lumped together.
                  line.count() == null ? "" : line.code().text()),
              any -> new ArrayList<>())
          .add(line);
    }
    Table table =
        new Table().column("where").column("code").column("kind").numbers("count").column("what");
    alike.forEach(
        (key, same) ->
            table.row(
                key.get(2).isEmpty() ? "?" : key.get(2),
                CodeList.text(same.stream().map(Line::code).toList()),
                key.get(0) + (same.get(0).mixed() ? ", of a mixed packet" : ""),
                same.get(0).count() == null ? "" : same.get(0).count(),
                key.get(1) + (isUsual(key.get(3)) ? "" : "; " + key.get(3))));
    screen.table(table);
    if (lines.stream().anyMatch(line -> line.places().isEmpty())) {
      screen.field("note", "? where nobody said; say so with: filial move CODE --to PLACE");
    }
  }

  private static boolean isUsual(String fate) {
    return fate.isEmpty() || fate.equals("alive") || fate.equals("in store");
  }
}

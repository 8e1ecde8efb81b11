package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.ancestry.LocalityVerdict;
import dev.filial.core.answer.LocalityQuestion.Line;
import dev.filial.core.answer.LocalityQuestion.Lost;
import dev.filial.core.answer.LocalityQuestion.Origin;
import dev.filial.core.answer.LocalityQuestion.Report;
import dev.filial.core.answer.LocalityQuestion.Standing;
import dev.filial.core.answer.LocalityQuestion.Thing;
import dev.filial.core.answer.Said;
import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The answers of {@code filial locality}. */
final class LocalityTold {

  /** Rows by their day and then by their cross; those of no known day come last. */
  private static final Comparator<List<String>> BY_DAY =
      Comparator.comparing((List<String> row) -> row.get(0)).thenComparing(row -> row.get(1));

  private LocalityTold() {}

  /**
   * All field numbers.
   *
   * @param numbers each population with how many are true to it
   */
  record Numbers(List<Line> numbers) implements Answer {
    @Override
    public void show(Screen screen) {
      if (numbers.isEmpty()) {
        screen.say("Nothing here came under a field number.");
        return;
      }
      screen.say("Plants, pots and seed lots that come of each field number:");
      Table table =
          new Table()
              .column("field number")
              .numbers("true")
              .numbers("not certain")
              .numbers("not true");
      for (Line line : numbers) {
        table.row(
            String.join(", ", line.fieldNumbers()),
            line.isTrue(),
            line.notCertain(),
            line.notTrue());
      }
      screen.table(table);
      screen.next("which they are, and since when: filial locality NUMBER");
    }
  }

  /**
   * What there is of one field number.
   *
   * @param report all that comes of it
   */
  record OneNumber(Report report) implements Answer {
    @Override
    public Object json() {
      return report;
    }

    @Override
    public void show(Screen screen) {
      screen.say(sentence());
      for (Said said : report.declared()) {
        screen.field("entry " + said.entry(), said.text());
      }
      screen.table(isTrue());
      screen.table(lost());
      report.notes().forEach(note -> screen.field("note", note));
    }

    private String sentence() {
      int things = report.things().size();
      if (things == 0) {
        return "Nothing that comes of " + report.fieldNumber() + " is here.";
      }
      return things
          + (things == 1 ? " plant, pot or lot comes of " : " plants, pots and lots come of ")
          + report.fieldNumber()
          + ": "
          + count(LocalityVerdict.TRUE)
          + " to it, "
          + count(LocalityVerdict.NOT_CERTAIN)
          + ", "
          + count(LocalityVerdict.NOT_TRUE)
          + ".";
    }

    private String count(LocalityVerdict verdict) {
      long things = report.count(verdict);
      return things + (things == 1 ? " is " : " are ") + verdict.text();
    }

    private Table isTrue() {
      Map<List<String>, List<Code>> alike = new LinkedHashMap<>();
      for (Thing thing : report.things()) {
        if (thing.verdict() == LocalityVerdict.TRUE) {
          alike
              .computeIfAbsent(List.of(thing.kind(), thing.what()), any -> new ArrayList<>())
              .add(thing.code());
        }
      }
      Table table = new Table().column("true to it").column("kind").column("what it is");
      alike.forEach((what, codes) -> table.row(CodeList.text(codes), what.get(0), what.get(1)));
      return table;
    }

    /** What was lost at one cross stands on one line, the uncertain before what is certain. */
    private Table lost() {
      Table table = new Table().column("verdict").column("since").column("through").column("which");
      for (LocalityVerdict verdict :
          List.of(LocalityVerdict.NOT_CERTAIN, LocalityVerdict.NOT_TRUE)) {
        Map<List<String>, List<Code>> alike = new TreeMap<>(BY_DAY);
        for (Thing thing : report.things()) {
          if (thing.verdict() == verdict) {
            alike
                .computeIfAbsent(
                    List.of(since(thing.lost()), through(thing)), any -> new ArrayList<>())
                .add(thing.code());
          }
        }
        alike.forEach(
            (what, codes) ->
                table.row(verdict.text(), what.get(0), what.get(1), CodeList.text(codes)));
      }
      return table;
    }

    private static String through(Thing thing) {
      return LocalityTold.through(thing.lost()) + (thing.elsewhere() ? "; and elsewhere" : "");
    }
  }

  /**
   * Whether one plant is true.
   *
   * @param origin which field numbers stand behind it
   */
  record OnePlant(Origin origin) implements Answer {
    @Override
    public Object json() {
      return origin;
    }

    @Override
    public void show(Screen screen) {
      screen.say(sentence());
      Table table =
          new Table().column("field number").column("verdict").column("since").column("through");
      // Two seedlings of one cross may stand behind it, lost in the same way.
      Set<List<String>> rows = new LinkedHashSet<>();
      for (Standing standing : origin.standings()) {
        String number = String.join(", ", standing.fieldNumbers());
        for (Lost lost : standing.lost()) {
          rows.add(
              List.of(number, standing.verdict().text(), since(lost), LocalityTold.through(lost)));
        }
      }
      rows.forEach(row -> table.row(row.toArray()));
      screen.table(table);
      for (Standing standing : origin.standings()) {
        if (standing.population().size() > 1) {
          screen.field("one population", String.join(", ", standing.population()));
        }
      }
      origin.notes().forEach(note -> screen.field("note", note));
    }

    private String sentence() {
      String code = origin.code().text();
      if (origin.standings().isEmpty()) {
        return code + ": no plant behind it came under a field number.";
      }
      if (!origin.trueTo().isEmpty()) {
        return code + " is true to " + String.join(", ", origin.trueTo()) + ".";
      }
      List<String> open = new ArrayList<>();
      for (Standing standing : origin.standings()) {
        if (standing.verdict() == LocalityVerdict.NOT_CERTAIN) {
          open.addAll(standing.fieldNumbers());
        }
      }
      return open.isEmpty()
          ? code + " is true to no field number."
          : code + ": that it is true to " + String.join(" or ", open) + " is not certain.";
    }
  }

  private static String since(@Nullable Lost lost) {
    return lost == null || lost.since() == null ? "?" : lost.since().toString();
  }

  /** The cross, its parents, how another came in if not by them, and what it was. */
  private static String through(@Nullable Lost lost) {
    if (lost == null) {
      return "";
    }
    StringBuilder text = new StringBuilder();
    text.append(lost.made() == null ? lost.plant() : lost.made().text());
    if (lost.parents() != null) {
      text.append(", ").append(lost.parents());
    }
    return text.append(": ").append(String.join("; ", lost.why())).toString();
  }
}

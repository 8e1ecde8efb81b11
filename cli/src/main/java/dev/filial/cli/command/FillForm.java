package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.Trouble;
import dev.filial.core.answer.SheetQuestion.Row;
import dev.filial.core.register.Count;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Asks for the boxes of a bench sheet, and makes verb lines of what is answered. */
final class FillForm {

  private static final String BACK = "<";
  private static final String REST = ".";
  private static final String GIVE_UP = "!";
  private static final String REMARK = "remark";
  private static final String DIED = "died of (? if nobody knows)";

  /** What was answered to one row; or that another row is wanted. */
  private record Answered(List<String> lines, Move move) {}

  private enum Move {
    ON,
    BACK,
    DONE,
    ENDED
  }

  /** Somebody wants to go back, be done, or give up. */
  private static final class Leave extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Move move;

    Leave(Move move) {
      super(move.name());
      this.move = move;
    }
  }

  private final Bench bench;

  FillForm(Bench bench) {
    this.bench = bench;
  }

  /** The day that stands on the sheet. */
  LocalDate day() {
    while (true) {
      String text = required("Seen on which day", "today");
      try {
        return bench.dates().day(text);
      } catch (IllegalArgumentException e) {
        say(e.getMessage() + ".");
      }
    }
  }

  /** Asks row by row. */
  List<String> lines(List<Row> rows) {
    List<List<String>> answered = new ArrayList<>();
    rows.forEach(row -> answered.add(List.of()));
    int at = 0;
    while (at < rows.size()) {
      Answered answer = ask(rows.get(at));
      if (answer.move() == Move.DONE) {
        answered.set(at, answer.lines());
        break;
      }
      if (answer.move() == Move.BACK) {
        at = Math.max(0, at - 1);
        continue;
      }
      answered.set(at, answer.lines());
      if (answer.move() == Move.ENDED) {
        throw ended(answered.stream().flatMap(List::stream).toList());
      }
      at++;
    }
    return answered.stream().flatMap(List::stream).toList();
  }

  private Answered ask(Row row) {
    say(
        row.number()
            + "  "
            + row.code().text()
            + "  "
            + row.what()
            + (row.count() == null ? "" : ", " + row.count())
            + (row.place() == null ? "" : ", " + row.place()));
    Map<String, String> boxes = new HashMap<>();
    Move move = Move.ON;
    try {
      for (String box : boxes(row)) {
        boxes.put(box, box.equals(REMARK) || box.equals(DIED) ? answer(box) : count(box));
      }
    } catch (Leave e) {
      move = e.move;
    }
    return new Answered(lines(row, boxes), move);
  }

  private static List<String> boxes(Row row) {
    return switch (row.sort()) {
      case SEEDLINGS -> List.of("up", "alive", "lost", REMARK);
      case FLOWERS -> List.of("set", "failed", REMARK);
      case PLANT -> List.of(DIED, REMARK);
    };
  }

  /** What is filled in, as lines; what died is written before what is left is counted. */
  private static List<String> lines(Row row, Map<String, String> boxes) {
    String code = CommandLine.quoted(row.code().text());
    List<String> lines = new ArrayList<>();
    add(lines, "died " + code, option("--count", boxes.get("lost")));
    add(
        lines,
        "count " + code,
        option("--up", boxes.get("up")) + option("--alive", boxes.get("alive")));
    add(
        lines,
        "fruit " + code,
        option("--set", boxes.get("set")) + option("--failed", boxes.get("failed")));
    String died = boxes.getOrDefault(DIED, "");
    if (died.equals("?")) {
      lines.add("died " + code);
    } else {
      add(lines, "died " + code, option("--cause", died));
    }
    String remark = boxes.getOrDefault(REMARK, "");
    add(lines, "note " + code, remark.isEmpty() ? "" : " " + CommandLine.quoted(remark));
    return List.copyOf(lines);
  }

  private static void add(List<String> lines, String verb, String options) {
    if (!options.isEmpty()) {
      lines.add(verb + options);
    }
  }

  private static String option(String name, @Nullable String value) {
    return value == null || value.isEmpty() ? "" : " " + name + " " + CommandLine.quoted(value);
  }

  private String count(String box) {
    while (true) {
      String text = answer(box);
      if (text.isEmpty()) {
        return text;
      }
      try {
        return Count.parse(text).toString();
      } catch (IllegalArgumentException e) {
        say(e.getMessage() + ".");
      }
    }
  }

  private String answer(String box) {
    Optional<String> line = bench.asker().askOrSkip("   " + box);
    if (line.isEmpty()) {
      throw new Leave(Move.ENDED);
    }
    return switch (line.get()) {
      case BACK -> throw new Leave(Move.BACK);
      case REST -> throw new Leave(Move.DONE);
      case GIVE_UP ->
          throw Trouble.refused("given up; nothing was written", "Begin again when you like.");
      default -> line.get();
    };
  }

  /** Shows what would be lost. */
  private Trouble ended(List<String> lines) {
    lines.forEach(this::say);
    return Trouble.refused(
        "the answers ended, and nothing was written",
        lines.isEmpty()
            ? ""
            : "The lines above are what was filled in; they can be taken in with: filial batch FILE");
  }

  /** Shows all of it and asks whether it is right. */
  boolean confirmed(List<String> lines, LocalDate day) {
    say("On " + day + ":");
    for (int i = 0; i < lines.size(); i++) {
      say((i + 1) + "  " + lines.get(i));
    }
    Optional<String> answer =
        bench.asker().askOrSkip("Write " + (lines.size() == 1 ? "it" : "them all") + " [Y/n]");
    if (answer.isEmpty()) {
      throw ended(lines);
    }
    return !answer.get().toLowerCase(java.util.Locale.ROOT).startsWith("n");
  }

  /** Asks for other lines in place of those that cannot be taken; an empty one is left out. */
  List<String> mended(List<String> lines, List<Batch.Complaint> complaints) {
    List<String> mended = new ArrayList<>(lines);
    for (Batch.Complaint complaint : complaints) {
      int at = (int) complaint.line() - 1;
      String instead =
          bench
              .asker()
              .askOrSkip("Line " + complaint.line() + " instead (Enter leaves it out)")
              .orElseThrow(() -> ended(lines));
      mended.set(at, instead);
    }
    mended.removeIf(String::isEmpty);
    return List.copyOf(mended);
  }

  private String required(String question, String suggested) {
    return bench.asker().ask(question, suggested).orElseThrow(() -> ended(List.of()));
  }

  private void say(String text) {
    bench.terminal().err().print(text + "\n");
  }
}

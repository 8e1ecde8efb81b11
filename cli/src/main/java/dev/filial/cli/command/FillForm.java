package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.Trouble;
import dev.filial.core.answer.SheetQuestion.Row;
import dev.filial.core.register.Count;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks for the boxes of a bench sheet, and makes verb lines of what is answered. */
final class FillForm {

  private static final String BACK = "<";
  private static final String REST = ".";
  private static final String GIVE_UP = "!";

  /** What was answered to one row; or that another row is wanted. */
  private record Answered(List<String> lines, Move move) {}

  private enum Move {
    ON,
    BACK,
    DONE
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
      Answered answer = ask(rows.get(at), answered);
      if (answer.move() == Move.DONE) {
        break;
      }
      if (answer.move() == Move.BACK) {
        at = Math.max(0, at - 1);
        continue;
      }
      answered.set(at, answer.lines());
      at++;
    }
    return answered.stream().flatMap(List::stream).toList();
  }

  private Answered ask(Row row, List<List<String>> soFar) {
    say(
        row.number()
            + "  "
            + row.code().text()
            + "  "
            + row.what()
            + (row.count() == null ? "" : ", " + row.count())
            + (row.place() == null ? "" : ", " + row.place()));
    try {
      return new Answered(lines(row, soFar), Move.ON);
    } catch (Leave e) {
      return new Answered(List.of(), e.move);
    }
  }

  private List<String> lines(Row row, List<List<String>> soFar) {
    String code = CommandLine.quoted(row.code().text());
    List<String> lines = new ArrayList<>();
    switch (row.sort()) {
      case SEEDLINGS -> {
        String counted =
            option("--up", count("up", soFar)) + option("--alive", count("alive", soFar));
        String lost = option("--count", count("lost", soFar));
        if (!lost.isEmpty()) {
          lines.add("died " + code + lost);
        }
        if (!counted.isEmpty()) {
          lines.add("count " + code + counted);
        }
      }
      case FLOWERS -> {
        String seen =
            option("--set", count("set", soFar)) + option("--failed", count("failed", soFar));
        if (!seen.isEmpty()) {
          lines.add("fruit " + code + seen);
        }
      }
      case PLANT -> {
        String died = answer("died of (? if nobody knows)", soFar);
        if (!died.isEmpty()) {
          lines.add(
              "died " + code + (died.equals("?") ? "" : " --cause " + CommandLine.quoted(died)));
        }
      }
    }
    String remark = answer("remark", soFar);
    if (!remark.isEmpty()) {
      lines.add("note " + code + " " + CommandLine.quoted(remark));
    }
    return List.copyOf(lines);
  }

  private static String option(String name, String value) {
    return value.isEmpty() ? "" : " " + name + " " + CommandLine.quoted(value);
  }

  private String count(String box, List<List<String>> soFar) {
    while (true) {
      String text = answer(box, soFar);
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

  private String answer(String box, List<List<String>> soFar) {
    Optional<String> line = bench.asker().askOrSkip("   " + box);
    if (line.isEmpty()) {
      throw ended(soFar.stream().flatMap(List::stream).toList());
    }
    return switch (line.get()) {
      case BACK -> throw new Leave(Move.BACK);
      case REST -> throw new Leave(Move.DONE);
      case GIVE_UP ->
          throw Trouble.refused("given up; nothing was written", "Begin again when you like.");
      default -> line.get();
    };
  }

  private static Trouble ended(List<String> lines) {
    return Trouble.refused(
        "the answers ended; nothing was written"
            + (lines.isEmpty()
                ? ""
                : ". What was filled in can be taken in with filial batch:\n"
                    + String.join("\n", lines)),
        "");
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

package dev.filial.cli.command;

import dev.filial.core.answer.PollenQuestion;
import dev.filial.core.answer.PollenQuestion.Line;
import java.util.List;

/** How stored pollen is spoken of. */
final class PollenTold {

  private PollenTold() {}

  /** Its age, and whether it is old. */
  static String age(Line line) {
    return Age.words(line.age()) + (line.old() ? ", old" : "");
  }

  /** What was done with it last, and when. */
  static String state(Line line) {
    return PollenQuestion.word(line.step()) + (line.since() == null ? "" : " " + line.since());
  }

  /** How long it keeps, and where that is from. */
  static List<String> keeps(List<Line> lines) {
    return lines.stream()
        .map(line -> "pollen counts as old after " + line.keeps().text())
        .distinct()
        .toList();
  }
}

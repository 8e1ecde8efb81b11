package dev.filial.cli;

import dev.filial.cli.command.LabelsCommand;
import java.util.List;

/** Labels on paper. */
final class LabelVerbs {

  private LabelVerbs() {}

  static List<Verb> list() {
    return List.of(
        new Verb(
            "labels",
            Heading.PAPER,
            "Write a sheet of labels or pot tags to print",
            LabelsCommand::new));
  }
}

package dev.filial.cli;

import dev.filial.cli.command.LabelsCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Labels on paper. */
final class LabelVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(verb("labels", Heading.PAPER, "Write a sheet of labels or pot tags to print"));
  }

  @Override
  BenchCommand command(String name, Words words) {
    return new LabelsCommand(words);
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.FieldNumbers;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.PopulationDeclared;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial population}. */
public final class PopulationCommand implements BenchCommand {

  private final Supplier<List<String>> numbers;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public PopulationCommand(Words words) {
    numbers =
        words.arguments(
            "NUMBER",
            "The field numbers, two or more, each in quotes, as \"XM 014\".",
            true,
            RecordReadings.LINE);
    remark = words.option("--remark", "TEXT", "How that is known.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Says that plants under these field numbers come from one population, so that a cross"
                + " between them is still true to its locality. A number that was said to be one"
                + " with others brings these along. Spaces and capitals in a number count, until"
                + " two spellings are said to be one.")
        .example("filial population \"XM 014\" \"XM 015\" --remark \"the same slope\"");
  }

  @Override
  public Answer run(Bench bench) {
    if (numbers.get().size() < 2) {
      throw Trouble.usage(
          "with which field number is " + numbers.get().get(0) + " one population?",
          "Name two or more, each in quotes if it has a space: \"XM 014\" \"XM 015\".");
    }
    return register.write(bench, this::record);
  }

  private Answer record(Writing writing) {
    FieldNumbers known = FieldNumbers.in(writing.view());
    NavigableSet<String> borne = known.borne();
    List<String> meant = new ArrayList<>();
    for (String typed : numbers.get()) {
      if (!borne.contains(typed)) {
        writing.note("nothing here came under the field number " + typed + "; see how it is spelt");
      }
      meant.add(typed);
    }
    Accepted accepted = writing.append(new PopulationDeclared(meant, remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        null,
        "what is true to it: filial locality " + CommandLine.quoted(meant.get(0)));
  }
}

package dev.filial.cli;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code filial help}. */
@Command(footer = {"filial help", "filial help completion"})
final class HelpCommand implements BenchCommand {

  private final List<Verb> verbs;

  @Parameters(arity = "0..1", paramLabel = "VERB", description = "The verb to be explained.")
  private @Nullable String verb;

  HelpCommand(List<Verb> verbs) {
    this.verbs = verbs;
  }

  @Override
  public Answer run(Bench bench) {
    if (verb == null) {
      return new Overview(verbs);
    }
    Verb found = CommandLines.find(verbs, verb);
    return VerbHelp.of(found, CommandLines.of(found));
  }
}

package dev.filial.cli;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial help}. */
final class HelpCommand implements BenchCommand {

  private final Verbs verbs;
  private final Supplier<Optional<String>> verb;

  HelpCommand(Words words, Verbs verbs) {
    this.verbs = verbs;
    verb = words.optionalArgument("VERB", "The verb to be explained.");
    words.example("filial help").example("filial help completion");
  }

  @Override
  public Answer run(Bench bench) {
    if (verb.get().isEmpty()) {
      return new Overview(verbs.list());
    }
    Verb found = verbs.find(verb.get().get());
    return VerbHelp.of(found, found.words());
  }
}

package dev.filial.cli.frame;

import java.util.List;
import java.util.Map;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Makes completion scripts for the shell out of the words that the verbs declare. */
public final class ShellCompletion {

  private ShellCompletion() {}

  /** A script for bash, which zsh understands too. */
  public static String script(Map<String, Words> verbs) {
    CommandSpec root = CommandSpec.create().name("filial");
    verbs.forEach((verb, words) -> root.addSubcommand(verb, spec(words)));
    return AutoComplete.bash("filial", new CommandLine(root));
  }

  private static CommandSpec spec(Words words) {
    CommandSpec spec = CommandSpec.create();
    for (Words.Word word : words.all()) {
      List<String> candidates = word.reading().candidates();
      Class<?> type =
          !word.takesValue()
              ? boolean.class
              : word.reading() == Reading.FILE ? java.io.File.class : String.class;
      if (word.isOption()) {
        OptionSpec.Builder option = OptionSpec.builder(word.name()).type(type);
        spec.addOption(
            (candidates.isEmpty() ? option : option.completionCandidates(candidates)).build());
      } else {
        PositionalParamSpec.Builder argument = PositionalParamSpec.builder().type(type);
        argument.paramLabel(word.name()).arity(word.repeated() ? "0..*" : "0..1");
        spec.addPositional(
            (candidates.isEmpty() ? argument : argument.completionCandidates(candidates)).build());
      }
    }
    return spec;
  }
}

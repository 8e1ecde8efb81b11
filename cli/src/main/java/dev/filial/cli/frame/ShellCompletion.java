package dev.filial.cli.frame;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Makes completion scripts for the shell out of the words that the verbs declare. */
public final class ShellCompletion {

  private static final String THINGS = "FILIAL_THINGS";

  private static final Pattern THINGS_HERE =
      Pattern.compile("(?m)^( *)local (\\w+)=\\(\"" + THINGS + "\"\\).*$");

  /**
   * Asks once for each press of the key, however many words of a verb name things. The register is
   * the one that the line at the prompt names, if it does.
   */
  private static final String ASK =
      """
      # The codes and names of the register that begin with the word at the cursor.
      function _filial_things() {
        if [[ "${COMP_LINE}${SECONDS}" == "${FILIAL_THINGS_FOR}" ]]; then
          return
        fi
        FILIAL_THINGS_FOR="${COMP_LINE}${SECONDS}"
        FILIAL_THINGS=()
        local typed="${COMP_WORDS[COMP_CWORD]//\\\\/}"
        typed="${typed#[\\"\\']}"
        if [[ "${typed}" == -* ]]; then
          return
        fi
        local register=() word line
        for (( word = 1; word + 1 < ${#COMP_WORDS[@]}; word++ )); do
          if [[ "${COMP_WORDS[word]}" == --register ]]; then
            register=(--register "${COMP_WORDS[word + 1]}")
          fi
        done
        while IFS= read -r line; do
          FILIAL_THINGS+=("${line}")
        done < <("${COMP_WORDS[0]}" find --beginning "${register[@]}" -- "${typed}" 2>/dev/null)
      }
      """;

  private ShellCompletion() {}

  /** A script for bash, which zsh understands too. */
  public static String script(Map<String, Words> verbs) {
    CommandSpec root = CommandSpec.create().name("filial");
    verbs.forEach((verb, words) -> root.addSubcommand(verb, spec(words)));
    return withThings(AutoComplete.bash("filial", new CommandLine(root)));
  }

  /** Lets the script ask the register where a code or a name stands. */
  private static String withThings(String script) {
    String asking =
        THINGS_HERE
            .matcher(script)
            .replaceAll("$1_filial_things\n$1local $2=(\"\\${FILIAL_THINGS[@]}\")");
    int first = asking.indexOf("\nfunction ");
    return asking.substring(0, first + 1) + ASK + asking.substring(first);
  }

  private static CommandSpec spec(Words words) {
    CommandSpec spec = CommandSpec.create();
    int place = 0;
    for (Words.Word word : words.all()) {
      List<String> candidates =
          word.reading() == Reading.THING ? List.of(THINGS) : word.reading().candidates();
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
        argument.index(place + (word.repeated() ? "..*" : ""));
        place++;
        spec.addPositional(
            (candidates.isEmpty() ? argument : argument.completionCandidates(candidates)).build());
      }
    }
    return spec;
  }
}

package dev.filial.cli;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.screen.Screen;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/**
 * The page that explains one verb.
 *
 * @param usage how it is typed
 * @param summary what it does
 * @param description what more there is to say, a paragraph each
 * @param arguments what follows the verb
 * @param options what may be added, and the words below the verb if it has some
 * @param examples command lines that work
 */
record VerbHelp(
    String usage,
    String summary,
    List<String> description,
    List<Explained> arguments,
    List<Explained> options,
    List<String> examples)
    implements Answer {

  /** picocli breaks the usage line at this width; the screen does that here. */
  private static final int WITHOUT_BREAKS = 10_000;

  /**
   * A word on the command line.
   *
   * @param name as it is typed
   * @param meaning what it is for
   */
  record Explained(String name, String meaning) {}

  /** The page of {@code line}, which is the verb's own or that of a word below it. */
  static VerbHelp of(Verb verb, CommandLine line) {
    CommandSpec spec = line.getCommandSpec();
    spec.usageMessage().width(WITHOUT_BREAKS).sortOptions(false).sortSynopsis(false);
    List<String> description = List.of(spec.usageMessage().description());
    return new VerbHelp(
        new Help(spec, Help.defaultColorScheme(Help.Ansi.OFF)).synopsis(0).strip(),
        verb.summary() + ".",
        description,
        spec.positionalParameters().stream()
            .filter(argument -> !argument.hidden())
            .map(argument -> new Explained(argument.paramLabel(), meaning(argument)))
            .toList(),
        spec.options().stream()
            .filter(option -> !option.hidden())
            .map(
                option ->
                    new Explained(
                        String.join(", ", option.names())
                            + (option.arity().max() > 0 ? " " + option.paramLabel() : ""),
                        meaning(option)))
            .toList(),
        Arrays.stream(spec.usageMessage().footer()).map(String::strip).toList());
  }

  @Override
  public void show(Screen screen) {
    screen.lead("Usage:", usage).blank().say(summary);
    description.forEach(screen::say);
    list("Arguments", arguments, screen);
    list("Options", options, screen);
    screen.blank().heading(examples.size() == 1 ? "Example" : "Examples");
    examples.forEach(example -> screen.indented(1, example));
  }

  private static void list(String heading, List<Explained> words, Screen screen) {
    if (!words.isEmpty()) {
      screen.blank().heading(heading);
      words.forEach(word -> screen.item(word.name(), word.meaning()));
    }
  }

  private static String meaning(ArgSpec argument) {
    return String.join("\n", argument.description());
  }
}

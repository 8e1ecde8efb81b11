package dev.filial.cli;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Words;
import dev.filial.cli.frame.Words.Explained;
import dev.filial.cli.screen.Screen;
import java.util.List;

/**
 * The page that explains one verb.
 *
 * @param usage how it is typed
 * @param summary what it does
 * @param description what more there is to say, a paragraph each
 * @param arguments what follows the verb
 * @param options what may be added
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

  static VerbHelp of(Verb verb, Words words) {
    return new VerbHelp(
        words.usage(verb.name()),
        verb.summary() + ".",
        words.description(),
        words.arguments(),
        words.options(),
        words.examples());
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
}

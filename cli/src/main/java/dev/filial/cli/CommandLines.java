package dev.filial.cli;

import dev.filial.cli.frame.Trouble;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Makes a verb into picocli's command line, with what all of them share. */
final class CommandLines {

  private CommandLines() {}

  /**
   * The verb of that name.
   *
   * @throws Trouble if there is none, proposing the nearest
   */
  static Verb find(List<Verb> verbs, String name) {
    return verbs.stream()
        .filter(verb -> verb.name().equals(name))
        .findFirst()
        .orElseThrow(() -> unknown(verbs, name));
  }

  /** One verb's command line, ready to parse what follows the verb. */
  static CommandLine of(Verb verb) {
    CommandLine line = new CommandLine(verb.command().get());
    complete(line);
    line.getCommandSpec().name("filial " + verb.name());
    // An argument that begins with @ is a name like any other, not a file of arguments.
    return line.setExpandAtFiles(false).setCaseInsensitiveEnumValuesAllowed(true);
  }

  /** A command line that knows every verb, as only the making of completion scripts needs it. */
  static CommandLine of(List<Verb> verbs) {
    CommandLine root = new CommandLine(CommandSpec.create().name("filial"));
    verbs.forEach(verb -> root.addSubcommand(verb.name(), of(verb)));
    return root;
  }

  private static void complete(CommandLine line) {
    CommandSpec spec = line.getCommandSpec();
    spec.addOption(
        OptionSpec.builder("--json")
            .type(boolean.class)
            .description("Answer with one JSON object instead of lines to read.")
            .build());
    spec.addOption(
        OptionSpec.builder("-h", "--help")
            .type(boolean.class)
            .usageHelp(true)
            .description("Show this page.")
            .build());
    line.getSubcommands().values().forEach(CommandLines::complete);
  }

  private static Trouble unknown(List<Verb> verbs, String name) {
    String typed = name.toLowerCase(Locale.ROOT);
    // A slip of the finger is a letter or two; a third of the word keeps "xyzzy" from being "help".
    int tolerance = Math.max(1, Math.min(2, typed.length() / 3));
    String nearest =
        verbs.stream()
            .filter(
                verb -> verb.name().startsWith(typed) || distance(typed, verb.name()) <= tolerance)
            .min(Comparator.comparingInt(verb -> distance(typed, verb.name())))
            .map(verb -> "Did you mean: filial " + verb.name() + "? ")
            .orElse("");
    return Trouble.usage(
        "there is no verb \"" + name + "\"", nearest + "All of them are listed by: filial help");
  }

  /** Insertions, deletions, replacements and swaps of neighbours between two words. */
  private static int distance(String one, String other) {
    int[][] cost = new int[one.length() + 1][other.length() + 1];
    for (int i = 0; i <= one.length(); i++) {
      for (int j = 0; j <= other.length(); j++) {
        if (i == 0 || j == 0) {
          cost[i][j] = i + j;
          continue;
        }
        int replaced = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        int least = Math.min(cost[i - 1][j] + 1, cost[i][j - 1] + 1);
        least = Math.min(least, cost[i - 1][j - 1] + replaced);
        boolean swapped =
            i > 1
                && j > 1
                && one.charAt(i - 1) == other.charAt(j - 2)
                && one.charAt(i - 2) == other.charAt(j - 1);
        cost[i][j] = swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
      }
    }
    return cost[one.length()][other.length()];
  }
}

package dev.filial.cli;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.screen.DisplayWidth;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Terminal;
import dev.filial.cli.screen.Wrap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/**
 * The page that explains one verb.
 *
 * @param verb its name
 * @param summary what it does
 * @param examples command lines that work
 * @param text the whole page, laid out
 */
record VerbHelp(String verb, String summary, List<String> examples, String text) implements Answer {

  /** picocli lays out nothing narrower; what must be narrower is wrapped once more. */
  private static final int NARROWEST_OF_PICOCLI = 55;

  static VerbHelp of(Verb verb, Terminal terminal) {
    return of(verb, CommandLines.of(verb), terminal);
  }

  /** The page of {@code line}, which is the verb's own or that of a word below it. */
  static VerbHelp of(Verb verb, CommandLine line, Terminal terminal) {
    int width = terminal.proseWidth();
    boolean narrow = width < NARROWEST_OF_PICOCLI;
    line.setUsageHelpWidth(Math.max(width, NARROWEST_OF_PICOCLI));
    String page = line.getUsageMessage(terminal.colour() && !narrow ? Ansi.ON : Ansi.OFF);
    String text = page.replace("\r\n", "\n");
    return new VerbHelp(
        verb.name(),
        verb.summary(),
        Arrays.stream(line.getCommandSpec().usageMessage().footer()).map(String::strip).toList(),
        narrow ? narrowed(text, width) : text);
  }

  @Override
  public void show(Screen screen) {
    screen.raw(text);
  }

  private static String narrowed(String page, int width) {
    return page.lines()
        .map(line -> narrowedLine(line, width))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static String narrowedLine(String line, int width) {
    if (DisplayWidth.of(line) <= width) {
      return line;
    }
    String text = line.stripLeading();
    int margin = Math.min(line.length() - text.length(), width / 4);
    List<String> parts = new ArrayList<>();
    for (String part : Wrap.lines(text, width - margin)) {
      parts.add(" ".repeat(margin) + part);
    }
    return String.join("\n", parts);
  }
}

package dev.filial.cli;

import dev.filial.cli.command.DemoCommand;
import dev.filial.cli.command.StartCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** To begin. */
final class BeginVerbs {

  private BeginVerbs() {}

  static List<Verb> list() {
    return List.of(
        verb("start", "Make a register of your own"),
        verb("demo", "Write an invented bench to try things on, and walk through the job"));
  }

  private static Verb verb(String name, String summary) {
    return new Verb(name, Heading.BEGIN, summary, words -> command(name, words));
  }

  private static BenchCommand command(String name, Words words) {
    return switch (name) {
      case "start" -> new StartCommand(words);
      case "demo" -> new DemoCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

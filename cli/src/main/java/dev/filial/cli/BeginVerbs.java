package dev.filial.cli;

import dev.filial.cli.command.DemoCommand;
import dev.filial.cli.command.StartCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** To begin. */
final class BeginVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("start", "Make a register of your own"),
        verb("demo", "Write an invented bench to try things on, and walk through the job"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.BEGIN, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "start" -> new StartCommand(words);
      case "demo" -> new DemoCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

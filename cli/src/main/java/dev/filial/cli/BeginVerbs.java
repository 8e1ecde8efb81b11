package dev.filial.cli;

import dev.filial.cli.command.DemoCommand;
import dev.filial.cli.command.StartCommand;
import java.util.List;

/** To begin. */
final class BeginVerbs {

  private BeginVerbs() {}

  static List<Verb> list() {
    return List.of(
        new Verb("start", Heading.BEGIN, "Make a register of your own", StartCommand::new),
        new Verb(
            "demo",
            Heading.BEGIN,
            "Write an invented bench to try things on, and walk through the job",
            DemoCommand::new));
  }
}

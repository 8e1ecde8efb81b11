package dev.filial.cli;

import dev.filial.cli.command.AncestryCommand;
import java.util.List;

/** Questions. */
final class AskVerbs {

  private AskVerbs() {}

  static List<Verb> list() {
    return List.of(
        new Verb(
            "ancestry",
            Heading.ASK,
            "Say who is in a plant: shares, generation, seed-parent line",
            AncestryCommand::new));
  }
}

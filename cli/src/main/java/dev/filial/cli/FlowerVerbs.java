package dev.filial.cli;

import dev.filial.cli.command.FlowerCommand;
import dev.filial.cli.command.PollenCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Flowers, pollen and what set on what. */
final class FlowerVerbs {

  private FlowerVerbs() {}

  static List<Verb> list() {
    return List.of(
        verb("flower", Heading.RECORD, "Say that plants are in flower, or over"),
        verb("pollen", Heading.RECORD, "Say that pollen was gathered, dried, frozen or used up"));
  }

  private static Verb verb(String name, Heading heading, String summary) {
    return new Verb(name, heading, summary, words -> command(name, words));
  }

  private static BenchCommand command(String name, Words words) {
    return switch (name) {
      case "flower" -> new FlowerCommand(words);
      case "pollen" -> new PollenCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}

package dev.filial.cli;

import dev.filial.cli.command.BatchCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Many entries at once, and the pictures beside them. */
final class EntryVerbs {

  private EntryVerbs() {}

  static List<Verb> list() {
    return List.of(verb("batch", "Write many entries at once, one a line, all or none"));
  }

  private static Verb verb(String name, String summary) {
    return new Verb(name, Heading.RECORD, summary, words -> command(name, words));
  }

  private static BenchCommand command(String name, Words words) {
    return switch (name) {
      case "batch" -> new BatchCommand(words, Verbs.table());
      default -> throw new IllegalArgumentException(name);
    };
  }
}

package dev.filial.cli;

import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;
import java.util.function.Function;

/**
 * Verbs that belong together. Each group makes its own commands in one switch: a lambda for each
 * verb, or for each group, would cost every command a tenth of a millisecond times their number.
 */
abstract class VerbGroup {

  /** The verbs, in the order in which help lists them. */
  abstract List<Verb> list();

  /** Makes the command of one of them, which declares the words that may follow. */
  abstract BenchCommand command(String name, Words words);

  final Verb verb(String name, Heading heading, String summary) {
    return new Verb(name, heading, summary, new Making(this, name));
  }

  private record Making(VerbGroup group, String name) implements Function<Words, BenchCommand> {
    @Override
    public BenchCommand apply(Words words) {
      return group.command(name, words);
    }
  }
}

package dev.filial.cli;

import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.function.Function;

/**
 * A verb of the bench, as the table of verbs has it. The command itself is made only when it is
 * needed.
 *
 * @param name what is typed
 * @param heading the group under which help lists it
 * @param summary what it does, in one line without a full stop
 * @param command makes the command, which declares the words that may follow
 */
record Verb(String name, Heading heading, String summary, Function<Words, BenchCommand> command) {

  /** The words that may follow it. */
  Words words() {
    Words words = new Words();
    var unused = command.apply(words);
    return words;
  }
}

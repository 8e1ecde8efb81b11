package dev.filial.cli.frame;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The verbs there are, for a command that runs others. */
public interface VerbTable {

  /** What is typed for each, in the order of help. */
  List<String> names();

  /**
   * Makes the command of one verb.
   *
   * @throws Trouble if there is no such verb, proposing the nearest
   */
  Function<Words, BenchCommand> find(String name);

  /** The words that may follow a verb; empty if there is no such verb. */
  default Optional<Words> words(String name) {
    if (!names().contains(name)) {
      return Optional.empty();
    }
    Words words = new Words();
    var unused = find(name).apply(words);
    return Optional.of(words);
  }
}

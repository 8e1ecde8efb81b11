package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun;
import dev.filial.cli.CommandLineRun.Outcome;
import java.nio.file.Path;
import java.util.Arrays;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A register in a folder of its own, and what is typed there one after the other. */
final class BenchStory {

  private final Path folder;

  /** Begins with an empty register of Klara Beispiel, mark KB. */
  BenchStory(Path folder) {
    this.folder = folder;
    done("start", "KB", "--grower", "Klara Beispiel");
  }

  /** Types one command, whatever comes of it. */
  Outcome type(String... words) {
    return new CommandLineRun().in(folder).run(words);
  }

  /** Types one command at a terminal, answering its questions. */
  Outcome asked(String[] answers, String... words) {
    return new CommandLineRun().in(folder).env("TERM", "dumb").answering(answers).run(words);
  }

  /** Types one command that has to succeed without a warning, and returns what it printed. */
  String done(String... words) {
    Outcome outcome = type(words);
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.status()).isZero();
    return outcome.out();
  }

  /** The same for what calls for a caution, of which this much has to be said. */
  String cautioned(String about, String... words) {
    Outcome outcome = type(words);
    assertThat(outcome.err()).containsOnlyOnce("Note:").startsWith("Note: " + about);
    assertThat(outcome.status()).isZero();
    return outcome.out();
  }

  /** What {@link #done} prints with {@code --json}. */
  JsonNode json(String... words) {
    String[] all = Arrays.copyOf(words, words.length + 1);
    all[words.length] = "--json";
    return JsonMapper.shared().readTree(done(all));
  }
}

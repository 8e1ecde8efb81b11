package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Commands typed on a demo bench of their own. */
final class DemoStory {

  private final Path folder;

  /** Writes the demo register into a folder. */
  DemoStory(Path folder) throws IOException {
    this.folder = folder;
    DemoRegister.in(folder);
  }

  /** Types one command, whatever comes of it. */
  Outcome type(String... words) {
    return new CommandLineRun().in(folder).run(words);
  }

  /** Types one command that has to succeed without a warning, and returns what it printed. */
  String told(String... words) {
    Outcome outcome = type(words);
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.status()).isZero();
    return outcome.out();
  }

  /** The same with {@code --json}. */
  JsonNode json(String... words) {
    String[] all = Arrays.copyOf(words, words.length + 1);
    all[words.length] = "--json";
    return JsonMapper.shared().readTree(told(all));
  }

  /** Types one command that has to be refused, and returns what it said on one line. */
  String refused(int status, String... words) {
    Outcome outcome = type(words);
    assertThat(outcome.status()).isEqualTo(status);
    assertThat(outcome.out()).isEmpty();
    return outcome.err().replaceAll("\\s+", " ");
  }
}

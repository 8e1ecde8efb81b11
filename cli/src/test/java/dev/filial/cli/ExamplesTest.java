package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples at the end of each verb's help work on the demo bench, each on a fresh one. */
class ExamplesTest {

  /** Verbs that want somebody at a terminal; there a dot says that it was enough. */
  private static final List<String> SITTING = List.of("fill", "sit");

  @TempDir Path folder;

  static Stream<String> examples() {
    return Verbs.all().list().stream()
        .flatMap(verb -> verb.words().examples().stream())
        // Leaves a file among the temporary ones, which only its own test clears away.
        .filter(example -> !example.equals("filial demo"));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theExampleWorks(String example) throws IOException {
    List<String> words = CommandWords.of(example);
    Path register = DemoRegister.in(folder);
    // What the examples name beside the register.
    Files.writeString(folder.resolve("evening.txt"), "note Rosa \"flower stalks cut\"\n");
    Files.writeString(folder.resolve("rosa.jpg"), "a picture");
    if (words.get(0).equals("start")) {
      Files.delete(register);
    } else if (words.get(0).equals("table")) {
      aGrowersTable();
    }

    CommandLineRun run = new CommandLineRun().in(folder);
    if (SITTING.contains(words.get(0))) {
      run = run.env("TERM", "dumb").answering(".", ".");
    }
    Outcome outcome = run.run(words.toArray(String[]::new));

    assertThat(outcome.status()).as(outcome.err()).isZero();
  }

  /** What examples call plants.csv, with the mapping that was looked over. */
  private void aGrowersTable() throws IOException {
    Files.writeString(folder.resolve("plants.csv"), "No,Species\nE-17,Echeveria laui\n");
    Files.writeString(
        folder.resolve("my.columns"), "rows = plants\nold code = No\ntaxon = Species\n");
  }
}

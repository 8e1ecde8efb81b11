package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An invented register as a reference script wrote it down, typed in as one batch. */
final class TypedRegister {

  private final Path folder;
  private final Map<Integer, String> codes = new HashMap<>();

  /**
   * Types it in.
   *
   * @param folder an empty one, where the register is made
   * @param lines those of the batch
   */
  TypedRegister(Path folder, List<String> lines) throws IOException {
    this.folder = folder;
    told("start", "KB", "--grower", "Klara Beispiel");
    Files.write(folder.resolve("evening.txt"), lines);
    for (JsonNode one : told("batch", "evening.txt").get("written")) {
      if (!one.get("codes").isEmpty()) {
        codes.put(one.get("line").asInt(), one.get("codes").get(0).asString());
      }
    }
  }

  /** What a command answers with {@code --json}; it has to succeed. */
  JsonNode told(String... words) {
    List<String> asked = new ArrayList<>(List.of(words));
    asked.add("--json");
    Outcome outcome = new CommandLineRun().in(folder).run(asked.toArray(String[]::new));
    assertThat(outcome.status()).as("%s: %s", asked, outcome.err()).isZero();
    return JsonMapper.shared().readTree(outcome.out());
  }

  /** The first code that a line of the batch gave out. */
  String code(int line) {
    return codes.getOrDefault(line, "");
  }
}

package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The handbook's page on tables: its two tables, and what it shows of them, typed as it stands. */
class SpreadsheetPageTest {

  @TempDir Path folder;

  private static List<List<String>> blocks() throws IOException {
    List<List<String>> blocks = new ArrayList<>();
    boolean inBlock = false;
    for (String line : Files.readAllLines(Path.of("..", "docs", "spreadsheet.md"))) {
      if (line.equals("```")) {
        inBlock = !inBlock;
        if (inBlock) {
          blocks.add(new ArrayList<>());
        }
      } else if (inBlock) {
        blocks.get(blocks.size() - 1).add(line);
      }
    }
    return blocks;
  }

  @Test
  void whatThePageShowsIsWhatIsPrinted() throws IOException {
    List<List<String>> blocks = blocks();
    Files.write(folder.resolve("plants.csv"), blocks.get(0));
    Files.write(folder.resolve("crosses.csv"), blocks.get(1));
    Outcome started =
        new CommandLineRun().in(folder).run("start", "KB", "--grower", "Klara Beispiel");
    assertThat(started.status()).isZero();
    int typed = 0;
    for (List<String> block : blocks.subList(2, blocks.size())) {
      List<String> printed = new ArrayList<>();
      for (String line : block) {
        if (line.startsWith("$ ")) {
          typed++;
          Outcome outcome =
              new CommandLineRun()
                  .in(folder)
                  .run(CommandWords.of(line.substring(2)).toArray(String[]::new));
          printed.add(line);
          (outcome.out() + outcome.err()).lines().forEach(printed::add);
        }
      }
      assertThat(printed).isEqualTo(block);
    }
    assertThat(typed).isEqualTo(5);
  }
}

package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pages of the handbook that show a sitting, typed as they stand there. */
class TypedPagesTest {

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "five-minutes.md, 25",
    "odds.md, 100",
    "next-cross.md, 50",
    "how-sure.md, 80",
    "what-it-carries.md, 80",
    "flowers-and-seed.md, 80",
    "germination.md, 100",
    "fast-entry.md, 45",
    "season.md, 200",
    "labels.md, 20",
    "pages.md, 5",
    "hand-on.md, 30"
  })
  void whatThePageShowsIsWhatIsPrinted(String page, int least) throws IOException {
    Files.writeString(folder.resolve("rosa.jpg"), "a picture");
    StringBuilder file = new StringBuilder();
    Path written = null;
    boolean inBlock = false;
    int shown = 0;
    Set<String> printed = new HashSet<>();
    List<String> notPrinted = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("..", "docs", page))) {
      if (written != null && (line.equals("```") || line.startsWith("$ "))) {
        // What the page shows of a file is what is in it.
        Files.writeString(written, file);
        written = null;
      }
      if (inBlock && line.startsWith("$ cat ")) {
        written = folder.resolve(line.substring(6));
        file.setLength(0);
      } else if (written != null) {
        file.append(line).append('\n');
      } else if (line.equals("```")) {
        inBlock = !inBlock;
        printed.clear();
      } else if (inBlock && line.startsWith("$ filial ")) {
        Outcome outcome =
            new CommandLineRun()
                .in(folder)
                .run(CommandWords.of(line.substring(2)).toArray(String[]::new));
        (outcome.out() + outcome.err()).lines().forEach(printed::add);
      } else if (inBlock && !line.isBlank() && !line.contains("/home/klara")) {
        // The folder is a grower's own; every other line is as the program prints it.
        if (!printed.contains(line)) {
          notPrinted.add(line);
        }
        shown++;
      }
    }
    assertThat(notPrinted).isEmpty();
    assertThat(shown).isGreaterThan(least);
  }
}

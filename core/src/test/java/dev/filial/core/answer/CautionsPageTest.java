package dev.filial.core.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page of cautions quotes each as it is said. */
class CautionsPageTest {

  @Test
  void thePageHasEveryCautionAndNoOther() throws IOException {
    assertThat(
            Files.readAllLines(Path.of("..", "docs", "cautions.md")).stream()
                .filter(line -> line.startsWith("> "))
                .map(line -> line.substring(2)))
        .containsExactlyElementsOf(Cautions.all());
  }
}

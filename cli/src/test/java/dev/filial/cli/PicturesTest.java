package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pictures of the handbook are what the program draws of the demo bench. */
class PicturesTest {

  @TempDir Path folder;

  /** To make one anew: filial draw, on the demo bench, into docs/pictures. */
  @ParameterizedTest
  @ValueSource(strings = {"24-010K-1", "24-006D-1"})
  void thePictureIsWhatIsDrawn(String plant) throws IOException {
    DemoRegister.in(folder);

    Outcome outcome = new CommandLineRun().in(folder).run("draw", plant, "--to", "drawn.svg");

    assertThat(outcome.status()).as(outcome.err()).isZero();
    assertThat(Files.readString(folder.resolve("drawn.svg")))
        .isEqualTo(Files.readString(Path.of("..", "docs", "pictures", plant + ".svg")));
  }
}

package dev.filial.cli.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are made anew. */
class NewFileTest {

  @TempDir Path folder;

  @Test
  void whatCannotBeWrittenWholeIsTakenAwayAgain() {
    Path file = folder.resolve("labels.html");

    assertThatThrownBy(
            () ->
                NewFile.write(
                    file,
                    out -> {
                      out.write("half");
                      throw new IOException("No space left on device");
                    }))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("labels.html: No space left on device; nothing was left of it");
    assertThat(file).doesNotExist();
  }

  @Test
  void whatIsThereStays() throws IOException {
    Path file = Files.writeString(folder.resolve("labels.html"), "mine");

    assertThatThrownBy(() -> NewFile.write(file, out -> out.write("other")))
        .isInstanceOf(Trouble.class)
        .hasMessageContaining("is there already");
    assertThat(file).hasContent("mine");
    assertThat(NewFile.writeNext(folder, "labels", out -> out.write("other")))
        .isEqualTo(folder.resolve("labels-2.html"))
        .hasContent("other");
  }
}

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
  void whileItIsWrittenNobodyFindsHalfOfIt() throws IOException {
    Path file = folder.resolve("labels.html");

    NewFile.write(
        file,
        out -> {
          out.write("half");
          out.flush();
          assertThat(file).doesNotExist();
          out.write(" and half");
        });

    assertThat(file).hasContent("half and half");
    assertThat(folder).isDirectoryNotContaining("glob:**/.filial-*");
  }

  @Test
  void whatCannotBeFoundOutToItsEndLeavesNothing() {
    Path file = folder.resolve("labels.html");

    assertThatThrownBy(
            () ->
                NewFile.write(
                    file,
                    out -> {
                      out.write("half");
                      throw new IllegalStateException("no such plant");
                    }))
        .isInstanceOf(IllegalStateException.class);
    assertThat(folder).isEmptyDirectory();
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

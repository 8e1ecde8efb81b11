package dev.filial.core.store;

import static dev.filial.core.store.Bench.names;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody finds half a file under the name that was asked for. */
class PassingFileTest {

  @TempDir Path folder;

  /** A program that is stopped while it writes: run as a process of its own. */
  static final class Stopped {
    private Stopped() {}

    /** {@code text FILE} or {@code register FILE}. */
    public static void main(String[] args) throws Exception {
      Path file = Path.of(args[1]);
      if (args[0].equals("register")) {
        int unused = SqliteStore.create(file, "Klara", Bench.NOON, book -> hang(book));
        return;
      }
      try (PassingFile passing = PassingFile.beside(file);
          OutputStream stream = passing.stream()) {
        stream.write("half of it".repeat(10_000).getBytes(UTF_8));
        stream.flush();
        hang();
        passing.publish(file);
      }
    }

    private static int hang(Book book) {
      book.append(Bench.OPENING);
      hang();
      return 1;
    }

    private static void hang() {
      System.out.println("ready");
      System.out.flush();
      try {
        Thread.sleep(60_000); // stopped long before
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private Process halfWay(String what) throws IOException {
    Process child = ChildWriter.start(Stopped.class, what, folder.resolve("wanted").toString());
    BufferedReader out = child.inputReader();
    assertThat(out.readLine()).isEqualTo("ready");
    return child;
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "register"})
  void whatIsBrokenOffFromOutsideLeavesNothing(String what) throws Exception {
    Process child = halfWay(what);
    assertThat(names(folder)).isNotEmpty().doesNotContain("wanted");

    assumeTrue(child.supportsNormalTermination(), "this system only kills");
    child.destroy();

    assertThat(child.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(names(folder)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "register"})
  void whatIsKilledLeavesNoFileOfTheNameThatWasAskedFor(String what) throws Exception {
    Process child = halfWay(what);

    child.destroyForcibly();

    assertThat(child.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(names(folder)).isNotEmpty().allMatch(name -> name.startsWith(".filial-"));
  }

  private PassingFile written(Path file, String text) throws IOException {
    PassingFile passing = PassingFile.beside(file);
    try (OutputStream stream = passing.stream()) {
      stream.write(text.getBytes(UTF_8));
    }
    return passing;
  }

  @Test
  void itHasItsNameOnlyWhenItIsPublishedAndNothingIsLeftBesideIt() throws IOException {
    Path file = folder.resolve("plants.csv");
    try (PassingFile passing = written(file, "all")) {
      assertThat(file).doesNotExist();
      assertThat(passing.path()).hasParent(folder).hasContent("all");
      passing.publish(file);
    }
    assertThat(file).hasContent("all");
    assertThat(names(folder)).containsExactly("plants.csv");
  }

  @Test
  void whatSomebodyElseMadeInTheMeantimeStays() throws IOException {
    Path file = folder.resolve("plants.csv");
    try (PassingFile passing = written(file, "ours")) {
      Files.writeString(file, "theirs");
      assertThatThrownBy(() -> passing.publish(file))
          .isInstanceOf(FileAlreadyExistsException.class);
      passing.publish(folder.resolve("plants-2.csv"));
    }
    assertThat(file).hasContent("theirs");
    assertThat(folder.resolve("plants-2.csv")).hasContent("ours");
    assertThat(names(folder)).containsExactly("plants-2.csv", "plants.csv");
  }

  @Test
  void withoutPublishingNothingIsLeft() throws IOException {
    written(folder.resolve("plants.csv"), "all").close();
    assertThat(names(folder)).isEmpty();
  }

  @Test
  void aFileSystemWithoutLinksMovesIt() throws IOException {
    Path archive = folder.resolve("archive.zip");
    try (FileSystem zip = FileSystems.newFileSystem(archive, Map.of("create", "true"))) {
      Path file = zip.getPath("/plants.csv");
      assertThatThrownBy(() -> Files.createLink(file, zip.getPath("/other")))
          .isInstanceOf(UnsupportedOperationException.class);
      try (PassingFile passing = written(file, "all")) {
        passing.publish(file);
      }
      assertThat(file).hasContent("all");
      try (PassingFile passing = written(file, "other")) {
        assertThatThrownBy(() -> passing.publish(file))
            .isInstanceOf(FileAlreadyExistsException.class);
      }
      assertThat(file).hasContent("all");
      try (var left = Files.list(zip.getPath("/"))) {
        assertThat(left.map(Path::toString).toList()).isEqualTo(List.of("/plants.csv"));
      }
    }
  }

  @Test
  void aFolderThatIsMissingIsToldByTheNameThatWasAskedFor() {
    Path file = folder.resolve("no").resolve("plants.csv");
    assertThatThrownBy(() -> PassingFile.beside(file))
        .isInstanceOf(NoSuchFileException.class)
        .hasMessage(file.toString());
  }

  @Test
  void aFolderThatMayNotBeWrittenInIsToldByTheNameThatWasAskedFor() throws IOException {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    assumeTrue(closed.toFile().setWritable(false) && !Files.isWritable(closed), "may do anything");
    Path file = closed.resolve("plants.csv");
    try (PassingFile passing = PassingFile.beside(file)) {
      assertThatThrownBy(passing::stream).hasMessage(file.toString());
    } finally {
      assertThat(closed.toFile().setWritable(true)).isTrue();
    }
  }
}

package dev.filial.cli.frame;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.stream.Stream;

/** A folder that is filled under a passing name, and has its own only when it is whole. */
public final class NewFolder implements AutoCloseable {

  private static final int TRIES = 20;

  private final Path to;
  private final Path making;
  private final Thread broken = new Thread(this::removeWhatIsThere, "unfinished folder");

  private NewFolder(Path to, Path making) {
    this.to = to;
    this.making = making;
    Runtime.getRuntime().addShutdownHook(broken);
  }

  /**
   * Checks, before anything is worked out, that nothing of that name is there and that the folder
   * it is to lie in is.
   *
   * @throws Trouble if it is not so
   */
  public static void require(Path to) {
    if (Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
      throw Trouble.file(to + " is there already, and nothing was written", "Name a new folder.");
    }
    Path above = to.toAbsolutePath().getParent();
    if (above == null || !Files.isDirectory(above)) {
      throw Trouble.file(
          "there is no folder " + above + " to make " + to.getFileName() + " in",
          "Make it first, or name another.");
    }
  }

  /**
   * Begins one that is not there yet.
   *
   * @throws UncheckedIOException if it cannot be made
   */
  public static NewFolder of(Path to) {
    Path above = Objects.requireNonNull(to.toAbsolutePath().getParent());
    String passing = ".filial-" + ProcessHandle.current().pid() + "-" + System.nanoTime();
    try {
      return new NewFolder(to, Files.createDirectory(above.resolve(passing)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Puts a file into it, in UTF-8; what it holds needs no passing name of its own.
   *
   * @throws UncheckedIOException if it cannot be written
   */
  public void write(String name, String text) {
    try {
      Files.writeString(making.resolve(name), text, StandardOpenOption.CREATE_NEW);
    } catch (IOException e) {
      // A full disk gives no name.
      throw new UncheckedIOException(
          new FileSystemException(
              to.resolve(name).toString(), null, e.getMessage() + "; nothing was left of it"));
    }
  }

  /**
   * Gives it its name.
   *
   * @throws UncheckedIOException if there is something of that name by now
   */
  public void publish() {
    try {
      Files.move(making, to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Takes away what was not published; also when the program is broken off. */
  @Override
  public void close() {
    try {
      Runtime.getRuntime().removeShutdownHook(broken);
    } catch (IllegalStateException e) {
      return; // it is being broken off, and the hook does it
    }
    removeWhatIsThere();
  }

  private void removeWhatIsThere() {
    // A page may be put there even now.
    for (int tries = 0; tries < TRIES && Files.exists(making); tries++) {
      try (Stream<Path> files = Files.list(making)) {
        for (Path file : files.toList()) {
          Files.deleteIfExists(file);
        }
        Files.deleteIfExists(making);
      } catch (DirectoryNotEmptyException e) {
        // Once more.
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}

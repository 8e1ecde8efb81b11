package dev.filial.cli.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;

/** A folder that is filled under a passing name, and has its own only when it is whole. */
final class NewFolder implements AutoCloseable {

  private final Path to;
  private final Path making;

  private NewFolder(Path to, Path making) {
    this.to = to;
    this.making = making;
  }

  /**
   * Begins one that is not there yet.
   *
   * @throws UncheckedIOException if it cannot be made
   */
  static NewFolder of(Path to) {
    Path above = Objects.requireNonNull(to.toAbsolutePath().getParent());
    String passing = ".filial-" + ProcessHandle.current().pid() + "-" + System.nanoTime();
    try {
      return new NewFolder(to, Files.createDirectory(above.resolve(passing)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Where to put what it is to hold. */
  Path folder() {
    return making;
  }

  /**
   * Gives it its name.
   *
   * @throws UncheckedIOException if there is something of that name by now
   */
  void publish() {
    try {
      Files.move(making, to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Takes away what was not published. */
  @Override
  public void close() {
    if (!Files.exists(making)) {
      return;
    }
    try (Stream<Path> files = Files.list(making)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
      Files.delete(making);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package dev.filial.cli.frame;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file that a command writes: never over one that is there, and whole or not at all. */
public final class NewFile {

  private NewFile() {}

  /**
   * Checks, before anything is worked out, that the file is not there.
   *
   * @throws Trouble if it is
   */
  public static void require(Path file) {
    if (Files.exists(file)) {
      throw Trouble.file(file + " is there already, and nothing was written", "Name a new file.");
    }
  }

  /**
   * Writes the text, in UTF-8.
   *
   * @throws Trouble if the file is there
   * @throws UncheckedIOException if it cannot be written; what was begun of it is taken away
   */
  public static void write(Path file, String text) {
    require(file);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    try {
      // Made apart from being filled, so that only what was made here is ever taken away.
      Files.createFile(file);
      try {
        Files.write(file, bytes, StandardOpenOption.WRITE);
      } catch (IOException e) {
        Files.deleteIfExists(file);
        throw e;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file as one would type it: from the current folder where it lies in it. */
  public static String asTyped(Path file, Bench bench) {
    return (file.startsWith(bench.folder()) ? bench.folder().relativize(file) : file).toString();
  }
}

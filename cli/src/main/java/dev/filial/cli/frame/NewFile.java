package dev.filial.cli.frame;

import dev.filial.core.store.PassingFile;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file that a command writes: never over one that is there, and whole or not at all, also where
 * the command is broken off.
 */
public final class NewFile {

  /** What is written. */
  @FunctionalInterface
  public interface Content {
    /**
     * Writes all of it.
     *
     * @throws IOException if it cannot be written
     */
    void write(Writer out) throws IOException;
  }

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
    write(file, out -> out.write(text));
  }

  /**
   * Writes piece by piece, in UTF-8.
   *
   * @throws Trouble if the file is there
   * @throws UncheckedIOException if it cannot be written; what was begun of it is taken away
   */
  public static void write(Path file, Content content) {
    require(file);
    try {
      create(file, content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Makes a file of that name in the folder, or where it is taken {@code NAME-2.html} and so on.
   *
   * @return the file made
   * @throws UncheckedIOException if it cannot be written; what was begun of it is taken away
   */
  public static Path writeNext(Path folder, String name, Content content) {
    try (PassingFile passing = PassingFile.beside(folder.resolve(name + ".html"))) {
      fill(passing, folder.resolve(name + ".html"), content);
      for (int i = 1; ; i++) {
        Path file = folder.resolve(name + (i == 1 ? "" : "-" + i) + ".html");
        try {
          passing.publish(file);
          return file;
        } catch (FileAlreadyExistsException taken) {
          // The next number, then.
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file as one would type it: from the current folder where it lies in it. */
  public static String asTyped(Path file, Bench bench) {
    boolean within =
        file.startsWith(bench.folder())
            && !file.normalize().equals(bench.folder().normalize()); // which would have no name
    return (within ? bench.folder().relativize(file) : file.normalize()).toString();
  }

  private static void create(Path file, Content content) throws IOException {
    try (PassingFile passing = PassingFile.beside(file)) {
      fill(passing, file, content);
      passing.publish(file);
    }
  }

  private static void fill(PassingFile passing, Path file, Content content) throws IOException {
    try (OutputStream stream = passing.stream()) {
      try (Writer out =
          new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8.newEncoder()))) {
        content.write(out);
      } catch (IOException e) {
        // A full disk gives no name.
        throw new FileSystemException(
            file.toString(), null, e.getMessage() + "; nothing was left of it");
      }
    }
  }
}

package dev.filial.cli.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file that is made anew and never in place of another. */
final class NewFile {

  /** What is written. */
  interface Content {
    /** Writes all of it. */
    void write(Writer out) throws IOException;
  }

  private NewFile() {}

  /**
   * Makes the file. If it cannot be written whole, as on a full disk, it is taken away again.
   *
   * @throws UncheckedIOException if it is there already or cannot be written
   */
  static void write(Path file, Content content) {
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
   */
  static Path writeNext(Path folder, String name, Content content) {
    for (int i = 1; ; i++) {
      Path file = folder.resolve(name + (i == 1 ? "" : "-" + i) + ".html");
      try {
        create(file, content);
        return file;
      } catch (FileAlreadyExistsException taken) {
        // The next number, then.
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static void create(Path file, Content content) throws IOException {
    Writer out = Files.newBufferedWriter(file, StandardOpenOption.CREATE_NEW);
    try (out) {
      content.write(out);
      out.flush();
    } catch (IOException e) {
      Files.deleteIfExists(file);
      // A full disk gives no name.
      throw new FileSystemException(
          file.toString(), null, e.getMessage() + "; nothing was left of it");
    }
  }
}

package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Trouble;
import dev.filial.core.register.Photograph;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A picture's file, as the register keeps it: where it lies, and its digest. */
final class PictureFile {

  private PictureFile() {}

  /**
   * Reads it through once.
   *
   * @throws Trouble if it is no file
   * @throws UncheckedIOException if it cannot be read
   */
  static Photograph read(Path file, OpenRegister register, Bench bench) {
    if (Files.isDirectory(file)) {
      throw Trouble.file(file + " is a folder, not a picture", "Name the file in it.");
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw Trouble.file(
          file + " is no file but a device or a pipe", "Name the picture's own file.");
    }
    try {
      return Photograph.of(file, register.relative(file, bench));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

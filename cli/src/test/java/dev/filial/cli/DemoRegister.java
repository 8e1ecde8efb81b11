package dev.filial.cli;

import dev.filial.cli.demo.DemoBench;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** The demo bench as {@code filial.register} of a folder, written once for all tests. */
public final class DemoRegister {

  private static final Path WRITTEN = write();

  private DemoRegister() {}

  private static Path write() {
    try {
      Path folder = Files.createTempDirectory("filial-test-");
      Path file = folder.resolve("bench.register");
      // What was asked for last is deleted first.
      folder.toFile().deleteOnExit();
      file.toFile().deleteOnExit();
      DemoBench.write(file);
      return file;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Puts a copy into the folder, in place of one that is there. */
  public static Path in(Path folder) throws IOException {
    return Files.copy(
        WRITTEN, folder.resolve("filial.register"), StandardCopyOption.REPLACE_EXISTING);
  }
}

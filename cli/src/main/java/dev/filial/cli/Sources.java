package dev.filial.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;

/**
 * Whether the program is older than what it was built from. Asked only under the Windows launcher,
 * whose shell cannot compare the times of two files.
 */
final class Sources {

  private static final List<String> PLACES =
      List.of("pom.xml", "core/pom.xml", "cli/pom.xml", "core/src/main", "cli/src/main");

  private Sources() {}

  /** Whether something below {@code root} was changed after this program was built. */
  static boolean newerThanProgram(Path root) {
    try {
      Path program =
          Path.of(Sources.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return newerThan(root, Files.getLastModifiedTime(program));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  static boolean newerThan(Path root, FileTime built) throws IOException {
    for (String place : PLACES) {
      Path start = root.resolve(place);
      if (!Files.exists(start)) {
        continue;
      }
      try (Stream<Path> files =
          Files.find(
              start,
              Integer.MAX_VALUE,
              (path, attributes) -> attributes.lastModifiedTime().compareTo(built) > 0)) {
        if (files.findAny().isPresent()) {
          return true;
        }
      }
    }
    return false;
  }
}

package dev.filial.cli.frame;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Optional;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.OSInfo;

/**
 * SQLite's native library, unpacked once into the user's cache folder.
 *
 * <p>Left alone, the driver unpacks it into the temporary folder at every start, which costs about
 * a hundred milliseconds. Here a file named for the driver's version and the system is written
 * once, under a passing name first, so that two commands at once cannot see half of it. Where it
 * cannot be written the driver goes its own way.
 */
public final class SqliteLibrary {

  private SqliteLibrary() {}

  /**
   * Points the driver to the unpacked library, unpacking it if this is the first time. To be called
   * before the driver is used; afterwards it has no effect.
   */
  public static void prepare(Bench bench) {
    if (System.getProperty("org.sqlite.lib.path") != null) {
      return;
    }
    cacheFolder(bench)
        .flatMap(SqliteLibrary::unpacked)
        .ifPresent(
            file -> {
              System.setProperty("org.sqlite.lib.path", String.valueOf(file.getParent()));
              System.setProperty("org.sqlite.lib.name", String.valueOf(file.getFileName()));
            });
  }

  /** The user's cache folder for Filial, which need not exist yet. */
  static Optional<Path> cacheFolder(Bench bench) {
    boolean windows = osName().startsWith("windows");
    Optional<Path> base =
        windows
            ? bench.variable("LOCALAPPDATA").map(Path::of)
            : bench
                .variable("XDG_CACHE_HOME")
                .map(Path::of)
                .filter(Path::isAbsolute)
                .or(() -> bench.variable("HOME").map(home -> Path.of(home, ".cache")));
    return base.map(folder -> folder.resolve("filial"));
  }

  /** The library's file under {@code cache}, or nothing if it is not there and cannot be put. */
  static Optional<Path> unpacked(Path cache) {
    String system = osName().replace(' ', '_') + "-" + System.getProperty("os.arch");
    String library = System.mapLibraryName("sqlitejdbc");
    Path folder = cache.resolve("sqlite-" + SQLiteJDBCLoader.getVersion() + "-" + system);
    Path file = folder.resolve(library);
    if (Files.isRegularFile(file)) {
      return Optional.of(file);
    }
    String resource =
        "/org/sqlite/native/" + OSInfo.getNativeLibFolderPathForCurrentOS() + "/" + library;
    try (InputStream packed = SQLiteJDBCLoader.class.getResourceAsStream(resource)) {
      if (packed == null) {
        return Optional.empty();
      }
      Files.createDirectories(folder);
      Path passing = Files.createTempFile(folder, "unpacking", null);
      try {
        Files.copy(packed, passing, StandardCopyOption.REPLACE_EXISTING);
        putInPlace(passing, file);
      } finally {
        Files.deleteIfExists(passing);
      }
      return Optional.of(file);
    } catch (IOException e) {
      // A cache that cannot be written costs time, not the answer.
      return Files.isRegularFile(file) ? Optional.of(file) : Optional.empty();
    }
  }

  private static void putInPlace(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static String osName() {
    return System.getProperty("os.name").toLowerCase(Locale.ROOT);
  }
}

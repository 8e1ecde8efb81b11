package dev.filial.core.store;

import dev.filial.core.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * Reads the entries out of a register file that SQLite cannot or should not read: cut short,
 * overwritten in part, its first page gone.
 *
 * <p>The file itself is only copied. In the copy a journal left by a crash is played back if
 * possible; then every page is searched for rows of the entry table ({@link SqlitePages}), whatever
 * still leads to it, and put in order by {@link Salvage#of}.
 */
public final class SqliteSalvage {

  private SqliteSalvage() {}

  /**
   * Reads what is left of {@code file}. Time in proportion to its size, memory to what is found. No
   * store of this program may have it open.
   *
   * @throws StoreException if the file is not there, or cannot be read or copied
   */
  public static Salvage read(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new StoreException(Reason.MISSING, "there is no file " + file + "; name another");
    }
    try {
      Path folder = Files.createTempDirectory("filial-");
      try {
        Path copy = folder.resolve("copy");
        Files.copy(file, copy);
        Path journal = file.resolveSibling(file.getFileName() + "-journal");
        if (Files.exists(journal)) {
          Files.copy(journal, folder.resolve("copy-journal"));
          settle(copy);
        }
        return Salvage.of(SqlitePages.entries(copy));
      } finally {
        remove(folder);
      }
    } catch (IOException e) {
      throw new StoreException(
          Reason.FAILED,
          file
              + " cannot be read and copied to the folder for passing files: "
              + e.getMessage()
              + "; see its permissions, and whether there is room",
          e);
    }
  }

  private static void settle(Path copy) {
    try {
      SqliteFile.open(copy, false).close();
    } catch (StoreException e) {
      // Then what lies there is searched as it is.
      return;
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path path : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}

package dev.filial.cli;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.OSInfo;

/**
 * SQLite's native library, taken out of the program once.
 *
 * <p>Left alone, the driver unpacks it into the temporary folder at every start, which costs about
 * a hundred milliseconds. The launcher has it put beside its archive of classes, which is made anew
 * with each version of the program, and points the driver there ({@code org.sqlite.lib.path});
 * where it is missing the driver goes its own way.
 */
final class SqliteLibrary {

  private SqliteLibrary() {}

  /**
   * Copies the library for this system into a folder, under the name the driver looks for.
   *
   * @throws FileNotFoundException if the driver has none for this system
   * @throws IOException if it cannot be written
   */
  static void unpackInto(Path folder) throws IOException {
    String name = System.mapLibraryName("sqlitejdbc");
    String resource =
        "/org/sqlite/native/" + OSInfo.getNativeLibFolderPathForCurrentOS() + "/" + name;
    try (InputStream packed = SQLiteJDBCLoader.class.getResourceAsStream(resource)) {
      if (packed == null) {
        throw new FileNotFoundException(resource);
      }
      Files.copy(packed, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
    }
  }
}

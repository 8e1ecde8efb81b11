package dev.filial.core.store;

import dev.filial.core.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A copy of a register, made by SQLite so that it is whole whoever else is writing. */
final class SqliteCopy {

  private SqliteCopy() {}

  /**
   * Lays a copy beside the file, and has it on the disk before it returns. The name ends in {@code
   * ending}, or in that and a number where there is such a file already.
   *
   * @throws StoreException if it cannot be made
   */
  static void beside(Path file, Sql sql, String ending) {
    try (PassingFile copying = PassingFile.beside(file)) {
      // Whoever asks SQLite for a copy has to see to it that it is on the disk.
      sql.update("VACUUM INTO ?", copying.path().toString());
      publish(copying, file, ending);
    } catch (IOException e) {
      throw new StoreException(
          Reason.FAILED,
          "no copy of "
              + file
              + " can be laid beside it, so it was not changed: "
              + e.getMessage()
              + "; make room there, and allow writing",
          e);
    }
  }

  private static void publish(PassingFile copying, Path file, String ending) throws IOException {
    Path copy = file.resolveSibling(file.getFileName() + ending);
    // A copy from an earlier time stays.
    for (int i = 2; Files.exists(copy); i++) {
      copy = file.resolveSibling(file.getFileName() + ending + "." + i);
    }
    copying.publish(copy);
  }
}

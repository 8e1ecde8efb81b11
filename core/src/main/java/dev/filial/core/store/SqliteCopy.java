package dev.filial.core.store;

import dev.filial.core.store.StoreException.Reason;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

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
    Path copying =
        file.resolveSibling(
            ".filial-" + ProcessHandle.current().pid() + "-" + System.nanoTime() + ".copy");
    try {
      sql.update("VACUUM INTO ?", copying.toString());
      // SQLite leaves that to whoever asked for the copy.
      try (FileChannel channel = FileChannel.open(copying, StandardOpenOption.WRITE)) {
        channel.force(true);
      }
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
    } finally {
      SqliteFile.discard(copying);
    }
  }

  private static void publish(Path copying, Path file, String ending) throws IOException {
    Path copy = file.resolveSibling(file.getFileName() + ending);
    // A copy from an earlier time stays.
    for (int i = 2; Files.exists(copy); i++) {
      copy = file.resolveSibling(file.getFileName() + ending + "." + i);
    }
    SqliteFile.publish(copying, copy);
  }
}

package dev.filial.core.store;

import dev.filial.core.store.StoreException.Reason;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What a failure of SQLite means to a grower. */
final class SqliteFailure {

  // Primary result codes, https://www.sqlite.org/rescode.html
  private static final int ERROR = 1;
  private static final int PERMISSION = 3;
  private static final int BUSY = 5;
  private static final int LOCKED = 6;
  private static final int READ_ONLY = 8;
  private static final int IO_ERROR = 10;
  private static final int CORRUPT = 11;
  private static final int FULL = 13;
  private static final int CANNOT_OPEN = 14;
  private static final int CONSTRAINT = 19;
  private static final int NOT_A_DATABASE = 26;

  private SqliteFailure() {}

  static StoreException of(SQLException e, String file) {
    if (e instanceof SQLiteException told
        && told.getResultCode() == SQLiteErrorCode.SQLITE_READONLY_ROLLBACK) {
      return new StoreException(
          Reason.READ_ONLY,
          "an entry was being written to "
              + file
              + " when the program or the power was cut off; that has to be undone before it can be"
              + " read. Allow writing to the file and its folder, and keep the file with the same"
              + " name and -journal beside it",
          e);
    }
    return switch (e.getErrorCode() & 0xFF) {
      case BUSY, LOCKED ->
          new StoreException(
              Reason.BUSY,
              file
                  + " is being used by another command; nothing was changed. Wait until that is"
                  + " done, then try again",
              e);
      case READ_ONLY, PERMISSION ->
          new StoreException(
              Reason.READ_ONLY,
              file
                  + " cannot be written: the file or its folder is read-only; nothing was changed."
                  + " Allow writing to both, or copy the register elsewhere",
              e);
      // What a register always has is missing, or what its tables rule out is there.
      case CORRUPT, ERROR, CONSTRAINT ->
          new StoreException(
              Reason.DAMAGED,
              file
                  + " is damaged ("
                  + e.getMessage()
                  + ") and was not written to; restore it from a copy, or save what can still be"
                  + " read",
              e);
      case NOT_A_DATABASE ->
          new StoreException(
              Reason.FOREIGN,
              file
                  + " is not a register: it is some other kind of file, or its beginning is lost;"
                  + " nothing was changed",
              e);
      case FULL ->
          new StoreException(
              Reason.FULL,
              "there is no room left on the disk of "
                  + file
                  + "; nothing was changed. Make room and"
                  + " try again",
              e);
      case CANNOT_OPEN ->
          new StoreException(
              Reason.FAILED,
              file + " cannot be opened: see whether you may read it and write in its folder",
              e);
      case IO_ERROR ->
          new StoreException(
              Reason.FAILED,
              file
                  + " could not be read or written ("
                  + e.getMessage()
                  + "); see whether the disk is"
                  + " full or failing, then try again",
              e);
      default -> new StoreException(Reason.FAILED, file + ": " + e.getMessage(), e);
    };
  }
}

package dev.filial.core.store;

/** The register cannot be read or written. The message names the file and what to do. */
public final class StoreException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** What stands in the way. */
  public enum Reason {
    /** There is no such file. */
    MISSING,
    /** There is one already. */
    EXISTS,
    /** The file is no register of Filial's. */
    FOREIGN,
    /** A newer Filial wrote it. */
    NEWER,
    /** It may be read but not written. */
    READ_ONLY,
    /** It is not as it was written. */
    DAMAGED,
    /** Somebody else is writing. */
    BUSY,
    /** The disk has no room. */
    FULL,
    /** Reading or writing failed in another way. */
    FAILED
  }

  private final Reason reason;

  /** A failure with its reason and message. */
  public StoreException(Reason reason, String message) {
    super(message);
    this.reason = reason;
  }

  /** A failure that comes of another. */
  public StoreException(Reason reason, String message, Throwable cause) {
    super(message, cause);
    this.reason = reason;
  }

  /** What stands in the way. */
  public Reason reason() {
    return reason;
  }
}

package dev.filial.cli.frame;

/** What stands in the way, in words that name the thing and say what to do. */
public final class Trouble extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final Status status;
  private final String remedy;

  private Trouble(Status status, String message, String remedy) {
    super(message);
    this.status = status;
    this.remedy = remedy;
  }

  /**
   * The register says no.
   *
   * @param message what is wrong, naming the thing
   * @param remedy what to type or do instead
   */
  public static Trouble refused(String message, String remedy) {
    return new Trouble(Status.REFUSED, message, remedy);
  }

  /** The command line was wrong. */
  public static Trouble usage(String message, String remedy) {
    return new Trouble(Status.USAGE, message, remedy);
  }

  /** A file cannot be read or written. */
  public static Trouble file(String message, String remedy) {
    return new Trouble(Status.FILE, message, remedy);
  }

  /** How the process ends. */
  public Status status() {
    return status;
  }

  /** What to type or do instead; empty if there is nothing to be done. */
  public String remedy() {
    return remedy;
  }
}

package dev.filial.cli.frame;

/** How the process ends; a script can tell the cases apart by the number. */
public enum Status {
  /** Done. */
  DONE(0),
  /** The register says no: a rule refuses, a plant is not there, a check failed. */
  REFUSED(1),
  /** The command line was wrong. */
  USAGE(2),
  /** A file cannot be read or written. */
  FILE(3),
  /** The program itself failed: a defect, never the reader's doing. */
  DEFECT(4);

  private final int code;

  Status(int code) {
    this.code = code;
  }

  /** The exit status. */
  public int code() {
    return code;
  }
}

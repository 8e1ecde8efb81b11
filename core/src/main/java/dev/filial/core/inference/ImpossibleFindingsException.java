package dev.filial.core.inference;

/** What was seen cannot all be true of such a pedigree. */
public final class ImpossibleFindingsException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  ImpossibleFindingsException() {
    super(
        "what was seen cannot all be true of these plants as their parents are recorded: the chance"
            + " of it is 0");
  }
}

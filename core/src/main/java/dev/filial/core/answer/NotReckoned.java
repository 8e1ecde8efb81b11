package dev.filial.core.answer;

import dev.filial.core.register.RegisterRefusal;

/** Odds over the pedigree that cannot be given, and why. */
public final class NotReckoned extends RegisterRefusal {

  private static final long serialVersionUID = 1L;

  /** Why there are none. */
  public enum Reason {
    /** What is recorded contradicts itself. */
    CONTRADICTION,
    /** The exact odds would cost too much. */
    TANGLED,
    /** They were sampled, and the runs do not agree. */
    UNSTEADY
  }

  private final Reason reason;

  NotReckoned(Reason reason, String message, RuntimeException cause) {
    super(message);
    this.reason = reason;
    initCause(cause);
  }

  /** Why there are none. */
  public Reason reason() {
    return reason;
  }
}
